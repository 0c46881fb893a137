package merese.exchange.csl;

/**
 * The value of a variable as the text of a field, and back.
 *
 * <p>A text of JSON stands as it is, without its quotation marks: {@code page = 12-14}. All else is
 * JSON without spaces: {@code volume = 10}, {@code author = [{"family":"Quenby"}]}. A text that
 * would look like the latter keeps its quotation marks: {@code volume = "10"}; so does one with
 * half a character, which cannot be stored otherwise.
 */
final class FieldText {
  private FieldText() {}

  static String of(Json value) {
    return value instanceof Json.Text text && !needsMarks(text.value())
        ? text.value()
        : value.compact();
  }

  static Json read(String field) {
    return looksLikeJson(field)
        ? JsonParsing.tried(field).orElseGet(() -> new Json.Text(field))
        : new Json.Text(field);
  }

  private static boolean needsMarks(String text) {
    if (looksLikeJson(text)) {
      return true;
    }
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= Character.MIN_SURROGATE && JsonText.isHalf(text, i)) {
        return true;
      }
    }
    return false;
  }

  private static boolean looksLikeJson(String text) {
    if (text.isEmpty()) {
      return false;
    }
    char first = text.charAt(0);
    return switch (first) {
      case '{', '[', '"' -> true;
      case 't' -> text.equals("true");
      case 'f' -> text.equals("false");
      case 'n' -> text.equals("null");
      default -> (first == '-' || isDigit(first)) && isNumber(text);
    };
  }

  /** As RFC 8259 has it, section 6. */
  private static boolean isNumber(String text) {
    int i = text.charAt(0) == '-' ? 1 : 0;
    int end = digits(text, i);
    if (end == i || end > i + 1 && text.charAt(i) == '0') {
      return false;
    }
    if (end < text.length() && text.charAt(end) == '.') {
      int fraction = end + 1;
      end = digits(text, fraction);
      if (end == fraction) {
        return false;
      }
    }
    if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
      int power = end + 1;
      if (power < text.length() && "+-".indexOf(text.charAt(power)) >= 0) {
        power++;
      }
      end = digits(text, power);
      if (end == power) {
        return false;
      }
    }
    return end == text.length();
  }

  private static int digits(String text, int from) {
    int i = from;
    while (i < text.length() && isDigit(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
