package merese.answer;

/** That a mark of a script cannot be read; the message says in which line. */
public final class ScriptException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ScriptException(String message) {
    super(message);
  }
}
