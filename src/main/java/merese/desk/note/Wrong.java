package merese.desk.note;

import java.util.Optional;
import merese.model.ForTheUser;

/**
 * What was wrong with a form.
 *
 * @param field where it is said; "" above the form
 */
public record Wrong(String field, String message) {
  static final Wrong NOTHING = new Wrong("", "");

  /**
   * Of something that was thrown.
   *
   * @throws RuntimeException the same, where it is no mistake of the user's
   */
  static Wrong of(RuntimeException e) {
    if (e instanceof WrongFieldException wrong) {
      return new Wrong(wrong.field(), wrong.getMessage());
    } else if (e instanceof ForTheUser) {
      return new Wrong("", e.getMessage());
    }
    throw e;
  }

  public boolean isAt(String name) {
    return !message.isEmpty() && field.equals(name);
  }

  public boolean said() {
    return !message.isEmpty();
  }

  /** What is said above the form. */
  public Optional<String> above() {
    return isAt("") ? Optional.of(message) : Optional.empty();
  }
}
