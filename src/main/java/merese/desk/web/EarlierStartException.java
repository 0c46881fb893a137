package merese.desk.web;

import merese.model.ForTheUser;

/** A change that a page of ours sends which an earlier start of the desk has made. */
final class EarlierStartException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  EarlierStartException(String message) {
    super(message);
  }
}
