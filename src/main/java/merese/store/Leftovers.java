package merese.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What saves that were killed have left behind: hidden files named by their process, which has
 * ended, and the folder of a change that was never decided on.
 */
final class Leftovers {
  /** The process may run on another machine that has the same disk. */
  private static final Duration CERTAINLY_OVER = Duration.ofHours(1);

  private static final String ENDING = ".tmp";

  private Leftovers() {}

  static List<Path> in(LibraryFolder library, Clock clock) {
    List<Path> found = new ArrayList<>();
    Instant before = clock.instant().minus(CERTAINLY_OVER);
    for (LibraryFolder.Folder folder : library.folders()) {
      Path path = library.resolve(folder.relative());
      try (DirectoryStream<Path> entries = Files.newDirectoryStream(path, ".*" + ENDING)) {
        for (Path entry : entries) {
          if (isOver(entry) && Files.getLastModifiedTime(entry).toInstant().isBefore(before)) {
            found.add(entry);
          }
        }
      } catch (IOException | DirectoryIteratorException e) {
        throw Disk.unreadable(path, e);
      }
    }
    Path staging = library.resolve(Staging.FOLDER);
    try {
      boolean abandoned =
          Staging.isThere(library.path())
              && !Recovery.isPending(library.path())
              && Files.getLastModifiedTime(staging).toInstant().isBefore(before);
      if (abandoned) {
        found.add(staging);
      }
    } catch (NoSuchFileException e) {
      // it was a change that has just been made
    } catch (IOException e) {
      throw Disk.unreadable(staging, e);
    }
    found.sort(null);
    return found;
  }

  private static boolean isOver(Path file) {
    Optional<Long> pid = process(file.getFileName().toString());
    return pid.isPresent() && ProcessHandle.of(pid.get()).filter(ProcessHandle::isAlive).isEmpty();
  }

  /** The process in ".quenby.json.4711-k3f1.tmp" or ".probe-4711.tmp"; empty for others' files. */
  private static Optional<Long> process(String name) {
    String rest = name.substring(0, name.length() - ENDING.length());
    String number;
    if (rest.startsWith(".probe-")) {
      number = rest.substring(".probe-".length());
    } else {
      int dash = rest.lastIndexOf('-');
      int dot = rest.lastIndexOf('.', dash);
      number = dash < 0 || dot < 1 ? "" : rest.substring(dot + 1, dash);
    }
    try {
      return Optional.of(Long.parseLong(number));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
