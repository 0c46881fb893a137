package merese.change;

import merese.model.ForTheUser;

/** That something typed for a source cannot be taken as it is; the message says what to do. */
public final class EntryException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final SourceField field;
  private final String reason;
  private final boolean printable;

  EntryException(SourceField field, String reason) {
    super(field.option() + ": " + reason);
    this.field = field;
    this.reason = reason;
    this.printable = false;
  }

  /**
   * @param unlessPrinted what to do where the source itself has it wrong
   */
  EntryException(SourceField field, String reason, String unlessPrinted) {
    super(field.option() + ": " + reason + unlessPrinted);
    this.field = field;
    this.reason = reason;
    this.printable = true;
  }

  /** What it was typed for. */
  public SourceField field() {
    return field;
  }

  /** What is wrong, without the option that it was typed for. */
  public String reason() {
    return reason;
  }

  /** Whether it can be taken even so, as wrong in print. */
  public boolean mayBeAsPrinted() {
    return printable;
  }
}
