package merese.benchmark;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.testing.ManyWorks;

/** A library of invented works in a temporary folder, indexed; closing it deletes it. */
final class LargeLibrary implements Closeable {
  private final Path folder;
  private final LibraryFolder library;
  private final List<String> concepts = new ArrayList<>();
  private final List<String> sources = new ArrayList<>();

  private LargeLibrary(Path folder, LibraryFolder library) {
    this.folder = folder;
    this.library = library;
  }

  /**
   * @param works each with one edition
   * @param notesEach of an edition, on concepts at random
   */
  static LargeLibrary of(int works, int notesEach) throws IOException {
    Path folder = Files.createTempDirectory("merese-large");
    LargeLibrary large = new LargeLibrary(folder, LibraryFolder.create(folder, "A large library"));
    List<Work> made;
    try (Shelf shelf = large.open()) {
      for (Concept concept : shelf.thesaurus().concepts()) {
        large.concepts.add(concept.id());
      }
      made = ManyWorks.of(shelf.thesaurus(), works, notesEach);
    }
    try (ChangeSet change = large.library.change("a large library")) {
      made.forEach(change::add);
      change.commit();
    }
    for (Work work : made) {
      large.sources.add(work.editions().get(0).key());
    }
    large.open().close(); // makes the index
    return large;
  }

  Shelf open() {
    return Shelf.open(library, Watcher.NONE);
  }

  /** The ids of all concepts of its vocabulary. */
  List<String> concepts() {
    return concepts;
  }

  /** The keys of all sources. */
  List<String> sources() {
    return sources;
  }

  LibraryFolder library() {
    return library;
  }

  /** The folder that holds the library and its index. */
  Path folder() {
    return folder;
  }

  /** Lucene's folder. */
  Path index() {
    return library.index().resolve("lucene");
  }

  @Override
  public void close() throws IOException {
    IndexBenchmark.delete(folder);
  }
}
