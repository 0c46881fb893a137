package merese.citation;

import merese.model.ForTheUser;

/** A style or a source that cannot be cited; the message is for a person and says what to do. */
public final class CitationException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1;

  CitationException(String message) {
    super(message);
  }

  CitationException(String message, Throwable cause) {
    super(message, cause);
  }
}
