package merese.change;

/** That what was asked for would not make sense in this library; the message says why. */
public final class ChangeRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public ChangeRefusedException(String message) {
    super(message);
  }
}
