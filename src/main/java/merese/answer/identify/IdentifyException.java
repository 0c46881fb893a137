package merese.answer.identify;

/** That a question names a character, a value or a piece that is not there. */
public final class IdentifyException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  IdentifyException(String message) {
    super(message);
  }
}
