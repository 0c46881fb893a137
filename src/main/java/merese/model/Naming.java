package merese.model;

import java.util.Optional;

/**
 * A term as printed and what it means.
 *
 * @param printed exactly as the source has it; empty where the source describes or pictures without
 *     naming
 * @param concept the id of a concept; empty while unassigned
 * @param why what the concept rests on; there is one exactly where there is a concept
 */
public record Naming(String printed, Optional<String> concept, Optional<Why> why) {
  /** What an assigned meaning rests on. */
  public enum Why implements Coded {
    TEXT,
    PICTURE,
    MY_READING
  }

  public Naming {
    Require.that(printed != null, "a naming's printed term may be empty but must be there");
    Require.that(
        concept.isPresent() == why.isPresent(),
        "a naming has both \"concept\" and \"why\" (text, picture or my-reading), or neither");
  }

  public boolean means(String conceptId) {
    return concept.isPresent() && concept.get().equals(conceptId);
  }
}
