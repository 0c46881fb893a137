package merese.change;

import merese.model.ForTheUser;

/** That something typed for a source cannot be taken as it is; the message says what to do. */
public final class EntryException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final SourceField field;

  EntryException(SourceField field, String message) {
    super(field.option() + ": " + message);
    this.field = field;
  }

  /** What it was typed for. */
  public SourceField field() {
    return field;
  }
}
