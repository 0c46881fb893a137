package merese.change.notes;

import merese.model.ForTheUser;

/** That a source has this very note already; it can be written once more even so. */
public final class NotedAlreadyException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final String note;

  NotedAlreadyException(String source, String note) {
    super(
        source
            + " has this very note already ("
            + note
            + "); nothing was written, and --again writes it once more");
    this.note = note;
  }

  /** The id of the note that is there. */
  public String note() {
    return note;
  }
}
