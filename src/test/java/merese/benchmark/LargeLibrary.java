package merese.benchmark;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.PageText;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.UnionList;

/** A union list in a temporary folder; closing it deletes it. */
final class LargeLibrary implements Closeable {
  private final Path folder;
  private final UnionList list;
  private final LibraryFolder library;

  private LargeLibrary(Path folder, UnionList list, LibraryFolder library) {
    this.folder = folder;
    this.list = list;
    this.library = library;
  }

  /** With its index. */
  static LargeLibrary indexed(int works, int notes) throws IOException {
    LargeLibrary large = of(works, notes);
    large.open().close();
    return large;
  }

  /** As it is before it has been asked anything. */
  static LargeLibrary of(int works, int notes) throws IOException {
    return of(works, notes, 0);
  }

  /** The same with the texts of pages. */
  static LargeLibrary of(int works, int notes, int pages) throws IOException {
    Path folder = Files.createTempDirectory("merese-large");
    UnionList list = UnionList.of(works, notes, pages);
    return new LargeLibrary(folder, list, list.write(folder));
  }

  Shelf open() {
    return Shelf.open(library, Watcher.NONE);
  }

  UnionList list() {
    return list;
  }

  /** "20,000 works and 100,000 notes". */
  String words() {
    return Report.whole(list.works()) + " works and " + Report.whole(list.notes()) + " notes";
  }

  /** The ids of all concepts of its vocabulary, the one that notes name most often first. */
  List<String> concepts() {
    return list.concepts().stream().map(Concept::id).toList();
  }

  /** The keys of so many sources, from all over the library. */
  List<String> sources(int count) {
    List<String> keys = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int work = (int) ((long) i * list.works() / count);
      keys.add(list.work(work).editions().get(0).key());
    }
    return keys;
  }

  /** The page texts of a work, by its number. */
  List<PageText> pages(int work) {
    return list.pages(list.work(work), work);
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

  void deleteIndex() throws IOException {
    if (Files.isDirectory(index())) {
      delete(index());
    }
  }

  @Override
  public void close() throws IOException {
    delete(folder);
  }

  static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
