package merese.time;

import java.util.List;

/**
 * A season, quarter, third or half of a year.
 *
 * <p>The specification fixes no months, so these are our own choice. The core is in the year that
 * is named: three months from March, June, September or December, as north of the equator where
 * nothing is said, and of a season that starts in December only that month. The outer span takes in
 * the astronomical season and, of that one, both that the year has a share in; where no hemisphere
 * is named, the whole year too. Quarters, thirds and halves are whole months.
 *
 * @param year perhaps with digits left open
 * @param season its number, 21 to 41, in two digits
 */
record EdtfSeason(EdtfPart year, EdtfPart season) implements EdtfPoint {
  static final int FIRST = 21;
  static final int LAST = 41;

  private static final int NORTHERN = 25;
  private static final int SOUTHERN = 29;
  private static final int QUARTERS = 33;
  private static final int THIRDS = 37;
  private static final int HALVES = 40;
  private static final int DECEMBER = 12;

  private int code() {
    return season.least();
  }

  /** The month that it starts in. */
  private int firstMonth() {
    int code = code();
    if (code >= HALVES) {
      return 1 + 6 * (code - HALVES);
    }
    if (code >= THIRDS) {
      return 1 + 4 * (code - THIRDS);
    }
    if (code >= QUARTERS) {
      return 1 + 3 * (code - QUARTERS);
    }
    if (code >= SOUTHERN) {
      return code - SOUTHERN < 2 ? 9 + 3 * (code - SOUTHERN) : 3 * (code - SOUTHERN - 1);
    }
    return 3 + 3 * (code >= NORTHERN ? code - NORTHERN : code - FIRST);
  }

  private int lastMonth() {
    int code = code();
    int months = code >= HALVES ? 6 : code >= THIRDS ? 4 : 3;
    return Math.min(DECEMBER, firstMonth() + months - 1);
  }

  private boolean crossesTheYear() {
    return code() < QUARTERS && firstMonth() == DECEMBER;
  }

  private long firstYear() {
    return year.isNegative() ? -year.greatest() : year.least();
  }

  private long lastYear() {
    return year.isNegative() ? -year.least() : year.greatest();
  }

  @Override
  public Day first() {
    return new Day(firstYear(), firstMonth(), 1);
  }

  @Override
  public Day last() {
    return new Day(lastYear(), lastMonth(), 1).endOfMonth();
  }

  @Override
  public Day startOfLast() {
    return new Day(lastYear(), firstMonth(), 1);
  }

  @Override
  public boolean isUnspecified() {
    return year.isUnspecified();
  }

  @Override
  public int precision() {
    return 2;
  }

  /** As the test lists have it, a season with a mark is of level 1 only in an interval. */
  @Override
  public int level() {
    boolean marked = qualification() != Qualification.NONE;
    return marked ? 2 : levelInInterval();
  }

  @Override
  public int levelInInterval() {
    boolean inner =
        year.before() != Qualification.NONE
            || year.after() != Qualification.NONE
            || season.before() != Qualification.NONE;
    return inner || isUnspecified() || code() >= NORTHERN ? 2 : 1;
  }

  @Override
  public Qualification qualification(Unit unit) {
    return EdtfDate.qualification(List.of(year, season), unit);
  }

  @Override
  public Span outer(Circa circa) {
    Day from = first();
    Day to = last();
    if (code() < QUARTERS) {
      boolean anywhere = code() < NORTHERN;
      boolean next = crossesTheYear() || code() == FIRST + 1;
      from = anywhere || crossesTheYear() ? Day.firstOf(firstYear()) : from;
      to =
          next
              ? new Day(lastYear() + 1, 3, 31)
              : anywhere ? Day.lastOf(lastYear()) : to.plusMonths(1).endOfMonth();
    }
    if (qualification(Unit.MONTH).isApproximate()) {
      return Span.of(circa.before(from, Unit.MONTH), circa.after(to, Unit.MONTH).endOfMonth());
    }
    return qualification(Unit.YEAR).isApproximate()
        ? Span.of(circa.before(from, Unit.YEAR), circa.after(to, Unit.YEAR).endOfMonth())
        : Span.of(from, to);
  }

  @Override
  public String printed() {
    return year.printed() + "-" + season.printed();
  }
}
