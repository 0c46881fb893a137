package merese.time;

/**
 * A day of the Gregorian calendar, also before 1582; the year before 1 is 0.
 *
 * @param year at most {@value #FURTHEST} away from 0
 * @param month from 1
 * @param day from 1, and not after the end of the month
 */
public record Day(long year, int month, int day) implements Comparable<Day> {
  /** Years of 16 digits; those that can be written have up to 15. */
  static final long FURTHEST = 9_999_999_999_999_999L;

  private static final int MONTHS = 12;
  private static final int DAYS_IN_400_YEARS = 146_097;

  public Day {
    if (year > FURTHEST || year < -FURTHEST || month < 1 || month > MONTHS || day < 1) {
      throw new IllegalArgumentException("no such day: " + year + ", " + month + ", " + day);
    }
    if (day > lengthOfMonth(year, month)) {
      throw new IllegalArgumentException("no such day: " + year + ", " + month + ", " + day);
    }
  }

  static Day firstOf(long year) {
    return new Day(year, 1, 1);
  }

  static Day lastOf(long year) {
    return new Day(year, MONTHS, 31);
  }

  static int lengthOfMonth(long year, int month) {
    return switch (month) {
      case 2 -> isLeap(year) ? 29 : 28;
      case 4, 6, 9, 11 -> 30;
      default -> 31;
    };
  }

  static boolean isLeap(long year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  }

  Day plusYears(long years) {
    return inMonth(year + years, month, day);
  }

  Day plusMonths(long months) {
    long all = year * MONTHS + month - 1 + months;
    return inMonth(Math.floorDiv(all, MONTHS), (int) Math.floorMod(all, (long) MONTHS) + 1, day);
  }

  private static Day inMonth(long year, int month, int day) {
    return new Day(year, month, Math.min(day, lengthOfMonth(year, month)));
  }

  Day plusDays(long days) {
    return days == 0 ? this : ofNumber(number() + days);
  }

  Day startOfMonth() {
    return new Day(year, month, 1);
  }

  Day endOfMonth() {
    return new Day(year, month, lengthOfMonth(year, month));
  }

  /** Days since 1 March 0: years that start in March have their leap day at the end. */
  private long number() {
    long y = month > 2 ? year : year - 1;
    int m = month > 2 ? month - 3 : month + 9;
    return 365 * y
        + Math.floorDiv(y, 4L)
        - Math.floorDiv(y, 100L)
        + Math.floorDiv(y, 400L)
        + (153 * m + 2) / 5
        + day
        - 1;
  }

  private static Day ofNumber(long number) {
    long era = Math.floorDiv(number, (long) DAYS_IN_400_YEARS);
    int inEra = (int) Math.floorMod(number, (long) DAYS_IN_400_YEARS);
    int y = (inEra - inEra / 1460 + inEra / 36_524 - inEra / 146_096) / 365;
    int inYear = inEra - (365 * y + y / 4 - y / 100);
    int m = (5 * inYear + 2) / 153;
    int day = inYear - (153 * m + 2) / 5 + 1;
    int month = m < 10 ? m + 3 : m - 9;
    return new Day(era * 400 + y + (month <= 2 ? 1 : 0), month, day);
  }

  @Override
  public int compareTo(Day other) {
    int byYear = Long.compare(year, other.year);
    int byMonth = byYear != 0 ? byYear : Integer.compare(month, other.month);
    return byMonth != 0 ? byMonth : Integer.compare(day, other.day);
  }

  static Day earlier(Day one, Day other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  static Day later(Day one, Day other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** As ISO 8601 has it: 1785-03-01; a year of more than four digits with its sign. */
  @Override
  public String toString() {
    String digits = Long.toString(Math.abs(year));
    String sign = year < 0 ? "-" : digits.length() > 4 ? "+" : "";
    String padded = "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    return sign + padded + "-" + twoDigits(month) + "-" + twoDigits(day);
  }

  private static String twoDigits(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
