package merese.change;

import merese.model.ForTheUser;

/** That something looks like what is in the library already; it can be added even so. */
public final class DoubleException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final String key;
  private final String found;

  DoubleException(String key, String found, String remedy) {
    super(found + "; nothing was added. " + remedy);
    this.key = key;
    this.found = found;
  }

  /** The key of what it looks like. */
  public String key() {
    return key;
  }

  /** What it looks like, and why. */
  public String found() {
    return found;
  }
}
