package merese.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import merese.model.LibrarySettings;
import merese.model.Mine;

/** Makes a new library: built beside its place and then renamed, so that it is there whole. */
final class LibraryMaker {
  /** The folder of the class path that has the starter vocabulary and the list of its files. */
  static final String STARTER = "merese/starter/vocabulary/";

  private static final String LIST = "files.txt";
  private static final String LANGUAGE = "en-GB";
  private static final String INDEX_README =
      """
      # The index

      Everything here is made from the library beside it. It can be deleted at any time: the next
      question makes it again.
      """;

  private final Path dir;
  private final String starter;

  LibraryMaker(Path dir, String starter) {
    this.dir = dir;
    this.starter = starter;
  }

  /** The new library's folder. */
  Path make(String title) {
    if (title.isBlank()) {
      throw new LibraryException(dir, "a library needs a title", "give it one");
    }
    Path library = dir.resolve(LibraryFinder.LIBRARY);
    try {
      requireFree(library);
      Files.createDirectories(dir);
      Path draft = Files.createDirectory(dir.resolve(".library-" + ProcessHandle.current().pid()));
      try {
        fill(draft, title);
        Files.deleteIfExists(library);
        Files.move(draft, library, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        discard(draft);
      }
      Disk.forceFolder(dir);
      Path readme = dir.resolve(LibraryFinder.INDEX).resolve("README.md");
      if (!Files.exists(readme)) {
        Disk.replace(readme, INDEX_README.getBytes(StandardCharsets.UTF_8));
      }
      return library;
    } catch (IOException e) {
      throw Disk.unwritable(library, e);
    }
  }

  private void requireFree(Path library) throws IOException {
    if (Files.exists(dir) && !Files.isDirectory(dir)) {
      throw new LibraryException(dir, "this is a file, not a folder", "name another folder");
    }
    if (!Files.exists(library, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isDirectory(library, LinkOption.NOFOLLOW_LINKS)) {
      try (DirectoryStream<Path> content = Files.newDirectoryStream(library)) {
        if (!content.iterator().hasNext()) {
          return;
        }
      }
    }
    throw new LibraryException(
        library, "there is something here already; nothing was changed", "name another folder");
  }

  private void fill(Path library, String title) throws IOException {
    for (String folder : List.of(FolderScan.WORKS, FolderScan.OBJECTS, FolderScan.VOCABULARY)) {
      Files.createDirectory(library.resolve(folder));
    }
    for (String name : names(starter)) {
      Disk.replace(library.resolve(FolderScan.VOCABULARY).resolve(name), resource(name));
    }
    write(library.resolve(FolderScan.MINE), Mine.NOTHING, MineCodec.MINE);
    write(library.resolve(FolderScan.SETTINGS), settings(title), SettingsCodec.SETTINGS);
  }

  static LibrarySettings settings(String title) {
    return new LibrarySettings(
        LibrarySettings.FORMAT, title, LANGUAGE, Optional.empty(), Optional.empty());
  }

  private static <T> void write(Path file, T value, Codec<T> codec) {
    Disk.replace(file, JsonPrinter.lines(ObjectBuilder.object(value, codec)));
  }

  private byte[] resource(String name) {
    return resource(starter, name);
  }

  /** The files of the starter vocabulary. */
  static List<String> names(String starter) {
    String list = new String(resource(starter, LIST), StandardCharsets.UTF_8);
    return list.lines().map(String::strip).filter(name -> !name.isEmpty()).toList();
  }

  /** A file that the program brings along. */
  static byte[] resource(String starter, String name) {
    try (InputStream in = LibraryMaker.class.getClassLoader().getResourceAsStream(starter + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own file " + starter + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void discard(Path draft) throws IOException {
    if (Files.exists(draft)) {
      try (Stream<Path> content = Files.walk(draft)) {
        for (Path path : content.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
