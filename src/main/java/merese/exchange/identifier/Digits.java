package merese.exchange.identifier;

import java.util.Optional;

/** Digits, a final X and what stands between them in print. */
final class Digits {
  /** Hyphens, dashes, spaces and marks without width that have been seen between digits. */
  private static final String SEPARATORS =
      "- \t\r\n\u00a0\u00ad\u2007\u2009\u200b\u200e\u200f\u2010\u2011\u2012\u2013\u2014\u2015\u202f"
          + "\u2060\u2212\ufe58\ufe63\ufeff\uff0d";

  /** What may follow a number in running text or in a catalogue's punctuation. */
  private static final String CLOSING = ".,;:";

  private Digits() {}

  /**
   * Only the digits of a number, and X for ten at its end.
   *
   * @return empty where anything else is in it, or no digit
   */
  static Optional<String> compact(String printed) {
    StringBuilder digits = new StringBuilder();
    boolean over = false;
    for (int i = 0; i < printed.length(); i++) {
      char c = printed.charAt(i);
      if (isSeparator(c)) {
        continue;
      }
      if (CLOSING.indexOf(c) >= 0 && digits.length() > 0) {
        over = true;
      } else if (over || digits.length() > 0 && digits.charAt(digits.length() - 1) == 'X') {
        return Optional.empty();
      } else if (isDigit(c)) {
        digits.append(c);
      } else if ((c == 'x' || c == 'X') && digits.length() > 0) {
        digits.append('X');
      } else {
        return Optional.empty();
      }
    }
    return digits.length() == 0 ? Optional.empty() : Optional.of(digits.toString());
  }

  /** A number without the punctuation after it. */
  static String withoutClosing(String printed) {
    int end = printed.length();
    while (end > 0
        && (isSeparator(printed.charAt(end - 1))
            || CLOSING.indexOf(printed.charAt(end - 1)) >= 0)) {
      end--;
    }
    return printed.substring(0, end).strip();
  }

  static boolean isSeparator(char c) {
    return SEPARATORS.indexOf(c) >= 0;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** What a digit or X counts for. */
  static int value(char c) {
    return c == 'X' ? 10 : c - '0';
  }

  /** The sum of the digits, the last counted once, the one before twice and so on (modulus 11). */
  static int weighted(String digits) {
    int sum = 0;
    for (int i = 0; i < digits.length(); i++) {
      sum += (digits.length() - i) * value(digits.charAt(i));
    }
    return sum;
  }

  /** X only at its end. */
  static boolean isTenOnlyLast(String digits) {
    int x = digits.indexOf('X');
    return x < 0 || x == digits.length() - 1;
  }
}
