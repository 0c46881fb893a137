package merese.model;

import java.util.Optional;

/**
 * That one work depends on another, so that the two are not independent witnesses.
 *
 * @param to the id of the other work
 * @param picture the picture id that is reused, where one is known
 * @param evidence what shows it, in the user's words
 */
public record WorkLink(Kind kind, String to, Optional<String> picture, Optional<String> evidence) {
  /** How one work depends on another. */
  public enum Kind implements Coded {
    REPEATS,
    CITES,
    REUSES_PICTURE,
    TRANSLATES,
    SAME_WORK_ABROAD
  }

  public WorkLink {
    Require.text(to, "the work that a link leads to");
  }
}
