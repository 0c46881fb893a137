package merese.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.OptionalInt;

/** Numbers, dates and times from their text, without the formatters that are slow to load. */
final class Scalars {
  /** The length of 2025-03-02T09:15:00Z. */
  private static final int USUAL_TIME = 20;

  private static final int HOURS = 24;
  private static final int SIXTY = 60;
  private static final long SECONDS_A_DAY = 86_400;
  private static final int LAST_OF_FOUR_DIGITS = 9_999;

  private Scalars() {}

  /** A whole number of at most nine digits as JSON spells it. */
  static OptionalInt whole(String spelling) {
    int from = spelling.startsWith("-") ? 1 : 0;
    if (spelling.length() == from || spelling.length() > from + 9) {
      return OptionalInt.empty();
    }
    for (int i = from; i < spelling.length(); i++) {
      if (spelling.charAt(i) < '0' || spelling.charAt(i) > '9') {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.of(Integer.parseInt(spelling));
  }

  /** A day as ISO 8601 writes it, 2025-03-02; null for anything else. */
  static LocalDate date(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return null;
    }
    OptionalInt year = digits(text, 0, 4);
    OptionalInt month = digits(text, 5, 7);
    OptionalInt day = digits(text, 8, 10);
    if (year.isEmpty() || month.isEmpty() || day.isEmpty()) {
      return null;
    }
    try {
      return LocalDate.of(year.getAsInt(), month.getAsInt(), day.getAsInt());
    } catch (DateTimeException e) {
      return null;
    }
  }

  /**
   * A time as {@link Instant#parse} reads it.
   *
   * @throws java.time.format.DateTimeParseException where it is none
   */
  static Instant time(String text) {
    boolean usual =
        text.length() == USUAL_TIME
            && text.charAt(10) == 'T'
            && text.charAt(13) == ':'
            && text.charAt(16) == ':'
            && text.charAt(19) == 'Z';
    LocalDate day = usual ? date(text.substring(0, 10)) : null;
    if (day != null) {
      int hour = digits(text, 11, 13).orElse(HOURS);
      int minute = digits(text, 14, 16).orElse(SIXTY);
      int second = digits(text, 17, 19).orElse(SIXTY);
      if (hour < HOURS && minute < SIXTY && second < SIXTY) {
        long minutes = (day.toEpochDay() * HOURS + hour) * SIXTY + minute;
        return Instant.ofEpochSecond(minutes * SIXTY + second);
      }
    }
    return Instant.parse(text);
  }

  /** A time as {@link Instant#toString} writes it. */
  static String text(Instant time) {
    long second = time.getEpochSecond();
    LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(second, SECONDS_A_DAY));
    if (time.getNano() > 0 || day.getYear() < 0 || day.getYear() > LAST_OF_FOUR_DIGITS) {
      return time.toString();
    }
    int ofDay = (int) Math.floorMod(second, SECONDS_A_DAY);
    StringBuilder text = new StringBuilder(USUAL_TIME).append(day);
    twoDigits(ofDay / SIXTY / SIXTY, text.append('T'));
    twoDigits(ofDay / SIXTY % SIXTY, text.append(':'));
    twoDigits(ofDay % SIXTY, text.append(':'));
    return text.append('Z').toString();
  }

  private static void twoDigits(int number, StringBuilder to) {
    to.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }

  private static OptionalInt digits(String text, int from, int to) {
    return text.charAt(from) == '-' ? OptionalInt.empty() : whole(text.substring(from, to));
  }
}
