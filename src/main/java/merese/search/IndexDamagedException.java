package merese.search;

/** That an index is missing a part, cannot be read or was made by another version. */
public final class IndexDamagedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean ofAnotherVersion;

  public IndexDamagedException(String message, Throwable cause) {
    super(message, cause);
    this.ofAnotherVersion = false;
  }

  private IndexDamagedException() {
    super("the index was made by another version");
    this.ofAnotherVersion = true;
  }

  static IndexDamagedException ofAnotherVersion() {
    return new IndexDamagedException();
  }

  /** Whether the index may be sound, and another version of the program can read it. */
  public boolean isOfAnotherVersion() {
    return ofAnotherVersion;
  }
}
