package merese.time;

/**
 * A day and a time on it.
 *
 * @param time with its zone, as it is written
 */
record EdtfTime(EdtfDate date, String time) implements Edtf {
  @Override
  public int level() {
    return date.level();
  }

  @Override
  public Span core() {
    return date.core();
  }

  @Override
  public Span outer(Circa circa) {
    return date.core();
  }

  @Override
  public Qualification qualification(Unit unit) {
    return Qualification.NONE;
  }

  @Override
  public String printed() {
    return date.printed() + "T" + time;
  }
}
