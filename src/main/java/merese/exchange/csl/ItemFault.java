package merese.exchange.csl;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What keeps an item from being read.
 *
 * @param at where in the text of the item, in chars
 */
record ItemFault(int at, String what, String remedy) {

  /** What a parser's complaint means to someone who mends a file by hand. */
  static ItemFault of(String text, JsonProcessingException fault) {
    int at = fault.getLocation() == null ? 0 : (int) fault.getLocation().getCharOffset();
    at = Math.max(0, Math.min(at, text.length()));
    if (fault instanceof JsonEOFException) {
      return new ItemFault(
          text.stripTrailing().length(),
          "the item ends before all that it opens is closed",
          "close the text, list or object");
    }
    if (fault instanceof StreamConstraintsException) {
      return new ItemFault(
          at,
          "lists and objects stand in each other more than "
              + JsonParsing.DEEPEST
              + " deep, or a number is too long",
          "shorten it");
    }
    String message = fault.getOriginalMessage();
    if (message.startsWith("Unrecognized token") || message.startsWith("Non-standard token")) {
      int start = wordStart(text, at);
      return new ItemFault(
          start,
          "“" + shown(text.substring(start, wordEnd(text, at))) + "” is no value of JSON",
          "write a text in quotation marks, a number, true, false or null");
    }
    if (message.startsWith("Unrecognized character escape")) {
      return new ItemFault(at, "no such sign stands behind a backslash", "write \\\\ for one");
    }
    char found = at < text.length() ? text.charAt(at) : ' ';
    ItemFault other =
        new ItemFault(
            at, "“" + shown(String.valueOf(found)) + "” cannot stand here", "correct it");
    return found(text, at, found).orElse(other);
  }

  private static Optional<ItemFault> found(String text, int at, char found) {
    char before = lastBefore(text, at);
    String what;
    String remedy;
    switch (found) {
      case '\n', '\r' -> {
        what = "a text does not end on its line";
        remedy = "close it, or write \\n";
      }
      case '\t' -> {
        what = "a tab stands inside a text";
        remedy = "write \\t";
      }
      case '/', '#' -> {
        what = "JSON has no comments";
        remedy = "take it out";
      }
      case '\'', '“', '”', '„' -> {
        what = "texts and names stand in straight double quotation marks";
        remedy = "write \" instead";
      }
      case '}', ']' -> {
        boolean comma = before == ',';
        String due = found == '}' ? "]" : "}";
        what =
            comma
                ? "nothing follows the last comma"
                : "“" + found + "” stands where something else is due, maybe “" + due + "”";
        remedy = comma ? "take it out" : "close each list and object in its turn";
      }
      case '"', '{', '[' -> {
        what = "a comma or a colon is missing before this";
        remedy = "add it";
      }
      default -> {
        boolean behindText = before == '"';
        if (!behindText) {
          return Optional.empty();
        }
        what = "words stand behind a text, so a quotation mark may be missing or too many";
        remedy = "correct it, and write \\\" for a quotation mark inside a text";
      }
    }
    return Optional.of(new ItemFault(at, what, remedy));
  }

  private static int wordStart(String text, int at) {
    int i = at;
    while (i > 0 && Character.isLetterOrDigit(text.charAt(i - 1))) {
      i--;
    }
    return i;
  }

  private static int wordEnd(String text, int at) {
    int i = at;
    while (i < text.length() && Character.isLetterOrDigit(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static char lastBefore(String text, int at) {
    int i = at - 1;
    while (i >= 0 && Character.isWhitespace(text.charAt(i))) {
      i--;
    }
    return i < 0 ? ' ' : text.charAt(i);
  }

  private static String shown(String words) {
    StringBuilder out = new StringBuilder();
    words.codePoints().filter(c -> c >= ' ' && c != 0x7F).limit(40).forEach(out::appendCodePoint);
    return out.length() < words.length() ? out.append('…').toString() : out.toString();
  }

  /** Where bytes are no UTF-8; empty where they are. */
  static Optional<ItemFault> ofEncoding(byte[] bytes) {
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    if (!result.isError()) {
      return Optional.empty();
    }
    int wrong = bytes[in.position()] & 0xFF;
    ItemFault fault =
        new ItemFault(
        out.position(),
        "the byte 0x"
            + Character.toUpperCase(Character.forDigit(wrong >> 4, 16))
            + Character.toUpperCase(Character.forDigit(wrong & 15, 16))
            + " is no UTF-8",
        "save the file as UTF-8, as JSON has to be");
    return Optional.of(fault);
  }
}
