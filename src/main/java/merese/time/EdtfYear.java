package merese.time;

/**
 * A year that starts with Y, or one that says how many of its digits are significant.
 *
 * @param written without the mark after it
 * @param year at most 15 digits
 * @param significant how many digits; 0 where nothing is said
 */
record EdtfYear(String written, long year, int significant, Qualification after)
    implements EdtfPoint {
  @Override
  public Day first() {
    return Day.firstOf(year);
  }

  @Override
  public Day last() {
    return Day.lastOf(year);
  }

  @Override
  public Day startOfLast() {
    return first();
  }

  @Override
  public boolean isUnspecified() {
    return false;
  }

  @Override
  public int precision() {
    return 1;
  }

  @Override
  public int level() {
    return significant > 0 || written.indexOf('E') >= 0 ? 2 : 1;
  }

  @Override
  public Qualification qualification(Unit unit) {
    return unit == Unit.YEAR ? after : Qualification.NONE;
  }

  /** All years that have the same significant digits: 1900 to 1999 for 1950S2. */
  @Override
  public Span outer(Circa circa) {
    long step = 1;
    int digits = Long.toString(Math.abs(year)).length();
    for (int i = significant; significant > 0 && i < digits; i++) {
      step *= 10;
    }
    long near = Math.abs(year) / step * step;
    long far = near + step - 1;
    Day from = Day.firstOf(year < 0 ? -far : near);
    Day to = Day.lastOf(year < 0 ? -near : far);
    return after.isApproximate()
        ? Span.of(circa.before(from, Unit.YEAR), circa.after(to, Unit.YEAR))
        : Span.of(from, to);
  }

  @Override
  public String printed() {
    return written + after.mark();
  }
}
