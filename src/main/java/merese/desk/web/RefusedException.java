package merese.desk.web;

import merese.model.ForTheUser;

/** A request that the desk does not take. */
public final class RefusedException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final int status;

  /**
   * @param status of HTTP
   */
  public RefusedException(int status, String message) {
    super(message);
    this.status = status;
  }

  public int status() {
    return status;
  }
}
