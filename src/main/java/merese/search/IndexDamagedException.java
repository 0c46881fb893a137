package merese.search;

/** That an index is missing a part, cannot be read or was made by another version. */
public final class IndexDamagedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public IndexDamagedException(String message, Throwable cause) {
    super(message, cause);
  }
}
