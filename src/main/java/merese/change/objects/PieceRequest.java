package merese.change.objects;

import java.nio.file.Path;
import java.util.Optional;
import merese.exchange.picture.PictureCopy;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;

/** What is to be recorded of a piece of the user's own; {@code ref} is what the user calls it. */
public sealed interface PieceRequest {
  String ref();

  /** In a few words, for the history. */
  String words();

  /** What a piece is; what is empty is not said, and of a known piece stays. */
  record Particulars(
      Optional<String> title,
      Optional<String> measurements,
      Optional<String> provenance,
      Optional<String> place) {}

  /** A new piece; its title must be said. */
  record Add(String ref, Particulars particulars) implements PieceRequest {
    @Override
    public String words() {
      return "piece " + ref + " added";
    }
  }

  /** What a piece is, said otherwise. */
  record Describe(String ref, Particulars particulars) implements PieceRequest {
    @Override
    public String words() {
      return "piece " + ref + " described";
    }
  }

  /**
   * Something seen or felt, or looked for in vain.
   *
   * @param instead whether it takes the place of what was recorded of the same part and character
   */
  record Observe(String ref, Observation observation, boolean instead) implements PieceRequest {
    @Override
    public String words() {
      return "observation of " + ref + ": " + observation.words();
    }
  }

  /** What the piece shows of a concept; one of the same concept is replaced. */
  record Show(String ref, Evidence evidence) implements PieceRequest {
    @Override
    public String words() {
      return ref + " as " + evidence.kind().words() + " of " + evidence.concept();
    }
  }

  /**
   * A photograph. A file below the library's pictures is recorded where it is; of one from
   * elsewhere a copy is kept there, upright and without metadata.
   *
   * @param typed the file as it was typed
   * @param file the same against the folder that the user is in
   * @param id empty for the next one
   * @param turn how to hold the piece so that it shows what the photograph shows
   * @param sent what came without a file, to be kept; {@code file} is not looked at then
   */
  record Photograph(
      String ref,
      String typed,
      Path file,
      Optional<String> id,
      Optional<String> caption,
      Optional<String> turn,
      Optional<PictureCopy> sent)
      implements PieceRequest {
    /** A file that is there. */
    public Photograph(
        String ref,
        String typed,
        Path file,
        Optional<String> id,
        Optional<String> caption,
        Optional<String> turn) {
      this(ref, typed, file, id, caption, turn, Optional.empty());
    }

    @Override
    public String words() {
      return "photograph of " + ref + ": " + typed;
    }
  }
}
