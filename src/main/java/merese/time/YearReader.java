package merese.time;

/** Reads what only a year can have: the letter Y, an exponent, significant digits. */
final class YearReader {
  private static final int MOST_DIGITS = 15;
  private static final int FOUR_DIGITS = 9_999;

  private YearReader() {}

  /** Y170000002, Y-17E7, Y3388E2S3. */
  static EdtfYear letterYear(Slice slice) {
    int start = slice.from();
    if (slice.at(start) == 'y') {
      throw slice.error(start, "the letter is small", "write Y");
    }
    boolean negative = slice.at(start + 1) == '-';
    int digits = start + (negative ? 2 : 1);
    long number = number(slice, digits, "a year");
    int at = slice.afterDigits(digits);
    if (slice.at(at) == 'E') {
      long exponent = number(slice, at + 1, "an exponent");
      at = slice.afterDigits(at + 1);
      number = raised(slice, number, exponent, digits);
    } else if (number <= FOUR_DIGITS) {
      throw slice.error(
          digits, "a year with Y has more than four digits", "write it without Y, in four digits");
    }
    return ended(slice, at, negative ? -number : number);
  }

  private static long raised(Slice slice, long number, long exponent, int place) {
    long raised = number;
    for (long i = 0; i < exponent; i++) {
      raised *= 10;
      if (raised > Day.FURTHEST / 10) {
        throw tooFar(slice, place);
      }
    }
    return raised;
  }

  /** 1950S2, after its first four digits. */
  static EdtfYear significant(Slice slice, int at, long year) {
    if (year == 0 && slice.at(slice.from()) == '-') {
      throw slice.error(slice.from(), "there is no year -0000", "write 0000 for the year before 1");
    }
    return ended(slice, at, year);
  }

  private static EdtfYear ended(Slice slice, int start, long year) {
    int at = start;
    int significant = 0;
    if (slice.at(at) == 'S') {
      significant = (int) Math.min(MOST_DIGITS, number(slice, at + 1, "how many digits count"));
      at = slice.afterDigits(at + 1);
    }
    String written = slice.text().substring(slice.from(), at);
    Qualification after = Qualification.NONE;
    if (Qualification.isMark(slice.at(at))) {
      after = Qualification.ofMark(slice.at(at));
      at++;
    }
    if (at < slice.to()) {
      throw slice.error(
          at, "there is more after the year", "write no month or day with a year with Y, E or S");
    }
    return new EdtfYear(written, year, significant, after);
  }

  /** Digits that do not start with 0. */
  private static long number(Slice slice, int start, String what) {
    int end = slice.afterDigits(start);
    if (end == start) {
      throw slice.error(start, "digits are missing for " + what, "write a number");
    }
    if (slice.at(start) == '0') {
      throw slice.error(start, "the digits for " + what + " start with 0", "leave the 0 out");
    }
    if (end - start > MOST_DIGITS) {
      throw tooFar(slice, start);
    }
    return Long.parseLong(slice.text().substring(start, end));
  }

  private static EdtfException tooFar(Slice slice, int place) {
    return slice.error(
        place,
        "a number has more than " + MOST_DIGITS + " digits",
        "that is more than is reckoned with; write a nearer year");
  }
}
