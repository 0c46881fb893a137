package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A year of four digits, perhaps with a month and a day.
 *
 * @param dateParts year, month, day: from one to three
 * @param first the first day that may be meant
 * @param last the last one
 */
record EdtfDate(List<EdtfPart> dateParts, Day first, Day last) implements EdtfPoint {
  EdtfDate {
    dateParts = List.copyOf(dateParts);
  }

  /** Empty where no day of the calendar fits, as with 30 February. */
  static Optional<EdtfDate> of(List<EdtfPart> parts) {
    FittingDays days = new FittingDays(parts);
    Optional<Day> first = days.first();
    Optional<Day> last = days.last();
    return first.isEmpty() || last.isEmpty()
        ? Optional.empty()
        : Optional.of(new EdtfDate(parts, first.get(), last.get()));
  }

  @Override
  public Day startOfLast() {
    return switch (dateParts.size()) {
      case 1 -> Day.firstOf(last.year());
      case 2 -> last.startOfMonth();
      default -> last;
    };
  }

  @Override
  public boolean isUnspecified() {
    for (EdtfPart part : dateParts) {
      if (part.isUnspecified()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public int precision() {
    return dateParts.size();
  }

  @Override
  public int level() {
    int level = dateParts.get(0).isNegative() ? 1 : 0;
    return Math.max(level, Math.max(levelOfMarks(), isUnspecified() ? levelOfDigits() : 0));
  }

  /** Level 1 has one mark, at the end. */
  private int levelOfMarks() {
    int level = 0;
    for (int i = 0; i < dateParts.size(); i++) {
      EdtfPart part = dateParts.get(i);
      boolean last = i == dateParts.size() - 1;
      if (part.before() != Qualification.NONE || !last && part.after() != Qualification.NONE) {
        return 2;
      }
      level = part.after() == Qualification.NONE ? level : 1;
    }
    return level;
  }

  /** Level 1 has 201X, 20XX, 2004-XX, 2004-07-XX and 2004-XX-XX. */
  private int levelOfDigits() {
    String year = dateParts.get(0).digits();
    if (year.indexOf('X') >= 0) {
      int open = year.length() - year.indexOf('X');
      boolean fromTheRight = year.endsWith("X".repeat(open));
      return dateParts.size() == 1 && fromTheRight && open <= 2 ? 1 : 2;
    }
    boolean open = false;
    for (EdtfPart part : dateParts.subList(1, dateParts.size())) {
      boolean whole = part.digits().equals("XX");
      if (part.isUnspecified() && !whole || open && !whole) {
        return 2;
      }
      open = open || whole;
    }
    return 1;
  }

  @Override
  public Qualification qualification(Unit unit) {
    return qualification(dateParts, unit);
  }

  static Qualification qualification(List<EdtfPart> parts, Unit unit) {
    int at = unit.ordinal();
    if (at >= parts.size()) {
      return Qualification.NONE;
    }
    Qualification all = parts.get(at).before();
    for (EdtfPart part : parts.subList(at, parts.size())) {
      all = all.and(part.after());
    }
    return all;
  }

  /**
   * Parts that follow each other and are all approximate reach as far as the smallest of them does,
   * and no further than a larger part allows that is not: of "2004-06-~11", where June is known,
   * none of the days is in May.
   */
  @Override
  public Span outer(Circa circa) {
    Day from = first;
    Day to = last;
    Unit[] units = Unit.values();
    for (int i = 0; i < dateParts.size(); i++) {
      boolean ends = i + 1 == dateParts.size() || !isApproximate(units[i + 1]);
      if (isApproximate(units[i]) && ends) {
        int start = i;
        while (start > 0 && isApproximate(units[start - 1])) {
          start--;
        }
        from = notBefore(circa.before(from, units[i]), from, start);
        to = notAfter(wholeMonth(circa.after(to, units[i])), to, start);
      }
    }
    return Span.of(from, to);
  }

  private boolean isApproximate(Unit unit) {
    return qualification(unit).isApproximate();
  }

  private Day wholeMonth(Day day) {
    return dateParts.size() < 3 ? day.endOfMonth() : day;
  }

  private static Day notBefore(Day moved, Day day, int knownParts) {
    return switch (knownParts) {
      case 0 -> moved;
      case 1 -> Day.later(moved, Day.firstOf(day.year()));
      default -> Day.later(moved, day.startOfMonth());
    };
  }

  private static Day notAfter(Day moved, Day day, int knownParts) {
    return switch (knownParts) {
      case 0 -> moved;
      case 1 -> Day.earlier(moved, Day.lastOf(day.year()));
      default -> Day.earlier(moved, day.endOfMonth());
    };
  }

  @Override
  public String printed() {
    return printed(dateParts);
  }

  static String printed(List<EdtfPart> parts) {
    List<String> printed = new ArrayList<>();
    for (EdtfPart part : parts) {
      printed.add(part.printed());
    }
    return String.join("-", printed);
  }
}
