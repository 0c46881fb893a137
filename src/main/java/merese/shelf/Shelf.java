package merese.shelf;

import java.io.Closeable;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.search.Census;
import merese.search.FindQuery;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.NoteTaker;
import merese.search.Hits.NoteTest;
import merese.search.Hits.RecordHit;
import merese.search.Hits.SourceHit;
import merese.search.Hits.SourceTaker;
import merese.search.IndexDamagedException;
import merese.search.NearWord;
import merese.search.NoteCriterion;
import merese.search.NoteIndex;
import merese.search.NoteSet;
import merese.search.PageHits.PageHit;
import merese.search.PagesOfSource;
import merese.search.SourceSelection;
import merese.search.SourceSet;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.store.LibraryJson;
import merese.vocabulary.PageReading;
import merese.vocabulary.Thesaurus;

/**
 * A library with its index. Opening it brings the index up to date; after that every question reads
 * the index alone and sees the library as it was when it was opened.
 *
 * <p>Not for several threads at once.
 */
public final class Shelf implements Lexicon, Closeable {
  private static final int MOST_NOTES_KEPT = 20_000;
  private static final int MOST_SOURCES_KEPT = 50_000;

  /** So many of the files that an answer quotes are compared after it. */
  private static final int MOST_COMPARED = 200;

  private final LibraryFolder folder;
  private final Watcher watcher;
  private final Clock clock;
  private final int large;
  private NoteIndex index;

  /** The times of a large library's folders; empty in one that is not large. */
  private Optional<FolderTimes> folders = Optional.empty();

  private UpToDate upToDate;
  private Thesaurus thesaurus;
  private Mine mine;
  private List<OwnObject> objects;
  private Map<String, Source> sources;
  private List<OptionalInt> years;
  private Set<String> ownWork;
  private AttachedTexts attachedTexts;
  private Beginnings beginnings;
  private List<Shortfall> shortfalls = List.of();

  /** Those that were asked for. */
  private final Map<String, Source> some = new HashMap<>();

  private final RecurringTexts recurring = new RecurringTexts();
  private final Map<String, Map<Integer, SourcedNote>> notes = new HashMap<>();
  private int notesKept;

  /** The files, in a large library, of what the question that is asked has read whole. */
  private final Set<String> quoted = new HashSet<>();

  private boolean asking;

  private Shelf(LibraryFolder folder, Watcher watcher, Clock clock, int large) {
    this.folder = folder;
    this.watcher = watcher;
    this.clock = clock;
    this.large = large;
  }

  /**
   * Opens a library. A file of it that cannot be read hides no other: {@link #shortfalls} has it.
   *
   * @throws LibraryException where its folders cannot be listed, or a newer program made it
   */
  public static Shelf open(LibraryFolder folder, Watcher watcher) {
    return open(folder, watcher, Clock.systemUTC());
  }

  static Shelf open(LibraryFolder folder, Watcher watcher, Clock clock) {
    return open(folder, watcher, clock, IndexKeeper.LARGE);
  }

  /**
   * @param large a library of more files than this is large
   */
  static Shelf open(LibraryFolder folder, Watcher watcher, Clock clock, int large) {
    Shelf shelf = new Shelf(folder, watcher, clock, large);
    IndexKeeper keeper = shelf.keeper();
    shelf.use(keeper.open(), keeper);
    return shelf;
  }

  private IndexKeeper keeper() {
    return new IndexKeeper(folder, watcher, clock, large);
  }

  private void use(NoteIndex opened, IndexKeeper keeper) {
    index = opened;
    upToDate = keeper.report();
    thesaurus = null;
    mine = null;
    objects = null;
    sources = null;
    years = null;
    ownWork = null;
    attachedTexts = null;
    some.clear();
    beginnings = null;
    notes.clear();
    notesKept = 0;
    folders = keeper.folders();
    shortfalls = IndexKeeper.shortfalls(index, folder);
  }

  /**
   * Asks a question. Where a file that the answer quotes turns out to be other than it was, or the
   * index damaged, that is put right and the question asked once more; a question that is asked
   * within another is asked again with it.
   */
  public <T> T ask(Function<Shelf, T> question) {
    if (asking) {
      return question.apply(this);
    }
    asking = true;
    try {
      forgetMany();
      quoted.clear();
      T answer = question.apply(this);
      if (!quotesOther()) {
        return answer;
      }
      index.close();
      IndexKeeper keeper = keeper();
      use(keeper.open(quoted), keeper);
      return question.apply(this);
    } catch (IndexDamagedException e) {
      index.close();
      IndexKeeper keeper = keeper();
      use(keeper.buildAgain(), keeper);
      return question.apply(this);
    } finally {
      asking = false;
    }
  }

