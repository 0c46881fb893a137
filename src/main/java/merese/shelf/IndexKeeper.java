package merese.shelf;

import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Concept;
import merese.model.Facet;
import merese.search.Census;
import merese.search.FileStamp;
import merese.search.Hits.RecordHit;
import merese.search.IndexBusyException;
import merese.search.IndexDamagedException;
import merese.search.IndexUpdate;
import merese.search.NoteCriterion;
import merese.search.NoteIndex;
import merese.search.NoteSet;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * Keeps the index in step with the library's files. It reads only files that have changed; after a
 * change of the vocabulary also those works which have notes whose concepts have other labels or
 * ancestors than before.
 */
final class IndexKeeper {
  private static final String FIRST = "there is no index yet";
  private static final String OTHER_WORDS = "the words that a facet's labels may lack have changed";
  private static final String ONE_NAME = "two files of the library have come to share a name";
  private static final String DAMAGED = "the index was damaged or unfinished";
  private static final String OTHER_VERSION =
      "the index was made by another version of this program";

  /** How long another process is waited for that writes the index. */
  private static final long PATIENCE_MILLISECONDS = 20_000;

  private static final long BETWEEN_LOOKS_MILLISECONDS = 50;

  private final LibraryFolder folder;
  private final Path place;

  /** A library of more files than this is large: not all of them are compared at each opening. */
  static final int LARGE = 5_000;

  private final Watcher watcher;
  private final Clock clock;
  private final int large;
  private final LastLook lastLook;
  private UpToDate report;
  private Optional<FolderTimes> folders = Optional.empty();

  IndexKeeper(LibraryFolder folder, Watcher watcher, Clock clock, int large) {
    this.folder = folder;
    this.place = folder.index().resolve("lucene");
    this.watcher = watcher;
    this.clock = clock;
    this.large = large;
    this.lastLook = new LastLook(folder, clock);
  }

  UpToDate report() {
    return report;
  }

  /** The times of a large library's folders, by the index that was opened. */
  Optional<FolderTimes> folders() {
    return folders;
  }

  /** The index, up to date; another process that is just writing it is waited for. */
  NoteIndex open() {
    return open(Set.of());
  }

  /**
   * @param also paths of works that are compared in any case
   */
  NoteIndex open(Set<String> also) {
    long end = System.nanoTime() + PATIENCE_MILLISECONDS * 1_000_000;
    while (true) {
      try {
        return openAlone(also);
      } catch (IndexBusyException e) {
        if (System.nanoTime() - end > 0 || !pause()) {
          throw e;
        }
      } catch (UncheckedIOException e) {
        throw unwritable(e);
      }
    }
  }

  /** A full disk, most likely; the library itself is only read here. */
  private LibraryException unwritable(UncheckedIOException cause) {
    Problem problem =
        new Problem(
            place,
            0,
            0,
            "",
            "the index cannot be brought up to date: " + cause.getCause().getMessage(),
            "make room on the disk, or look at its permissions; the library is as it was",
            Problem.Severity.ERROR);
    LibraryException failure = new LibraryException(List.of(problem));
    failure.initCause(cause);
    return failure;
  }

  /**
   * An index that is not brought up to date.
   *
   * @param changes what it does not hold as it is
   */
  record AsItWas(NoteIndex index, Changes changes) {}

  /** How many works may be read beside the index before it is brought up to date after all. */
  private static final int MOST_BESIDE = 50;

  /** The index as it was last made, unless that is damaged, or very much was written since. */
  AsItWas openAsItWas() {
    if (Files.isDirectory(place)) {
      try {
        NoteIndex index = NoteIndex.open(place);
        Changes changes = compare(index, FolderTimes.of(index), Set.of());
        if (!changes.touchVocabulary() && changes.changed().size() <= MOST_BESIDE) {
          return new AsItWas(index, changes);
        }
        index.close();
      } catch (IndexDamagedException e) {
        // It is built again below.
      }
    }
    return new AsItWas(open(), Changes.NONE);
  }

