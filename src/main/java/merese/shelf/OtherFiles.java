package merese.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import merese.model.Edition;
import merese.model.PageText;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.Hits.SourceHit;
import merese.search.IndexUpdate;
import merese.search.IndexedFile;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.NoteIndex;
import merese.shelf.LibraryReading.Read;
import merese.shelf.Shortfall.Effect;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Neighbours;
import merese.store.Problem;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;

/**
 * Indexes the files that are not of the vocabulary. What can't be read, or repeats what another
 * file has, is left out and remembered: of two works with one name or key that stands which is
 * first by its path.
 */
final class OtherFiles {
  private final LibraryFolder folder;
  private final LibraryReading reading;
  private final Thesaurus thesaurus;
  private final boolean lacking;
  private final ForIndex maker;
  private final PagesForIndex pages;

  /** What else is indexed and did not change; empty for an index that is made from nothing. */
  private Optional<NoteIndex> index = Optional.empty();

  private Set<String> changed = Set.of();

  /** The names that files read here have taken. */
  private final Map<String, String> works = new HashMap<>();

  private final Map<String, String> editions = new HashMap<>();
  private boolean displaced;

  OtherFiles(LibraryFolder folder, LibraryReading reading, VocabularyReading vocabulary) {
    this.folder = folder;
    this.reading = reading;
    this.thesaurus = vocabulary.thesaurus();
    this.lacking = vocabulary.lacking();
    this.maker = new ForIndex(thesaurus);
    this.pages = new PagesForIndex(thesaurus);
  }

  /** The names that works have which are indexed and did not change are looked up. */
  OtherFiles beside(NoteIndex indexed, Changes changes) {
    index = Optional.of(indexed);
    changed = changes.paths();
    return this;
  }

  /** The file that has a work of this name already. */
  private Optional<String> fileOfWork(String name) {
    return Optional.ofNullable(works.get(name))
        .or(() -> index.flatMap(i -> i.fileNamed(name + ".json")).filter(this::stays));
  }

  /** The file that has an edition of this key already. */
  private Optional<String> fileOfEdition(String key) {
    return Optional.ofNullable(editions.get(key))
        .or(() -> index.flatMap(i -> i.source(key)).map(SourceHit::file).filter(this::stays));
  }

  private boolean stays(String file) {
    return !changed.contains(file);
  }

  /**
   * Reads the files and puts what they bring into the index.
   *
   * @param files in the order of their paths
   * @return false where one of them has what a later file has that is indexed already: then the
   *     index must be built from nothing
   */
  boolean index(List<LibraryFile> files, IndexUpdate update, Watcher watcher) {
    int done = 0;
    for (LibraryFile file : files) {
      switch (file.kind()) {
        case WORK -> update.replace(work(file));
        case OBJECT ->
            update.replace(plain(file, folder::readObject, maker::object, NamedConcepts::of));
        case MINE ->
            update.replace(plain(file, path -> folder.readMine(), maker::mine, NamedConcepts::of));
        case CHARACTERS ->
            update.replace(
                plain(
                    file,
                    path -> folder.readCharacters(),
                    ForIndex::characters,
                    key -> Set.of())); // identify names the kinds without a concept itself
        case SETTINGS ->
            update.replace(
                plain(
                    file,
                    path -> folder.storedSettings(),
                    (stamp, settings) -> ForIndex.settings(stamp),
                    settings -> Set.of()));
        case PAGES -> pages(file, update);
        case VOCABULARY, HOMONYMS, RECEIVED -> {}
      }
      watcher.at(++done);
    }
    return !displaced;
  }

  private void pages(LibraryFile file, IndexUpdate update) {
    Read<PageText> read = reading.read(file, folder::readPages);
    if (read.value().isEmpty()) {
      update.replace(leftOut(read.stamp(), Effect.UNREADABLE, read.problems()));
      return;
    }
    PageText text = read.value().get();
    IndexedRecord whole = new IndexedRecord(RecordTypes.PAGES, PackedPage.pack(text));
    update.replace(IndexedFile.of(read.stamp(), List.of(whole)));
    pages.add(file.relative(), text, update);
  }

