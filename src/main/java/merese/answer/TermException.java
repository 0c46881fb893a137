package merese.answer;

/** That a term has several meanings, or none, where one is needed. */
public final class TermException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public TermException(String message) {
    super(message);
  }
}
