package merese.store;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalInt;

/** Numbers and dates from their text, without the formatters that are slow to load. */
final class Scalars {
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

  private static OptionalInt digits(String text, int from, int to) {
    return text.charAt(from) == '-' ? OptionalInt.empty() : whole(text.substring(from, to));
  }
}