  private boolean quotesOther() {
    return !quoted.isEmpty()
        && new Comparison(index, folder, clock, large, folders).anyOther(quoted);
  }

  /** Takes note that something of a file is read whole. */
  void quote(String file) {
    if (asking && folders.isPresent() && quoted.size() < MOST_COMPARED) {
      quoted.add(file);
    }
  }

  /**
   * For after an answer, and after closing: in a large library every file is compared, where that
   * was last done a while ago, and the watcher is told what the answer lacks.
   */
  public void lookAtAll() {
    if (folders.isPresent()) {
      keeper().lookAtAll();
    }
  }

  /** A shelf that stays open does not keep every note that was ever asked for. */
  private void forgetMany() {
    if (notesKept > MOST_NOTES_KEPT) {
      notes.clear();
      notesKept = 0;
    }
    if (sources == null && some.size() > MOST_SOURCES_KEPT) {
      some.clear();
    }
  }

  /**
   * Whether the library's files are still those that the index was made from. In a large library a
   * file that was overwritten in place may take some minutes to be noticed.
   */
  public boolean isCurrent() {
    Comparison comparison = new Comparison(index, folder, clock, large, folders);
    LastLook lastLook = new LastLook(folder, clock);
    boolean whole = folders.isPresent() && lastLook.isLongAgo();
    Changes changes = whole ? comparison.whole() : comparison.quick(damaged());
    if (whole && changes.none()) {
      lastLook.isNow();
    } else if (whole) {
      lastLook.forget();
    }
    if (changes.none()) {
      folders = changes.folders();
    }
    return changes.none();
  }

  private List<String> damaged() {
    List<String> files = new ArrayList<>();
    shortfalls.forEach(shortfall -> files.add(shortfall.file()));
    return files;
  }

  /** What opening took. */
  public UpToDate upToDate() {
    return upToDate;
  }

  /** The files that answers lack, or can't take as they stand, in the order of their paths. */
  public List<Shortfall> shortfalls() {
    return List.copyOf(shortfalls);
  }

  /** Those of the library; the usual ones where its file cannot be read. */
  public LibrarySettings settings() {
    try {
      return folder.settings();
    } catch (LibraryException e) {
      if (e.isOfNewerProgram()) {
        throw e;
      }
      return LibraryFolder.usualSettings();
    }
  }

