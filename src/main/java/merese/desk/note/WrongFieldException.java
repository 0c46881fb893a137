package merese.desk.note;

import merese.model.ForTheUser;

/** Something typed into one field of a form that cannot be taken as it is. */
final class WrongFieldException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final String field;

  WrongFieldException(String field, String message) {
    super(message);
    this.field = field;
  }

  String field() {
    return field;
  }
}