  /** Returns false where the thread is to stop. */
  private static boolean pause() {
    try {
      Thread.sleep(BETWEEN_LOOKS_MILLISECONDS);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** The index, up to date: with all or nothing of a change of several files. */
  private NoteIndex openAlone(Set<String> also) {
    while (true) {
      String moment = folder.moment();
      try {
        NoteIndex index = openOnce(also);
        if (folder.isStill(moment)) {
          return index;
        }
        index.close();
      } catch (LibraryException e) {
        if (folder.isStill(moment)) {
          throw e;
        }
      }
    }
  }

  private NoteIndex openOnce(Set<String> also) {
    if (!Files.isDirectory(place)) {
      return build(FIRST);
    }
    NoteIndex index;
    Changes changes;
    Optional<FolderTimes> before;
    try {
      index = NoteIndex.open(place);
      before = FolderTimes.of(index);
      changes = compare(index, before, also);
    } catch (IndexDamagedException e) {
      return build(e.isOfAnotherVersion() ? OTHER_VERSION : DAMAGED);
    }
    if (changes.none()) {
      report = new UpToDate(Optional.empty(), List.of(), List.of(), 0, changes.compared());
      return settle(index, changes, before);
    }
    Optional<String> tooMuch;
    VocabularyRecords known;
    try (index) {
      tooMuch = update(index, changes);
      known = tooMuch.isPresent() ? VocabularyRecords.of(index) : VocabularyRecords.none();
    } catch (IndexDamagedException e) {
      return build(DAMAGED);
    }
    if (tooMuch.isPresent()) {
      return build(tooMuch.get(), known);
    }
    noteLook(changes);
    return opened(NoteIndex.open(place));
  }

  private Changes compare(NoteIndex index, Optional<FolderTimes> before, Set<String> also) {
    Comparison comparison = new Comparison(index, folder, clock, large, before);
    if (before.isEmpty() || !lastLook.isKnown()) {
      return comparison.whole();
    }
    Set<String> works = new HashSet<>(also);
    for (RecordHit hit : index.recordHits(RecordTypes.SHORTFALL)) {
      works.add(hit.file()); // somebody is just mending it, perhaps in place
    }
    return comparison.quick(works);
  }

  /** All files of a large library have been compared where it was not known when they last were. */
  private void noteLook(Changes changes) {
    if (changes.folders().isPresent() && !lastLook.isKnown()) {
      lastLook.isNow();
    }
  }

  /**
   * Compares every file, where that was last done a while ago, and tells the watcher what the index
   * lacks. The next opening brings it up to date.
   */
  void lookAtAll() {
    if (!lastLook.isKnown() || !lastLook.isLongAgo()) {
      return; // where it is not known, this opening has looked, or the next one will
    }
    try (NoteIndex index = NoteIndex.open(place)) {
      String moment = folder.moment();
      Changes changes = new Comparison(index, folder, clock, large, FolderTimes.of(index)).whole();
      if (changes.none()) {
        lastLook.isNow();
      } else if (folder.isStill(moment)) {
        lastLook.forget();
        watcher.lacking(changes.count(), changes.first());
      }
    } catch (IndexDamagedException | LibraryException e) {
      // The answer is out; the next opening mends the one and says the other.
    }
  }

  /**
   * Notes that the time of some files and folders tells by now, so that no later question looks at
   * them. An index that can't be written just now answers as well.
   */
  private NoteIndex settle(NoteIndex index, Changes changes, Optional<FolderTimes> before) {
    noteLook(changes);
    boolean telling =
        changes.folders().isPresent()
            && changes.folders().get().tellsMoreThan(before.orElse(FolderTimes.NONE));
    folders = before;
    if (changes.settled().isEmpty() && !telling) {
      return index;
    }
    try (IndexUpdate update = IndexUpdate.of(place)) {
      changes.settled().forEach(update::replace);
      if (telling) {
        update.replace(changes.folders().get().forIndex());
      }
      update.commit();
    } catch (IndexBusyException | IndexDamagedException | UncheckedIOException e) {
      return index;
    }
    index.close();
    return opened(NoteIndex.open(place));
  }

  private NoteIndex opened(NoteIndex index) {
    folders = FolderTimes.of(index);
    return index;
  }

  /** A new index in the place of one that turned out to be damaged. */
  NoteIndex buildAgain() {
    return build(DAMAGED);
  }

  private NoteIndex build(String why) {
    return build(why, VocabularyRecords.none());
  }

  /**
   * @param before what the vocabulary said when it was last read, as far as that is known
   */
  private NoteIndex build(String why, VocabularyRecords before) {
    IndexUpdate.requireFree(place);
    watcher.building(why);
    LibraryReading reading = new LibraryReading(clock);
    Changes all = Comparison.withNothing(folder, clock, large);
    List<LibraryFile> files = all.changed();
    watcher.start(files.size());
    VocabularyReading vocabulary = VocabularyReading.of(folder, reading, files, before);
    try (IndexUpdate update = IndexUpdate.fromNothing(place)) {
      vocabulary.files().forEach(update::replace);
      new OtherFiles(folder, reading, vocabulary).index(files, update, watcher);
      all.folders().ifPresent(times -> update.replace(times.forIndex()));
      update.commit();
    }
    watcher.end();
    lastLook.forget();
    noteLook(all);
    report = new UpToDate(Optional.of(why), reading.opened(), List.of(), 0, all.compared());
    return opened(NoteIndex.open(place));
  }

  /** Returns why nothing less than a new index will do; empty where it is up to date now. */
  private Optional<String> update(NoteIndex index, Changes found) {
    LibraryReading reading = new LibraryReading(clock);
    watcher.start(found.changed().size());
    VocabularyRecords before = VocabularyRecords.of(index);
    Thesaurus old = before.thesaurus();
    List<Shortfall> known = shortfalls(index, folder);
    VocabularyReading vocabulary =
        found.touchVocabulary()
            ? VocabularyReading.changed(folder, reading, found, before, known)
            : VocabularyReading.unchanged(before, known);
    Thesaurus now = vocabulary.thesaurus();
    if (!optionalWords(old).equals(optionalWords(now))) {
      return Optional.of(OTHER_WORDS);
    }
    Changes changes = withDependent(index, found, known, old, now);
    int pages = 0;
    try (IndexUpdate update = IndexUpdate.of(place)) {
      changes.removed().forEach(update::remove);
      vocabulary.files().forEach(update::replace);
      if (changes.touchVocabulary()) {
        ownAgain(index, now, changes, update);
        pages = new PagesForIndex(now).again(index, old, changes, update);
      }
      OtherFiles others = new OtherFiles(folder, reading, vocabulary).beside(index, changes);
      if (!others.index(changes.changed(), update, watcher)) {
        return Optional.of(ONE_NAME);
      }
      changes.folders().ifPresent(times -> update.replace(times.forIndex()));
      update.commit();
    }
    watcher.end();
    report =
        new UpToDate(
            Optional.empty(), reading.opened(), changes.removed(), pages, changes.compared());
    return Optional.empty();
  }

  /** What is wrong with the files that an index was made from. */
  static List<Shortfall> shortfalls(NoteIndex index, LibraryFolder folder) {
    List<Shortfall> shortfalls = new ArrayList<>();
    for (RecordHit hit : index.recordHits(RecordTypes.SHORTFALL)) {
      shortfalls.add(PackedShortfall.unpack(hit, folder));
    }
    return shortfalls;
  }

  /**
   * Adds the files that did not change and are to be read again nevertheless: those left out for
   * what other files have, and, after a change of the vocabulary, those that name a concept that
   * was not there or is not there any more, or has other labels or ancestors.
   */
  private Changes withDependent(
      NoteIndex index, Changes changes, List<Shortfall> known, Thesaurus old, Thesaurus now) {
    Set<String> again = new HashSet<>();
    for (Shortfall shortfall : known) {
      if (shortfall.effect() == Shortfall.Effect.REPEATS) {
        again.add(shortfall.file());
      }
    }
    if (changes.touchVocabulary()) {
      for (RecordHit hit : index.recordHits(RecordTypes.UNDEFINED)) {
        again.add(hit.file());
      }
      addMeaning(changedConcepts(old, now), index, again);
      Set<String> gone = new TreeSet<>();
      old.concepts().forEach(c -> gone.add(c.id()));
      now.concepts().forEach(c -> gone.remove(c.id()));
      if (!gone.isEmpty()) {
        addNaming(gone, index, again);
      }
      addUnassigned(old, now, index, again);
    }
    return again.isEmpty() ? changes : changes.with(again, folder);
  }

  /** Adds the files with notes that mean one of some concepts. */
  private static void addMeaning(Set<String> concepts, NoteIndex index, Set<String> files) {
    List<NoteCriterion> meaning = new ArrayList<>();
    concepts.forEach(concept -> meaning.add(new NoteCriterion.MeansExactly(concept)));
    addFiles(index.census().having(meaning), index, files);
  }

  /** Adds the files that name one of some concepts otherwise. */
  private static void addNaming(Set<String> concepts, NoteIndex index, Set<String> files) {
    addFiles(index.census().checks(concepts), index, files);
    for (RecordHit hit : index.recordHits(RecordTypes.MINE)) {
      if (names(NamedConcepts.of(PackedMine.unpack(hit.payload())), concepts)) {
        files.add(hit.file());
      }
    }
    for (RecordHit hit : index.recordHits(RecordTypes.OBJECT)) {
      if (names(NamedConcepts.of(PackedMine.unpackObject(hit.payload())), concepts)) {
        files.add(hit.file());
      }
    }
  }

  /**
   * Adds the files with a note whose words may mean something else than before: what changed in the
   * vocabulary is a label or a word of the register, and the note prints all words of it that may
   * not be left out.
   */
  private static void addUnassigned(
      Thesaurus old, Thesaurus now, NoteIndex index, Set<String> files) {
    Set<String> labels = new HashSet<>();
    for (String concept : changedConcepts(old, now)) {
      labels.addAll(old.wordsFor(concept));
      labels.addAll(now.wordsFor(concept));
    }
    if (!old.register().equals(now.register())) {
      old.register().forEach(homonym -> labels.add(homonym.word()));
      now.register().forEach(homonym -> labels.add(homonym.word()));
    }
    Set<String> optional = new HashSet<>();
    now.facets()
        .forEach(facet -> facet.optionalWords().forEach(w -> optional.addAll(Folding.words(w))));
    Census census = index.census();
    NoteSet unassigned = census.unassigned();
    for (String label : labels) {
      NoteSet printing = unassigned;
      for (String word : Folding.words(label)) {
        if (!optional.contains(word)) {
          printing = printing.and(census.printing(List.of(word)));
        }
      }
      addFiles(printing, index, files);
    }
  }

  private static void addFiles(NoteSet notes, NoteIndex index, Set<String> files) {
    index.each(index.census().of(notes), hit -> files.add(hit.file()));
  }

  private static boolean names(Set<String> named, Set<String> concepts) {
    return !Collections.disjoint(named, concepts);
  }

  /** What the forms of every label and of every printed term depend on. */
  private static Set<List<Object>> optionalWords(Thesaurus thesaurus) {
    Set<List<Object>> words = new HashSet<>();
    for (Facet facet : thesaurus.facets()) {
      if (!facet.optionalWords().isEmpty()) {
        words.add(List.of(facet.headNoun(), facet.optionalWords()));
      }
    }
    return words;
  }

  /** Makes the user's own words and pieces again, which are found by labels of their concepts. */
  private static void ownAgain(
      NoteIndex index, Thesaurus after, Changes changes, IndexUpdate update) {
    ForIndex maker = new ForIndex(after);
    for (RecordHit hit : index.recordHits(RecordTypes.MINE)) {
      if (!changes.concerns(hit.file())) {
        update.replace(maker.mine(stamp(index, hit), PackedMine.unpack(hit.payload())));
      }
    }
    for (RecordHit hit : index.recordHits(RecordTypes.OBJECT)) {
      if (!changes.concerns(hit.file())) {
        update.replace(maker.object(stamp(index, hit), PackedMine.unpackObject(hit.payload())));
      }
    }
  }

  private static FileStamp stamp(NoteIndex index, RecordHit hit) {
    return index
        .stamp(hit.file())
        .orElseThrow(() -> new IndexDamagedException("the index lacks " + hit.file(), null));
  }

  /** The concepts whose labels or ancestors differ, or which are only in one of the two. */
  private static Set<String> changedConcepts(Thesaurus before, Thesaurus after) {
    Set<String> changed = new TreeSet<>();
    Set<String> all = new LinkedHashSet<>();
    before.concepts().forEach(c -> all.add(c.id()));
    after.concepts().forEach(c -> all.add(c.id()));
    for (String id : all) {
      Optional<Concept> old = before.concept(id);
      Optional<Concept> now = after.concept(id);
      if (old.isEmpty() || now.isEmpty()) {
        changed.add(id);
      } else if (!labels(old.get()).equals(labels(now.get()))
          || !before.broader(id).equals(after.broader(id))) {
        changed.add(id);
      }
    }
    return changed;
  }

  private static List<Object> labels(Concept concept) {
    return List.of(concept.preferred(), concept.alternatives(), concept.hidden());
  }
}
