package merese.exchange.marc;

/** That a record can't be read, and what can be done about it. */
final class BadRecord extends Exception {
  private static final long serialVersionUID = 1;

  private final String remedy;

  BadRecord(String what, String remedy) {
    super(what, null, false, false);
    this.remedy = remedy;
  }

  String remedy() {
    return remedy;
  }
}
