package merese.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import merese.store.LibraryFolder;

/**
 * When every file of a large library was last compared with the index: the time of a small file
 * beside the index. Where that file is not there, the next opening compares every file; where it
 * cannot be written, each does.
 */
final class LastLook {
  private static final Duration BETWEEN = Duration.ofMinutes(10);

  private final Path file;
  private final Clock clock;

  LastLook(LibraryFolder folder, Clock clock) {
    this.file = folder.index().resolve("looked");
    this.clock = clock;
  }

  boolean isKnown() {
    return Files.exists(file);
  }

  /** Whether it is time to look again. */
  boolean isLongAgo() {
    try {
      long last = Files.getLastModifiedTime(file).toMillis();
      return Math.abs(clock.millis() - last) > BETWEEN.toMillis();
    } catch (IOException e) {
      return true;
    }
  }

  /** Every file has just been compared, and the index is up to date. */
  void isNow() {
    try {
      try {
        Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
      } catch (NoSuchFileException e) {
        Files.createFile(file);
        Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
      }
    } catch (IOException e) {
      // Then the next opening looks again.
    }
  }

  /** The index lacks something. */
  void forget() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // It is time again in a while.
    }
  }
}
