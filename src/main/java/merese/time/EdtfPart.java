package merese.time;

/**
 * The year, month or day of a date as it is written.
 *
 * @param before the mark before it, which is about this part alone
 * @param digits with X for a digit left open; a year may start with a minus
 * @param after the mark after it, which is about this part and all before it
 */
record EdtfPart(Qualification before, String digits, Qualification after) {
  boolean isNegative() {
    return digits.charAt(0) == '-';
  }

  boolean isUnspecified() {
    return digits.indexOf('X') >= 0;
  }

  /** The least number that fits the digits, without regard to a minus. */
  int least() {
    return number('0');
  }

  /** The greatest number that fits the digits, without regard to a minus. */
  int greatest() {
    return number('9');
  }

  private int number(char forX) {
    int number = 0;
    for (int i = isNegative() ? 1 : 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      number = number * 10 + (c == 'X' ? forX : c) - '0';
    }
    return number;
  }

  /** Whether a number has these digits. */
  boolean fits(int number) {
    int rest = number;
    for (int i = digits.length() - 1; i >= (isNegative() ? 1 : 0); i--) {
      char c = digits.charAt(i);
      if (c != 'X' && c - '0' != rest % 10) {
        return false;
      }
      rest /= 10;
    }
    return rest == 0;
  }

  String printed() {
    return before.mark() + digits + after.mark();
  }
}
