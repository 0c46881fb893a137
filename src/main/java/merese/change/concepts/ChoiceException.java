package merese.change.concepts;

import merese.model.ForTheUser;

/** That a choice of the user's fits no question. The message is for a person. */
public final class ChoiceException extends RuntimeException implements ForTheUser {
  public ChoiceException(String message) {
    super(message);
  }
}