  @Override
  public Thesaurus thesaurus() {
    if (thesaurus == null) {
      thesaurus = VocabularyRecords.forAnswers(index);
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
        sources.put(hit.edition(), source(hit));
      }
    }
    return sources;
  }

  /**
   * A source of which the index has said that it is there.
   *
   * @throws IndexDamagedException where it is not
   */
  public Source source(String key) {
    Optional<Source> found = findSource(key);
    if (found.isEmpty()) {
      throw new IndexDamagedException("the index lacks " + key, null);
    }
    return found.get();
  }

  /** A source by its key, without reading the others. */
  public Optional<Source> findSource(String key) {
    if (sources != null) {
      return Optional.ofNullable(sources.get(key));
    }
    Source known = some.get(key);
    if (known == null) {
      Optional<SourceHit> hit = index.source(key);
      if (hit.isEmpty()) {
        return Optional.empty();
      }
      known = source(hit.get());
    }
    return Optional.of(known);
  }

  /** The editions of a work, by its id, in the order of R4; without reading the others. */
  public List<Source> ofWork(String id) {
    Optional<String> file = index.fileNamed(id + ".json");
    return file.isPresent() ? sources(census().inFiles(List.of(file.get()))) : List.of();
  }

  /** One that was read already stays the same. */
  private Source source(SourceHit hit) {
    Source known = some.get(hit.edition());
    if (known == null) {
      known = new Source(PackedSource.unpack(hit.payload()), hit.file(), this);
      some.put(hit.edition(), known);
    }
    return known;
  }

  /** The keys of the user's own articles and films. */
  public Set<String> ownWork() {
    if (ownWork == null) {
      ownWork = Set.copyOf(index.ownWork());
    }
    return ownWork;
  }

  /** How many sources answers call by this author and year. */
  int sourcesCalled(String reference) {
    return index.sourcesCalled(reference);
  }

  /** Some sources, in the order of R4: year, author and key. */
  public List<Source> sources(SourceSet some) {
    Unpacking unpacking = new Unpacking();
    index.each(some, unpacking);
    unpacking.sources.sort(Source.BY_YEAR);
    return unpacking.sources;
  }

  private final class Unpacking implements SourceTaker {
    private final List<Source> sources = new ArrayList<>();

    @Override
    public void take(SourceHit hit) {
      sources.add(source(hit));
    }
  }

  /** The years that sources have, the earliest first; an empty one, for undated, comes last. */
  public List<OptionalInt> years() {
    if (years == null) {
      years = index.years();
    }
    return List.copyOf(years);
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
    return TextMeanings.inText(index, thesaurus(), term, Optional.empty());
  }

  /** Each meaning that the text of some note gives a term, and of how many notes. */
  public Map<String, Integer> meantInText(List<String> words) {
    return index.meantInText(words);
  }

  /**
   * The terms of several words of which the text of some note says that they mean this: their
   * folded words, with a space between.
   */
  public Set<String> wordsInText(String concept) {
    return index.wordsInText(concept);
  }

  /** Counts notes and sources without reading them. */
  public Census census() {
    return index.census();
  }

  /** The notes that meet at least one of the criteria; none where there are no criteria. */
  public List<SourcedNote> notes(Collection<? extends NoteCriterion> anyOf) {
    List<SourcedNote> notes = new ArrayList<>();
    for (NoteHit hit : index.notes(anyOf)) {
      notes.add(note(hit));
    }
    return notes;
  }

  /** What some notes are about, in the order of files, editions and notes. */
  public List<NoteSketch> sketches(NoteSet some) {
    Sketching sketching = new Sketching();
    index.each(some, sketching);
    sketching.sketches.sort(NoteSketch.BY_POSITION);
    return sketching.sketches;
  }

  private final class Sketching implements NoteTaker {
    private final List<NoteSketch> sketches = new ArrayList<>();

    @Override
    public void take(NoteHit hit) {
      sketches.add(new NoteSketch(hit, PackedNote.about(hit.payload(), recurring)));
    }
  }

  /** Tells notes by what they are about. */
  public interface SketchTest {
    boolean test(NoteSketch.About note);
  }

  /** Those of some notes that pass a test. */
  public NoteSet notesWhere(NoteSet some, SketchTest test) {
    return index.only(some, new Testing(test));
  }

  private final class Testing implements NoteTest {
    private final SketchTest test;

    Testing(SketchTest test) {
      this.test = test;
    }

    @Override
    public boolean test(byte[] payload) {
      return test.test(PackedNote.about(payload, recurring));
    }
  }

  /** The whole of a note. */
  public SourcedNote note(NoteSketch sketch) {
    return note(sketch.hit());
  }

  /** The same of a note that is looked at and let go: of many that are, none is kept. */
  public SourcedNote passingNote(NoteSketch sketch) {
    NoteHit hit = sketch.hit();
    quote(hit.file());
    Map<Integer, SourcedNote> known = notes.get(hit.edition());
    if (known != null && known.containsKey(hit.order())) {
      return known.get(hit.order());
    }
    PackedNote.Unpacked unpacked = PackedNote.unpack(hit.payload());
    return new SourcedNote(source(hit.edition()), hit.order(), unpacked.note(), unpacked.mayMean());
  }

  /** What begins with what somebody types. */
  public Beginnings beginnings() {
    if (beginnings == null) {
      beginnings = new Beginnings(index, thesaurus(), mine(), sources());
    }
    return beginnings;
  }

  /** All notes of a source, in the order of its file. */
  public List<SourcedNote> notesOf(Source source) {
    return notes(List.of(new NoteCriterion.InSource(source.key())));
  }

  /** A note that several questions find is unpacked once. */
  SourcedNote note(NoteHit hit) {
    quote(hit.file());
    Map<Integer, SourcedNote> known = notes.get(hit.edition());
    if (known == null) {
      known = new HashMap<>();
      notes.put(hit.edition(), known);
    }
    SourcedNote note = known.get(hit.order());
    if (note == null) {
      PackedNote.Unpacked unpacked = PackedNote.unpack(hit.payload());
      Source source = source(hit.edition());
      note = new SourcedNote(source, hit.order(), unpacked.note(), unpacked.mayMean());
      known.put(hit.order(), note);
      notesKept++;
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

  /**
   * The sources of a selection on whose pages a name stands, by year, author and key (R4); the
   * pages unread.
   */
  public List<PagesOfSource> sourcesNaming(Collection<String> concepts, SourceSelection selection) {
    Map<String, PagesOfSource> byKey = new HashMap<>();
    for (PagesOfSource pages : index.gatherPagesNaming(concepts)) {
      byKey.put(pages.owner().edition(), pages);
    }
    List<PagesOfSource> sources = new ArrayList<>();
    if (!byKey.isEmpty()) {
      SourceSet wanted = census().selected(selection).and(census().called(byKey.keySet()));
      for (String key : index.keys(wanted)) {
        sources.add(byKey.get(key));
      }
    }
    return sources;
  }

  /**
   * How many names of a concept, and of what is narrower, stand on the pages of some sources, each
   * spelling once a page; the pages unread.
   *
   * @param naming as {@link #sourcesNaming} gives them for this concept
   */
  public int countPlaces(String concept, List<PagesOfSource> naming) {
    return index.countPlaces(concept, naming);
  }

  /**
   * Those of some pages that may be where notes are: all on which a place of a note is, and perhaps
   * others. By source, in the order of files and pages.
   *
   * @param naming the pages
   * @param notes by source, what {@link merese.model.Locator#keysAround} gives of the notes' places
   */
  public List<SourcedPage> pagesNoted(List<PagesOfSource> naming, Map<String, Set<String>> notes) {
    List<SourcedPage> found = new ArrayList<>();
    for (int[] ofSource : index.pagesAt(naming, notes)) {
      found.addAll(pages(ofSource));
    }
    return found;
  }

  /** Pages of one source, in the order of files and pages. */
  public List<SourcedPage> pages(PagesOfSource ofSource) {
    return pages(ofSource.documents());
  }

  private List<SourcedPage> pages(int[] documents) {
    List<PageHit> hits = new ArrayList<>();
    for (int document : documents) {
      hits.add(index.page(document));
    }
    hits.sort(new ByPage());
    return pages(hits);
  }

  private static final class ByPage implements Comparator<PageHit> {
    @Override
    public int compare(PageHit a, PageHit b) {
      int files = a.file().compareTo(b.file());
      return files != 0 ? files : Integer.compare(a.page(), b.page());
    }
  }

  /** Pages of sources that there are; a text of an edition that is gone is of none. */
  List<SourcedPage> pages(List<PageHit> hits) {
    List<SourcedPage> pages = new ArrayList<>();
    for (PageHit hit : hits) {
      Optional<Source> source = findSource(hit.edition());
      if (source.isPresent()) {
        PackedPage.Unpacked page = PackedPage.unpack(hit.payload());
        pages.add(
            new SourcedPage(
                source.get(), hit.file(), hit.page(), page.locator(), page.cited(), page.names()));
      }
    }
    return pages;
  }

  /** The words of a page, as they can be looked for and read. */
  public PageReading read(SourcedPage page) {
    return PageReading.ofKept(index.pageText(page.file(), page.page()));
  }

  /** What there is of texts of pages, less those of the user's own work. */
  public AttachedTexts attachedTexts() {
    if (attachedTexts == null) {
      attachedTexts = countAttachedTexts();
    }
    return attachedTexts;
  }

  private AttachedTexts countAttachedTexts() {
    int texts = 0;
    int pages = 0;
    int withoutText = 0;
    for (RecordHit hit : index.recordHits(RecordTypes.PAGES)) {
      PackedPage.Text text = PackedPage.unpackText(hit.payload());
      if (!ownWork().contains(text.source()) && index.source(text.source()).isPresent()) {
        texts++;
        pages += text.pages();
        withoutText += text.withoutText();
      }
    }
    return new AttachedTexts(texts, pages, withoutText);
  }

  /** Each of them, in the order of their files. */
  public List<AttachedText> eachAttachedText() {
    List<AttachedText> texts = new ArrayList<>();
    for (RecordHit hit : index.recordHits(RecordTypes.PAGES)) {
      Unpacker from = new Unpacker(hit.payload());
      Optional<Source> source = findSource(from.text());
      if (source.isPresent() && !source.get().mine()) {
        texts.add(PackedPage.unpackText(source.get(), hit.file(), from));
      }
    }
    return texts;
  }

  /** Words of the library like those of a question that nothing in it has. */
  public List<NearWord> nearWords(FindQuery asked) {
    return index.near(asked);
  }

  /** The check log's lines that are about just these concepts. */
  public List<SourcedCheck> checks(Collection<String> concepts) {
    return checks(index.checks(concepts));
  }

  /** Some lines of the check logs, in the order of files and editions. */
  public List<SourcedCheck> checks(NoteSet some) {
    return checks(index.checks(some));
  }

  private List<SourcedCheck> checks(List<CheckHit> hits) {
    List<SourcedCheck> checks = new ArrayList<>();
    for (CheckHit hit : hits) {
      Source source = source(hit.edition());
      checks.add(new SourcedCheck(source, PackedNote.unpackCheck(hit.payload())));
    }
    return checks;
  }

  @Override
  public void close() {
    index.close();
  }
}