  private <T> IndexedFile plain(
      LibraryFile file,
      Function<Path, Stored<T>> reader,
      BiFunction<FileStamp, T, IndexedFile> make,
      Function<T, Set<String>> named) {
    Read<T> read = reading.read(file, reader);
    if (read.value().isEmpty()) {
      return leftOut(read.stamp(), effect(file.kind()), read.problems());
    }
    T value = read.value().get();
    return withUndefined(file, make.apply(read.stamp(), value), named.apply(value));
  }

  private static Effect effect(LibraryFile.Kind kind) {
    return switch (kind) {
      case SETTINGS -> Effect.USUAL_SETTINGS;
      case CHARACTERS -> Effect.OWN_KEY;
      default -> Effect.UNREADABLE;
    };
  }

  private IndexedFile work(LibraryFile file) {
    Read<Work> read = reading.read(file, folder::readWork);
    if (read.value().isEmpty()) {
      return leftOut(read.stamp(), Effect.UNREADABLE, read.problems());
    }
    Work work = read.value().get();
    boolean named = work.id().equals(file.name());
    if (!named || !claim(file.relative(), work)) {
      Effect effect = named ? Effect.REPEATS : Effect.UNREADABLE;
      return leftOut(read.stamp(), effect, located(file, others(work), n -> n.repeats(file)));
    }
    return withUndefined(file, maker.work(read.stamp(), work), NamedConcepts.of(work));
  }

  /** Takes the names of a work, all or, where a file has one that stands, none of them. */
  private boolean claim(String path, Work work) {
    List<String> keys = new ArrayList<>();
    for (Edition edition : work.editions()) {
      if (keys.contains(edition.key())) {
        return false;
      }
      keys.add(edition.key());
      if (isTaken(fileOfEdition(edition.key()), path)) {
        return false;
      }
    }
    if (isTaken(fileOfWork(work.id()), path)) {
      return false;
    }
    works.put(work.id(), path);
    keys.forEach(key -> editions.put(key, path));
    return true;
  }

  private boolean isTaken(Optional<String> other, String path) {
    displaced |= other.isPresent() && other.get().compareTo(path) > 0;
    return other.isPresent() && other.get().compareTo(path) < 0;
  }

  private IndexedFile withUndefined(LibraryFile file, IndexedFile made, Set<String> named) {
    Set<String> undefined = new LinkedHashSet<>(named);
    undefined.removeIf(id -> thesaurus.concept(id).isPresent());
    if (undefined.isEmpty()) {
      return made;
    }
    List<IndexedRecord> records = new ArrayList<>(PackedShortfall.undefined(undefined));
    if (!lacking) {
      records.add(
          PackedShortfall.record(
              Effect.UNDEFINED, located(file, vocabulary(), n -> n.unknownConcepts(file))));
    }
    return made.with(records);
  }

  private static IndexedFile leftOut(FileStamp stamp, Effect effect, List<Problem> problems) {
    return IndexedFile.of(stamp, List.of(PackedShortfall.record(effect, problems)));
  }

  /** The names and keys of a work that other files have. */
  private Neighbours others(Work work) {
    Map<String, Path> named = new HashMap<>();
    Map<String, Path> keyed = new HashMap<>();
    fileOfWork(work.id()).ifPresent(file -> named.put(work.id(), folder.resolve(file)));
    for (Edition edition : work.editions()) {
      fileOfEdition(edition.key())
          .ifPresent(file -> keyed.put(edition.key(), folder.resolve(file)));
    }
    return new Neighbours(named, keyed, List.of());
  }

  private Neighbours vocabulary() {
    List<String> concepts = new ArrayList<>();
    thesaurus.concepts().forEach(c -> concepts.add(c.id()));
    return new Neighbours(Map.of(), Map.of(), concepts);
  }

  /** Where in a file the contradiction stands; the file as such where it has changed since. */
  private static List<Problem> located(
      LibraryFile file, Neighbours neighbours, Function<Neighbours, List<Problem>> look) {
    List<Problem> found = new ArrayList<>();
    try {
      found.addAll(look.apply(neighbours));
    } catch (LibraryException e) {
      found.addAll(e.problems());
    }
    if (found.isEmpty()) {
      found.add(
          new Problem(
              file.path(),
              0,
              0,
              "",
              "the file contradicts others",
              "see merese check",
              Problem.Severity.ERROR));
    }
    return found;
  }
}
