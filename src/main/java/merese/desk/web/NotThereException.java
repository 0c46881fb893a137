package merese.desk.web;

import merese.model.ForTheUser;

/** What an address names is not in the library or the program. */
public final class NotThereException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  public NotThereException(String message) {
    super(message);
  }
}
