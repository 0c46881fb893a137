package merese.search;

import java.util.ArrayList;
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

  /** Whatever stands whole in a file, and no sources. */
  public static IndexedFile of(FileStamp stamp, List<IndexedRecord> records) {
    return new IndexedFile(stamp, List.of(), List.of(), List.of(), List.of(), records);
  }

  /** The same with more that stands whole. */
  public IndexedFile with(List<IndexedRecord> more) {
    List<IndexedRecord> all = new ArrayList<>(records);
    all.addAll(more);
    return new IndexedFile(stamp, sources, notes, checks, labels, all);
  }

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
