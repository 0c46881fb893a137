package merese.time;

/**
 * How far to each side an approximate date reaches at most, by the smallest part that is called
 * approximate. Editable, and to be printed beside results (R8).
 *
 * @param years for "about 1790"
 * @param months for "about June 1790"
 * @param days for "about 11 June 1790"
 */
public record Circa(int years, int months, int days) {
  /** Five years are R8's; three months and seven days are our own choice, without a source. */
  public static final Circa DEFAULT = new Circa(5, 3, 7);

  private static final int MOST = 10_000;

  public Circa {
    if (Math.min(years, Math.min(months, days)) < 0
        || Math.max(years, Math.max(months, days)) > MOST) {
      throw new IllegalArgumentException("a reach is from 0 to " + MOST);
    }
  }

  Day before(Day day, Unit unit) {
    return after(day, unit, -1);
  }

  Day after(Day day, Unit unit) {
    return after(day, unit, 1);
  }

  private Day after(Day day, Unit unit, int sign) {
    return switch (unit) {
      case YEAR -> day.plusYears((long) sign * years);
      case MONTH -> day.plusMonths((long) sign * months);
      case DAY -> day.plusDays((long) sign * days);
    };
  }
}
