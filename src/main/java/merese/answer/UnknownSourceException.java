package merese.answer;

import java.util.List;
import merese.model.ForTheUser;

/** That a key was typed which no source has, or a part which a source does not have. */
public final class UnknownSourceException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private final transient List<String> near;

  private UnknownSourceException(String message, List<String> near) {
    super(message);
    this.near = near;
  }

  /** The keys or parts that may have been meant. */
  public List<String> near() {
    return near;
  }

  static UnknownSourceException key(String typed, List<String> near) {
    return new UnknownSourceException(
        near.isEmpty()
            ? "no source " + typed + "; a source is named by the key of its edition, as in works/"
            : "no source " + typed + "; did you mean " + String.join(" or ", near) + "?",
        near);
  }

  static UnknownSourceException part(String key, String typed, List<String> parts) {
    return new UnknownSourceException(
        "no part "
            + typed
            + " in "
            + key
            + (parts.isEmpty()
                ? ", which has no parts; cite it without one"
                : "; its parts are " + String.join(", ", parts)),
        parts);
  }
}
