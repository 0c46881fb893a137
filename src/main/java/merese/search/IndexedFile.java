package merese.search;

import java.util.List;
import java.util.Optional;

/** All that one file of a library brings into the index. */
public record IndexedFile(
    FileStamp stamp,
    List<IndexedSource> sources,
    List<IndexedNote> notes,
    List<IndexedCheck> checks,
    List<IndexedLabels> labels,
    List<IndexedRecord> records) {

  /**
   * An edition.
   *
   * @param searchable its authors, titles and imprint
   * @param brief what {@link NoteIndex#sources} gives back of it
   * @param whole what {@link NoteIndex#wholeSource} gives back
   */
  public record IndexedSource(String edition, Searchable searchable, byte[] brief, byte[] whole) {}

  /** One line of an edition's check log. */
  public record IndexedCheck(String edition, String concept, byte[] payload) {}

  /**
   * What some labels mean.
   *
   * @param words each label as folded words
   */
  public record IndexedLabels(List<List<String>> words, byte[] payload) {}

  /**
   * Anything that is read whole: a facet, the user's own words and pieces.
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
