package merese.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import merese.search.FileStamp;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Stored;

/** Reads files of a library for the index and remembers which; a file may be damaged. */
final class LibraryReading {
  /**
   * A file that changed less than this before it was read may change again without its time
   * changing; in nanoseconds. File systems keep time in steps of up to two seconds.
   */
  private static final long STEP = 2_000_000_000L;

  private final Clock clock;
  private final List<String> opened = new ArrayList<>();

  LibraryReading(Clock clock) {
    this.clock = clock;
  }

  /**
   * What was read of a file.
   *
   * @param value empty where the file cannot be read
   * @param problems why it cannot be read; none where it can
   */
  record Read<T>(FileStamp stamp, Optional<T> value, List<Problem> problems) {
    /** The same with a value to use where there is none; null for none. */
    Read<T> orElse(T known) {
      return new Read<>(stamp, value.or(() -> Optional.ofNullable(known)), problems);
    }
  }

  /**
   * Reads a file.
   *
   * @throws LibraryException only where a newer program made the library
   */
  <T> Read<T> read(LibraryFile file, Function<Path, Stored<T>> reader) {
    opened.add(file.relative());
    boolean settled = isSettled(file.modified(), clock.instant());
    try {
      return stamped(file, settled, reader.apply(file.path()));
    } catch (LibraryException e) {
      if (e.isOfNewerProgram()) {
        throw e;
      }
    }
    // The hash is taken before the reading: what is mended in between then shows as a change.
    String hash = hash(file);
    try {
      return stamped(file, settled, reader.apply(file.path()));
    } catch (LibraryException e) {
      FileStamp stamp =
          new FileStamp(
              file.relative(), file.size(), file.modified(), hash, settled && !hash.isEmpty());
      return new Read<>(stamp, Optional.empty(), e.problems());
    }
  }

  private static <T> Read<T> stamped(LibraryFile file, boolean settled, Stored<T> stored) {
    FileStamp stamp =
        new FileStamp(
            file.relative(), file.size(), file.modified(), hash(stored.content()), settled);
    return new Read<>(stamp, Optional.of(stored.value()), List.of());
  }

  List<String> opened() {
    return opened;
  }

  /**
   * Whether a change from now on would show in the time of a file or folder.
   *
   * @param modified its time, in nanoseconds since 1970
   */
  static boolean isSettled(long modified, Instant now) {
    return nanoseconds(now) - modified > STEP;
  }

  /**
   * The hash of a file's bytes: "" for a link, which may lead out of the library, and where they
   * cannot be read, so that it is tried again each time; a word that is none where they are too
   * many to be looked at.
   */
  static String hash(LibraryFile file) {
    if (file.size() > LibraryFolder.LARGEST_FILE) {
      return "too large";
    }
    if (Files.isSymbolicLink(file.path())) {
      return "";
    }
    try {
      return hash(Files.readAllBytes(file.path()));
    } catch (IOException e) {
      return "";
    }
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static long nanoseconds(Instant instant) {
    return instant.getEpochSecond() * 1_000_000_000L + instant.getNano();
  }
}
