package merese.answer.witnesses;

import java.util.Optional;

/**
 * That one source says what it does after another.
 *
 * @param reference the other source, as an answer names it
 * @param evidence what shows it, in the user's words
 * @param newMatter what an edition has that its parent has not, as printed
 */
public record Dependence(
    Kind kind, String reference, Optional<String> evidence, Optional<String> newMatter) {

  /** In what way. */
  public enum Kind {
    REVISED,
    REPRINT,
    FACSIMILE,
    TRANSLATION,
    TWIN,
    OTHER_EDITION,
    REPEATS,
    SAME_WORK_ABROAD,
    /** Both follow the source that the step before leads to, which has nothing on this. */
    SAME_ORIGIN,
    /** All it has is pictures that the other had before. */
    SAME_PICTURE
  }
}
