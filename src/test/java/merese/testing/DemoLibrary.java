package merese.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;

/** A copy of the demo library, so that no test makes an index in the checkout. */
public final class DemoLibrary {
  private DemoLibrary() {}

  /** The copy's library folder. */
  public static Path copyTo(Path folder) throws IOException {
    Path from = Path.of("library").toAbsolutePath();
    Path copy = folder.resolve("library");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String relative = from.relativize(file).toString();
        if (!relative.startsWith(".")) {
          Path target = copy.resolve(relative);
          Files.createDirectories(target.getParent());
          Files.copy(file, target);
        }
      }
    }
    return copy;
  }

  public static Shelf open(Path folder) throws IOException {
    return Shelf.open(LibraryFolder.open(copyTo(folder)), Watcher.NONE);
  }
}
