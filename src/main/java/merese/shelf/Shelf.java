package merese.shelf;

import java.io.Closeable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.Work;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.SourceHit;
import merese.search.IndexDamagedException;
import merese.search.NoteCriterion;
import merese.search.NoteIndex;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.store.LibraryJson;
import merese.vocabulary.Thesaurus;

/**
 * A library with its index. Opening it brings the index up to date; after that every question reads
 * the index alone and sees the library as it was when it was opened.
 *
 * <p>Not for several threads at once.
 */
public final class Shelf implements Closeable {
  private final LibraryFolder folder;
  private final Watcher watcher;
  private NoteIndex index;
  private UpToDate upToDate;
  private Thesaurus thesaurus;
  private Mine mine;
  private List<OwnObject> objects;
  private Map<String, Source> sources;

  private Shelf(LibraryFolder folder, Watcher watcher) {
    this.folder = folder;
    this.watcher = watcher;
  }

  /**
   * Opens a library.
   *
   * @throws LibraryException where a file of it cannot be read or the library contradicts itself
   */
  public static Shelf open(LibraryFolder folder, Watcher watcher) {
    Shelf shelf = new Shelf(folder, watcher);
    IndexKeeper keeper = new IndexKeeper(folder, watcher);
    shelf.use(keeper.open(), keeper.report());
    return shelf;
  }

  private void use(NoteIndex opened, UpToDate report) {
    index = opened;
    upToDate = report;
    thesaurus = null;
    mine = null;
    objects = null;
    sources = null;
  }

  /**
   * Asks a question. Should the index turn out to be damaged while it is read, it is built again
   * and the question asked once more.
   */
  public <T> T ask(Function<Shelf, T> question) {
    try {
      return question.apply(this);
    } catch (IndexDamagedException e) {
      index.close();
      IndexKeeper keeper = new IndexKeeper(folder, watcher);
      use(keeper.buildAgain(), keeper.report());
      return question.apply(this);
    }
  }

  /** What opening took. */
  public UpToDate upToDate() {
    return upToDate;
  }

  public LibrarySettings settings() {
    return folder.settings();
  }

  public Thesaurus thesaurus() {
    if (thesaurus == null) {
      thesaurus = VocabularyRecords.thesaurus(index);
    }
    return thesaurus;
  }

  public Mine mine() {
    if (mine == null) {
      mine = Mine.NOTHING;
      for (byte[] json : index.records(RecordTypes.MINE)) {
        mine = stored(LibraryJson::decodeMine, json);
      }
    }
    return mine;
  }

  /** The user's own pieces, by reference. */
  public List<OwnObject> objects() {
    if (objects == null) {
      objects = new ArrayList<>();
      for (byte[] json : index.records(RecordTypes.OBJECT)) {
        objects.add(stored(LibraryJson::decodeOwnObject, json));
      }
    }
    return objects;
  }

  /** All sources, in the order of their works' files. */
  public List<Source> sources() {
    return List.copyOf(sourcesByKey().values());
  }

  private Map<String, Source> sourcesByKey() {
    if (sources == null) {
      sources = new LinkedHashMap<>();
      for (SourceHit hit : index.sources()) {
        Work work = stored(LibraryJson::decodeWork, hit.payload());
        sources.put(hit.edition(), new Source(work, work.editions().get(0), hit.filing()));
      }
    }
    return sources;
  }

  /** The notes that meet at least one of the criteria; none where there are no criteria. */
  public List<SourcedNote> notes(Collection<? extends NoteCriterion> anyOf) {
    if (anyOf.isEmpty()) {
      return List.of();
    }
    List<SourcedNote> notes = new ArrayList<>();
    for (NoteHit hit : index.notes(anyOf)) {
      notes.add(
          new SourcedNote(
              sourcesByKey().get(hit.edition()),
              hit.order(),
              stored(LibraryJson::decodeNote, hit.payload())));
    }
    return notes;
  }

  /** All notes of a source, in the order of its file. */
  public List<SourcedNote> notesOf(Source source) {
    return notes(List.of(new NoteCriterion.InSource(source.key())));
  }

  /** The check log's lines that are about just these concepts. */
  public List<SourcedCheck> checks(Collection<String> concepts) {
    List<SourcedCheck> checks = new ArrayList<>();
    for (CheckHit hit : index.checks(concepts)) {
      checks.add(
          new SourcedCheck(
              sourcesByKey().get(hit.edition()), stored(LibraryJson::decodeCheck, hit.payload())));
    }
    return checks;
  }

  /** Decodes what the index holds; nobody edits that, so what cannot be read is damaged. */
  static <T> T stored(Function<byte[], T> decoder, byte[] json) {
    try {
      return decoder.apply(json);
    } catch (LibraryException e) {
      throw new IndexDamagedException("the index holds what cannot be read", e);
    }
  }

  @Override
  public void close() {
    index.close();
  }
}
