package merese.desk.web;

import merese.model.ForTheUser;

/** Something typed into a form that cannot be taken as it is. */
public final class FormException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  public FormException(String message) {
    super(message);
  }
}
