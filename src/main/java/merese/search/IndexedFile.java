package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

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
   * @param standing where it stands among all, by its bytes, unsigned
   * @param traits what sources are counted and chosen by
   * @param searchable its authors, titles and imprint
   * @param brief what {@link NoteIndex#sources} gives back of it
   * @param whole what {@link NoteIndex#wholeSource} gives back
   */
  public record IndexedSource(
      String edition,
      byte[] standing,
      SourceTraits traits,
      Searchable searchable,
      byte[] brief,
      byte[] whole) {}

  /**
   * What sources are counted and chosen by.
   *
   * @param year of the edition; empty for an undated one
   * @param kind a word for what kind of source it is
   * @param own whether the user has a copy
   * @param mine whether it is an article or film of the user's own
   * @param reference its author and year, by which answers call it
   * @param namedBy the folded words that somebody may call it by
   * @param marks what it would have in common with its double
   */
  public record SourceTraits(
      OptionalInt year,
      String kind,
      boolean own,
      boolean mine,
      String reference,
      Set<String> namedBy,
      Set<String> marks) {}

  /**
   * One line of an edition's check log.
   *
   * @param limited whether it looked for what is in some scope only
   */
  public record IndexedCheck(String edition, String concept, boolean limited, byte[] payload) {}

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
