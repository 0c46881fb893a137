package merese.answer.identify;

import merese.model.ForTheUser;

/** That a question names a character, a value or a piece that is not there. */
public final class IdentifyException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  IdentifyException(String message) {
    super(message);
  }
}
