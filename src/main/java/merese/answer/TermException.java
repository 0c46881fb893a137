package merese.answer;

import merese.model.ForTheUser;

/** That a term has several meanings, or none, where one is needed. */
public final class TermException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  public TermException(String message) {
    super(message);
  }
}
