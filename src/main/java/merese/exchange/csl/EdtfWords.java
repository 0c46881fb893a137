package merese.exchange.csl;

import java.util.Optional;

/**
 * Dates in the Extended Date/Time Format (ISO 8601-2:2019, levels 0 and 1 as far as a publication
 * has them) in words: years, months, days and seasons, each approximate or uncertain, and intervals
 * of two.
 */
final class EdtfWords {
  private EdtfWords() {}

  /** Empty where the text is not of these. */
  static Optional<DateWords> of(String text) {
    String date = text.strip();
    int slash = date.indexOf('/');
    if (slash < 0) {
      return words(date).map(w -> DateWords.made(year(date), w));
    }
    String from = date.substring(0, slash);
    String to = date.substring(slash + 1);
    Optional<String> second = to.isEmpty() || to.equals("..") ? Optional.of("") : words(to);
    return words(from).flatMap(a -> second.map(b -> DateWords.made(year(from), joined(a, b))));
  }

  private static String joined(String from, String to) {
    boolean bare = from.indexOf(' ') < 0 && to.indexOf(' ') < 0;
    return bare ? from + "–" + to : (from + " – " + to).strip();
  }

  private static int year(String date) {
    return Integer.parseInt(date.substring(0, 4));
  }

  private static Optional<String> words(String date) {
    String bare = date;
    char mark = date.isEmpty() ? ' ' : date.charAt(date.length() - 1);
    if (mark == '~' || mark == '?' || mark == '%') {
      bare = date.substring(0, date.length() - 1);
    }
    boolean shaped =
        isShaped(bare, "dddd") || isShaped(bare, "dddd-dd") || isShaped(bare, "dddd-dd-dd");
    if (!shaped) {
      return Optional.empty();
    }
    int[] parts = new int[(bare.length() - 1) / 3];
    parts[0] = year(bare);
    for (int i = 1; i < parts.length; i++) {
      parts[i] = Integer.parseInt(bare.substring(2 + 3 * i, 4 + 3 * i));
    }
    boolean season = parts.length == 2 && parts[1] >= 21 && parts[1] <= 24;
    boolean real =
        parts.length == 1
            || season
            || parts[1] >= 1 && parts[1] <= 12 && (parts.length == 2 || parts[2] <= 31);
    if (!real) {
      return Optional.empty();
    }
    String words = DateWords.words(parts, "");
    return Optional.of(
        (mark == '~' || mark == '%' ? "c. " : "")
            + words
            + (mark == '?' || mark == '%' ? "?" : ""));
  }

  /** Whether each d of a shape is a digit and all else is the same. */
  private static boolean isShaped(String text, String shape) {
    if (text.length() != shape.length()) {
      return false;
    }
    for (int i = 0; i < shape.length(); i++) {
      char c = text.charAt(i);
      if (shape.charAt(i) == 'd' ? c < '0' || c > '9' : c != shape.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
