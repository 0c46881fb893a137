package merese.shelf;

import java.io.Closeable;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.search.FindQuery;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.SourceHit;
import merese.search.IndexDamagedException;
import merese.search.NearWord;
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
public final class Shelf implements Lexicon, Closeable {
  private final LibraryFolder folder;
  private final Watcher watcher;
  private final Clock clock;
  private NoteIndex index;
  private UpToDate upToDate;
  private Thesaurus thesaurus;
  private Mine mine;
  private List<OwnObject> objects;
  private Map<String, Source> sources;
  private final Map<String, Map<Integer, SourcedNote>> notes = new HashMap<>();

  private Shelf(LibraryFolder folder, Watcher watcher, Clock clock) {
    this.folder = folder;
    this.watcher = watcher;
    this.clock = clock;
  }

  /**
   * Opens a library.
   *
   * @throws LibraryException where a file of it cannot be read or the library contradicts itself
   */
  public static Shelf open(LibraryFolder folder, Watcher watcher) {
    return open(folder, watcher, Clock.systemUTC());
  }

  static Shelf open(LibraryFolder folder, Watcher watcher, Clock clock) {
    Shelf shelf = new Shelf(folder, watcher, clock);
    IndexKeeper keeper = new IndexKeeper(folder, watcher, clock);
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
    notes.clear();
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
      IndexKeeper keeper = new IndexKeeper(folder, watcher, clock);
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

  @Override
  public Thesaurus thesaurus() {
    if (thesaurus == null) {
      thesaurus = VocabularyRecords.thesaurus(index);
    }
    return thesaurus;
  }

  public Mine mine() {
    if (mine == null) {
      mine = Mine.NOTHING;
      for (byte[] packed : index.records(RecordTypes.MINE)) {
        mine = PackedMine.unpack(packed);
      }
    }
    return mine;
  }

  /** The user's own pieces, by reference. */
  public List<OwnObject> objects() {
    if (objects == null) {
      objects = new ArrayList<>();
      for (byte[] packed : index.records(RecordTypes.OBJECT)) {
        objects.add(PackedMine.unpackObject(packed));
      }
    }
    return objects;
  }

  /** The key to look-alikes: the library's own, else the one that new libraries start with. */
  public KeyInUse characters() {
    for (byte[] packed : index.records(RecordTypes.CHARACTERS)) {
      return new KeyInUse(PackedCharacters.unpack(packed), true);
    }
    return new KeyInUse(LibraryFolder.starterCharacters(), false);
  }

  /** The records that came in and describe no source; read from their file. */
  public List<ReceivedRecord> kept() {
    return folder.readKept().value();
  }

  /** All sources, in the order of their works' files. */
  public List<Source> sources() {
    return List.copyOf(sourcesByKey().values());
  }

  Map<String, Source> sourcesByKey() {
    if (sources == null) {
      sources = new LinkedHashMap<>();
      for (SourceHit hit : index.sources()) {
        sources.put(hit.edition(), new Source(PackedSource.unpack(hit.payload()), this));
      }
    }
    return sources;
  }

  /** All of an edition's work and edition, but the notes. */
  Work whole(String edition) {
    return whole(index, edition);
  }

  static Work whole(NoteIndex index, String edition) {
    try {
      return LibraryJson.decodeWork(index.wholeSource(edition));
    } catch (LibraryException e) {
      throw new IndexDamagedException("the index holds what cannot be read", e);
    }
  }

  @Override
  public Map<String, Set<String>> meanings(Collection<String> terms) {
    return TextMeanings.ofLabels(index, thesaurus(), terms);
  }

  @Override
  public Set<String> meaningsInText(String term) {
    Set<String> concepts = new LinkedHashSet<>();
    for (SourcedNote found : notes(TextMeanings.printing(thesaurus(), term))) {
      TextMeanings.add(thesaurus(), term, found.note(), concepts);
    }
    return concepts;
  }

  /** The notes that meet at least one of the criteria; none where there are no criteria. */
  public List<SourcedNote> notes(Collection<? extends NoteCriterion> anyOf) {
    List<SourcedNote> notes = new ArrayList<>();
    for (NoteHit hit : index.notes(anyOf)) {
      notes.add(note(hit));
    }
    return notes;
  }

  /** All notes of a source, in the order of its file. */
  public List<SourcedNote> notesOf(Source source) {
    return notes(List.of(new NoteCriterion.InSource(source.key())));
  }

  /** A note that several questions find is unpacked once. */
  SourcedNote note(NoteHit hit) {
    Map<Integer, SourcedNote> known = notes.get(hit.edition());
    if (known == null) {
      known = new HashMap<>();
      notes.put(hit.edition(), known);
    }
    SourcedNote note = known.get(hit.order());
    if (note == null) {
      PackedNote.Unpacked unpacked = PackedNote.unpack(hit.payload());
      Source source = sourcesByKey().get(hit.edition());
      note = new SourcedNote(source, hit.order(), unpacked.note(), unpacked.mayMean());
      known.put(hit.order(), note);
    }
    return note;
  }

  /**
   * What a question in words finds, best first; of what is equal, sources before notes and each by
   * year.
   *
   * @throws merese.search.FindQueryException where it names a concept or source that is not there
   */
  public Finding find(FindQuery asked, int limit) {
    return new FindingMaker(this, index).find(asked, limit);
  }

  /** Words of the library like those of a question that nothing in it has. */
  public List<NearWord> nearWords(FindQuery asked) {
    return index.near(asked);
  }

  /** The check log's lines that are about just these concepts. */
  public List<SourcedCheck> checks(Collection<String> concepts) {
    List<SourcedCheck> checks = new ArrayList<>();
    for (CheckHit hit : index.checks(concepts)) {
      Source source = sourcesByKey().get(hit.edition());
      checks.add(new SourcedCheck(source, PackedNote.unpackCheck(hit.payload())));
    }
    return checks;
  }

  @Override
  public void close() {
    index.close();
  }
}
