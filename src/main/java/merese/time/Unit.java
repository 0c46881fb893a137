package merese.time;

/** The parts of a date, from the largest. */
public enum Unit {
  YEAR,
  /** Also a season. */
  MONTH,
  DAY
}
