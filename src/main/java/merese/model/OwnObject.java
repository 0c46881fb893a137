package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * A piece of the user's own, as evidence.
 *
 * @param ref what the user calls it, such as "d-17"
 * @param provenance where it was bought and what the seller said; never a place claim
 * @param place where it is kept, such as "cabinet 2, shelf 1"
 */
public record OwnObject(
    String ref,
    String title,
    Optional<String> measurements,
    Optional<String> provenance,
    Optional<String> place,
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

  /** A piece of which nobody has recorded where it is kept. */
  public OwnObject(
      String ref,
      String title,
      Optional<String> measurements,
      Optional<String> provenance,
      List<Evidence> evidence,
      List<Observation> observations,
      List<Photograph> photographs) {
    this(
        ref,
        title,
        measurements,
        provenance,
        Optional.empty(),
        evidence,
        observations,
        photographs);
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

  /**
   * A photograph of the piece.
   *
   * @param file below the library's folder of pictures
   * @param turn how to hold the piece so that it shows what the photograph shows
   */
  public record Photograph(String id, String file, Optional<String> words, Optional<String> turn) {
    /** A photograph of which nobody has recorded how the piece was held. */
    public Photograph(String id, String file, Optional<String> words) {
      this(id, file, words, Optional.empty());
    }
  }
}
