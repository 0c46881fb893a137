package merese.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;

/** The demo library of the repository, copied to where a test may change it. */
public final class DemoLibrary {
  private static final Path SOURCE = Path.of("library");

  private DemoLibrary() {}

  public static LibraryFolder copyTo(Path folder) throws IOException {
    Path target = folder.resolve("library");
    try (Stream<Path> files = Files.walk(SOURCE)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Path copy = target.resolve(SOURCE.relativize(file));
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
    return LibraryFolder.open(target);
  }

  public static Shelf open(Path folder) throws IOException {
    return Shelf.open(copyTo(folder), Watcher.NONE);
  }

  /** Every file of the demo library that holds a work. */
  public static List<Path> works(LibraryFolder library) throws IOException {
    try (Stream<Path> files = Files.list(library.path().resolve("works"))) {
      return files.sorted().toList();
    }
  }
}
