package merese.answer;

import merese.model.ForTheUser;

/** That a mark of a script cannot be read; the message says in which line. */
public final class ScriptException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  ScriptException(String message) {
    super(message);
  }
}
