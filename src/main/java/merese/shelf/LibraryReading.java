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

/**
 * Reads files of a library for the index, remembers which, and gathers what is wrong in them so
 * that a user sees it all at once.
 */
final class LibraryReading {
  /**
   * A file that changed less than this before it was read may change again without its time
   * changing; in nanoseconds. File systems keep time in steps of up to two seconds.
   */
  private static final long STEP = 2_000_000_000L;

  private final LibraryFolder folder;
  private final Clock clock;
  private final List<String> opened = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  LibraryReading(LibraryFolder folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** A file's value with its stamp. */
  record Read<T>(FileStamp stamp, T value) {}

  /** Reads a file; empty where it has problems, which are kept. */
  <T> Optional<Read<T>> read(LibraryFile file, Function<Path, Stored<T>> reader) {
    opened.add(file.relative());
    boolean settled = isSettled(file, clock);
    try {
      Stored<T> stored = reader.apply(file.path());
      return Optional.of(
          new Read<>(
              new FileStamp(
                  file.relative(), file.size(), file.modified(), hash(stored.content()), settled),
              stored.value()));
    } catch (LibraryException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  /** The library contradicts itself: its own check says where. */
  void contradiction() {
    for (Problem problem : folder.check()) {
      if (problem.severity() == Problem.Severity.ERROR && !problems.contains(problem)) {
        problems.add(problem);
      }
    }
  }

  void add(Problem problem) {
    problems.add(problem);
  }

  void throwProblems() {
    if (!problems.isEmpty()) {
      throw new LibraryException(problems);
    }
  }

  List<Problem> problems() {
    return problems;
  }

  List<String> opened() {
    return opened;
  }

  /** Whether a change from now on would show in a file's time. */
  static boolean isSettled(LibraryFile file, Clock clock) {
    return nanoseconds(clock.instant()) - file.modified() > STEP;
  }

  /** The hash of a file's bytes; none that any file has where it cannot be read. */
  static String hash(Path file) {
    try {
      return hash(Files.readAllBytes(file));
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
