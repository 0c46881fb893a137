package merese.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where a library is. */
final class LibraryFinder {
  static final String VARIABLE = "MERESE_LIBRARY";
  static final String LIBRARY = "library";
  static final String INDEX = "index";

  private LibraryFinder() {}

  static Path find(Optional<String> option, Map<String, String> environment, Path directory) {
    String variable = environment.getOrDefault(VARIABLE, "");
    if (option.isPresent()) {
      return libraryAt(resolve(directory, option.get(), "--library"), "--library");
    }
    return variable.isBlank()
        ? libraryAt(directory, "")
        : libraryAt(resolve(directory, variable, VARIABLE), VARIABLE);
  }

  private static Path resolve(Path directory, String name, String from) {
    try {
      return directory.resolve(name);
    } catch (InvalidPathException e) {
      throw new LibraryException(
          Path.of(""), Quote.of(name) + " (" + from + ") is not a path", "name a folder");
    }
  }

  /** The folder itself, or the library in it. */
  private static Path libraryAt(Path folder, String from) {
    if (isLibrary(folder)) {
      return folder;
    }
    Path inside = folder.resolve(LIBRARY);
    if (isLibrary(inside)) {
      return inside;
    }
    throw missing(folder, from.isEmpty() ? "" : " (" + from + ")");
  }

  private static boolean isLibrary(Path folder) {
    return Files.exists(folder.resolve(FolderScan.SETTINGS));
  }

  /** The settings file of a folder that is a library. */
  static Path requireLibrary(Path folder) {
    if (!isLibrary(folder)) {
      throw missing(folder, "");
    }
    return folder.resolve(FolderScan.SETTINGS);
  }

  private static LibraryException missing(Path folder, String from) {
    String name = folder.toString().isEmpty() ? "." : folder.toString();
    String what =
        !Files.exists(folder)
            ? "there is no folder " + name
            : !Files.isDirectory(folder)
                ? name + " is a file, not a folder"
                : !Files.isReadable(folder)
                    ? name + " cannot be read, look at its permissions"
                    : name + " has no " + FolderScan.SETTINGS;
    return new LibraryException(
        Path.of(""), "no library here: " + what + from, "make one with: merese new DIR");
  }

  static Path indexOf(Path library) {
    Path name = library.getFileName();
    boolean named = name != null && !name.toString().isEmpty() && !name.toString().startsWith(".");
    return (named ? library : library.toAbsolutePath().normalize()).resolveSibling(INDEX);
  }
}
