package merese.search;

import java.util.List;
import java.util.Optional;

/** All that one file of a library brings into the index. */
public record IndexedFile(
    FileStamp stamp,
    List<IndexedSource> sources,
    List<IndexedNote> notes,
    List<IndexedCheck> checks,
    List<IndexedRecord> records) {

  /**
   * An edition.
   *
   * @param filing a key that compares as unsigned bytes in the order of authors, A to Z
   * @param searchable its authors, titles and imprint
   */
  public record IndexedSource(
      String edition, byte[] filing, Searchable searchable, byte[] payload) {}

  /** One line of an edition's check log. */
  public record IndexedCheck(String edition, String concept, byte[] payload) {}

  /**
   * Anything that is read whole: settings, a facet, the user's own words and pieces.
   *
   * @param found what it is found as; empty for what is no hit
   */
  public record IndexedRecord(String type, Optional<Found> found, byte[] payload) {
    public IndexedRecord(String type, byte[] payload) {
      this(type, Optional.empty(), payload);
    }
  }

  /** What a record is found as, and by what. */
  public record Found(HitKind kind, Searchable by) {}
}
