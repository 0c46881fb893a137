package merese.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;

/** What a parser's complaint means to someone who edits a file by hand. */
final class JsonFault {
  private JsonFault() {}

  static LibraryException explain(Source source, JsonProcessingException fault) {
    String text = source.text();
    int at = fault.getLocation() == null ? 0 : (int) fault.getLocation().getCharOffset();
    at = Math.max(0, Math.min(at, text.length()));
    if (fault instanceof JsonEOFException) {
      return source.error(
          text.stripTrailing().length(),
          "the file ends in the middle of " + unfinished(text),
          "close what is open, or " + Source.restore());
    }
    if (fault instanceof StreamConstraintsException) {
      return source.error(at, "a number, text or key here is too long", "shorten it");
    }
    String message = fault.getOriginalMessage();
    if (message.startsWith("Unrecognized token") || message.startsWith("Non-standard token")) {
      int start = wordStart(text, at);
      return source.error(
          start,
          Quote.cut(text.substring(start, wordEnd(text, at))) + " is not a value of JSON",
          "write true, false, null, a number, or a text in quotation marks");
    }
    char found = at < text.length() ? text.charAt(at) : ' ';
    char before = lastBefore(text, at);
    if (found == '/' || found == '#') {
      return source.error(
          at, "JSON has no comments", "delete it, or write it as the text of a key of your own");
    }
    if (found == '\'' || found == '“' || found == '”' || found == '„') {
      return source.error(
          at, "texts and keys stand in straight double quotation marks", "write \" instead");
    }
    if ((found == '}' || found == ']') && before == ',') {
      return source.error(at, "nothing follows the last comma", "delete the comma");
    }
    if (found == '\n' || found == '\r' || found == '\t') {
      return source.error(
          at, "a line end or a tab stands inside a text", "close the text or write \\n or \\t");
    }
    if (found == '"' || found == '{' || found == '[') {
      return source.error(at, "a comma or a colon is missing before this", "add it");
    }
    return source.error(at, "this is not JSON: " + firstSentence(fault), "correct it by hand");
  }

  /** Where the letters begin that end before an offset. */
  private static int wordStart(String text, int at) {
    int i = at;
    while (i > 0 && Character.isLetter(text.charAt(i - 1))) {
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

  private static String unfinished(String text) {
    int quotes = 0;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\\') {
        i++;
      } else if (text.charAt(i) == '"') {
        quotes++;
      }
    }
    return quotes % 2 == 1 ? "a text" : "an object or a list";
  }

  private static String firstSentence(JsonProcessingException fault) {
    String message = fault.getOriginalMessage();
    int lineEnd = message.indexOf('\n');
    return Quote.cut(lineEnd < 0 ? message : message.substring(0, lineEnd));
  }
}
