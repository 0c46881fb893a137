package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * A piece of the user's own, as evidence.
 *
 * @param ref what the user calls it, such as "d-17"
 * @param provenance where it was bought and what the seller said; never a place claim
 */
public record OwnObject(
    String ref,
    String title,
    Optional<String> measurements,
    Optional<String> provenance,
    List<Evidence> evidence,
    List<Observation> observations,
    List<Photograph> photographs) {

  public OwnObject {
    Require.text(ref, "an object's reference");
    Require.text(title, "an object's title");
    evidence = List.copyOf(evidence);
    observations = List.copyOf(observations);
    photographs = List.copyOf(photographs);
  }

  /** What the piece shows of a concept. */
  public record Evidence(
      String concept, Kind kind, Optional<String> words, Optional<String> photo) {
    /** Whether it bears the concept out. */
    public enum Kind implements Coded {
      EXAMPLE,
      COUNTER_EXAMPLE,
      MIXED;

      /** The kind in the words of an answer. */
      public String words() {
        return this == COUNTER_EXAMPLE ? "counter-example" : code();
      }
    }
  }

  /**
   * What was seen or felt, or looked for in vain.
   *
   * @param part such as "lowest of three rings"
   * @param found false for what was looked for and not found, which differs from not looked for
   */
  public record Observation(
      String part,
      String character,
      Optional<String> value,
      Sense sense,
      boolean found,
      Optional<String> photo) {
    /** In one line: "base: pencilled number, 88", "rings: mould seam, looked for and not found". */
    public String words() {
      return part
          + ": "
          + character
          + value.map(v -> ", " + v).orElse("")
          + (found ? "" : ", looked for and not found");
    }

    /** How it was noticed. */
    public enum Sense implements Coded {
      SEEN,
      FELT
    }
  }

  /** A photograph of the piece; {@code file} is below the library's folder of pictures. */
  public record Photograph(String id, String file, Optional<String> words) {}
}
