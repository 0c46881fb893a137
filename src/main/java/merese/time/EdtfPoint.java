package merese.time;

/** What can be the end of an interval or a member of a set. */
sealed interface EdtfPoint extends Edtf permits EdtfDate, EdtfSeason, EdtfYear {
  /** The first day that may be meant. */
  Day first();

  /** The last day that may be meant. */
  Day last();

  /** The first day of the last year, month or day that may be meant: 1 January 1799 for 179X. */
  Day startOfLast();

  /** Whether a digit is left open. */
  boolean isUnspecified();

  /** How many parts it is given to: 1 for a year. */
  int precision();

  /** The level that it has in an interval. */
  default int levelInInterval() {
    return isUnspecified() ? 2 : level();
  }

  @Override
  default Span core() {
    return Span.of(first(), last());
  }
}
