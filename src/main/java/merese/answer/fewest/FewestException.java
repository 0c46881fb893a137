package merese.answer.fewest;

/** That a question about the fewest sources contradicts itself. */
public final class FewestException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  FewestException(String message) {
    super(message);
  }
}
