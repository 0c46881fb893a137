package merese.desk.web;

import java.util.Optional;
import merese.model.ForTheUser;

/** Something typed into a form that cannot be taken as it is. */
public final class FormException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final String field;

  public FormException(String message) {
    this("", message);
  }

  /**
   * @param field the name of the field that it is of; "" for none
   */
  public FormException(String field, String message) {
    super(message);
    this.field = field;
  }

  /** The name of the field that it is of. */
  public Optional<String> field() {
    return field.isEmpty() ? Optional.empty() : Optional.of(field);
  }
}
