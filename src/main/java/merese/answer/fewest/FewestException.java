package merese.answer.fewest;

import merese.model.ForTheUser;

/** That a question about the fewest sources contradicts itself. */
public final class FewestException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  FewestException(String message) {
    super(message);
  }
}
