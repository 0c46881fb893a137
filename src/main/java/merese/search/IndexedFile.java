package merese.search;

import java.util.List;

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
   * @param text its author, title and imprint, for full-text search
   * @param brief what {@link NoteIndex#sources} gives back of it
   * @param whole what {@link NoteIndex#wholeSource} gives back
   */
  public record IndexedSource(String edition, String text, byte[] brief, byte[] whole) {}

  /** One line of an edition's check log. */
  public record IndexedCheck(String edition, String concept, byte[] payload) {}

  /**
   * What some labels mean.
   *
   * @param words each label as folded words
   */
  public record IndexedLabels(List<List<String>> words, byte[] payload) {}

  /** Anything that is read whole: settings, a facet, the user's own words and pieces. */
  public record IndexedRecord(String type, byte[] payload) {}
}
