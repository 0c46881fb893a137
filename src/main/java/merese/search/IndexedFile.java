package merese.search;

import java.util.List;

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
   * @param text its author, title and imprint, for full-text search
   */
  public record IndexedSource(String edition, byte[] filing, String text, byte[] payload) {}

  /** One line of an edition's check log. */
  public record IndexedCheck(String edition, String concept, byte[] payload) {}

  /** Anything that is read whole: settings, a facet, the user's own words and pieces. */
  public record IndexedRecord(String type, byte[] payload) {}
}
