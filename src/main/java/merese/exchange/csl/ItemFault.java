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
    char found = at < text.length() ? text.charAt(at) : ' ';
    if (found == '\n' || found == '\r') {
      return new ItemFault(at, "a text does not end on its line", "close it, or write \\n");
    }
    String message = fault.getOriginalMessage();
    int lineEnd = message.indexOf('\n');
    String first = lineEnd < 0 ? message : message.substring(0, lineEnd);
    return new ItemFault(at, "this is not JSON: " + shown(first), "correct it by hand");
  }

  private static String shown(String message) {
    StringBuilder out = new StringBuilder();
    message
        .codePoints()
        .limit(200)
        .filter(c -> c >= ' ' && c != 0x7F)
        .forEach(out::appendCodePoint);
    return out.toString();
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
