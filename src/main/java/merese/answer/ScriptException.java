package merese.answer;

import merese.model.ForTheUser;

/** That marks of a script cannot be read; the message has a line for each, with where it stands. */
public final class ScriptException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  ScriptException(String message) {
    super(message);
  }
}
