package merese.change;

import merese.model.ForTheUser;

/** That what was asked for would not make sense in this library; the message says why. */
public final class ChangeRefusedException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  public ChangeRefusedException(String message) {
    super(message);
  }

  /** For what a record refuses to hold. */
  public static ChangeRefusedException of(IllegalArgumentException refused) {
    ChangeRefusedException exception = new ChangeRefusedException(refused.getMessage());
    exception.initCause(refused);
    return exception;
  }
}
