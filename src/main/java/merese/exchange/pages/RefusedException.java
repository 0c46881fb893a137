package merese.exchange.pages;

/** That a file cannot be read, before it is said which: what is wrong, and what to do. */
final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String remedy;

  RefusedException(String what, String remedy) {
    super(what);
    this.remedy = remedy;
  }

  String what() {
    return getMessage();
  }

  String remedy() {
    return remedy;
  }
}
