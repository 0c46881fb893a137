package merese.exchange.bibtex;

/** What is wrong with an entry, and where in its text. */
final class BibtexFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final int offset;
  private final String remedy;

  /**
   * @param offset in the entry's text, in chars
   */
  BibtexFault(int offset, String what, String remedy) {
    super(what, null, false, false);
    this.offset = offset;
    this.remedy = remedy;
  }

  int offset() {
    return offset;
  }

  String what() {
    return getMessage();
  }

  String remedy() {
    return remedy;
  }
}
