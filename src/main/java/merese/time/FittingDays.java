package merese.time;

import java.util.List;
import java.util.Optional;

/** The days that fit the digits of a date. */
final class FittingDays {
  private static final int LAST_MONTH = 12;
  private static final int LAST_DAY = 31;

  private final List<EdtfPart> parts;

  FittingDays(List<EdtfPart> parts) {
    this.parts = parts;
  }

  /** The first of them; empty where the calendar has none. */
  Optional<Day> first() {
    return find(true);
  }

  Optional<Day> last() {
    return find(false);
  }

  private Optional<Day> find(boolean first) {
    EdtfPart year = parts.get(0);
    boolean upwards = first != year.isNegative();
    int from = upwards ? year.least() : year.greatest();
    int to = upwards ? year.greatest() : year.least();
    for (int y = from; upwards ? y <= to : y >= to; y += upwards ? 1 : -1) {
      if (year.fits(y) && !(year.isNegative() && y == 0)) {
        Optional<Day> day = inYear(year.isNegative() ? -y : y, first);
        if (day.isPresent()) {
          return day;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Day> inYear(int year, boolean first) {
    if (parts.size() == 1) {
      return Optional.of(first ? Day.firstOf(year) : Day.lastOf(year));
    }
    for (int i = 1; i <= LAST_MONTH; i++) {
      int month = first ? i : LAST_MONTH + 1 - i;
      if (parts.get(1).fits(month)) {
        Optional<Day> day = inMonth(new Day(year, month, 1), first);
        if (day.isPresent()) {
          return day;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Day> inMonth(Day start, boolean first) {
    if (parts.size() == 2) {
      return Optional.of(first ? start : start.endOfMonth());
    }
    int length = Day.lengthOfMonth(start.year(), start.month());
    for (int i = 1; i <= LAST_DAY; i++) {
      int day = first ? i : LAST_DAY + 1 - i;
      if (day <= length && parts.get(2).fits(day)) {
        return Optional.of(new Day(start.year(), start.month(), day));
      }
    }
    return Optional.empty();
  }
}
