package merese.change.concepts;

/** That a choice of the user's fits no question. The message is for a person. */
public final class ChoiceException extends RuntimeException {
  public ChoiceException(String message) {
    super(message);
  }
}
