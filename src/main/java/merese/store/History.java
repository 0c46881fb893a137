package merese.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The changes of a library, and taking them back. Every {@link ChangeSet} writes an entry; of the
 * many that a library sees, the last {@value HistoryFolder#MOST} are kept.
 *
 * <p>A change is taken back by another, which has its own entry and can be taken back too. What
 * somebody has edited by hand since then is never lost: where a file is not as the change left it,
 * only what the change put in is taken out, and where that is no longer to be found, nothing is.
 */
public final class History {
  private final LibraryFolder library;
  private final HistoryFolder folder;

  private History(LibraryFolder library) {
    this.library = library;
    this.folder = new HistoryFolder(library.path());
  }

  public static History of(LibraryFolder library) {
    return new History(library);
  }

  /**
   * A change and what became of it.
   *
   * @param undone whether it is taken back
   * @param takesBack what it took back, for one that did
   */
  public record Line(HistoryEntry entry, boolean undone, Optional<TakesBack> takesBack) {
    /** What a change took back: another, or the taking back of another. */
    public enum TakesBack {
      CHANGE,
      UNDO
    }
  }

  /** Every change that is kept and can be read, the newest first; see {@link #damaged}. */
  public List<Line> lines() {
    List<Integer> numbers = folder.numbers();
    Map<Integer, HistoryEntry> entries = new HashMap<>();
    for (int number : numbers) {
      try {
        entries.put(number, folder.read(number));
      } catch (LibraryException e) {
        // damaged() says what is wrong with it; the others can be taken back all the same
      }
    }
    int last = numbers.isEmpty() ? 0 : numbers.get(numbers.size() - 1);
    if (last > 0 && folder.wasBrokenOff(last)) {
      entries.remove(last);
    }
    List<Line> lines = new ArrayList<>();
    Set<Integer> undone = new HashSet<>();
    for (int i = numbers.size() - 1; i >= 0; i--) {
      HistoryEntry entry = entries.get(numbers.get(i));
      if (entry != null) {
        boolean isUndone = undone.contains(entry.number());
        if (entry.undoes().isPresent() && !isUndone) {
          undone.add(entry.undoes().getAsInt());
        }
        lines.add(new Line(entry, isUndone, takesBack(entry, entries)));
      }
    }
    return lines;
  }

  /** What is wrong with the changes that cannot be read, the newest first; all are warnings. */
  public List<Problem> damaged() {
    List<Problem> damaged = new ArrayList<>();
    try {
      List<Integer> numbers = folder.numbers();
      for (int i = numbers.size() - 1; i >= 0; i--) {
        try {
          folder.read(numbers.get(i));
        } catch (LibraryException e) {
          Problem first = e.problems().get(0);
          damaged.add(
              warning(
                  first,
                  "change " + numbers.get(i) + " of the history cannot be read: " + first.what()));
        }
      }
    } catch (LibraryException e) {
      e.problems().forEach(problem -> damaged.add(warning(problem, problem.what())));
    }
    return damaged;
  }

  private static Problem warning(Problem problem, String what) {
    return new Problem(
        problem.file(),
        problem.line(),
        problem.column(),
        problem.where(),
        what,
        problem.remedy(),
        Problem.Severity.WARNING);
  }

  private static Optional<Line.TakesBack> takesBack(
      HistoryEntry entry, Map<Integer, HistoryEntry> entries) {
    if (entry.undoes().isEmpty()) {
      return Optional.empty();
    }
    HistoryEntry other = entries.get(entry.undoes().getAsInt());
    boolean undo = other != null && other.undoes().isPresent();
    return Optional.of(undo ? Line.TakesBack.UNDO : Line.TakesBack.CHANGE);
  }

  /** One change; empty where it is not kept. */
  public Optional<HistoryEntry> entry(int number) {
    return folder.numbers().contains(number) ? Optional.of(folder.read(number)) : Optional.empty();
  }

  /**
   * Takes back the last change that is not taken back.
   *
   * @return what was taken back; empty where there is nothing
   * @throws LibraryException where that would lose what was done since
   */
  public Optional<HistoryEntry> undo() {
    return undo(line -> !line.undone() && line.takesBack().isEmpty());
  }

  /** Takes back the last taking back; empty where a change was made after it, or there was none. */
  public Optional<HistoryEntry> redo() {
    return undo(
        line -> !line.undone() && !line.takesBack().equals(Optional.of(Line.TakesBack.UNDO)),
        line -> line.takesBack().isPresent());
  }

  /**
   * Takes back one change, wherever in the history it is.
   *
   * @return it; empty where none of that number is kept, or it is taken back already
   * @throws LibraryException where that one cannot be read
   */
  public Optional<HistoryEntry> undo(int number) {
    entry(number);
    return undo(line -> line.entry().number() == number && !line.undone());
  }

  private interface Test {
    boolean of(Line line);
  }

  private Optional<HistoryEntry> undo(Test test) {
    return undo(test, line -> true);
  }

  /** The first line that passes one test, where it passes the other too. */
  @SuppressWarnings("try")
  private Optional<HistoryEntry> undo(Test first, Test also) {
    try (LibraryLock lock = library.lock()) {
      for (Line line : lines()) {
        if (first.of(line)) {
          if (!also.of(line)) {
            return Optional.empty();
          }
          takeBack(line.entry());
          return Optional.of(line.entry());
        }
      }
      return Optional.empty();
    }
  }

  /** A change of so many files is not looked through before it is asked for. */
  private static final int MOST_LOOKED_THROUGH = 40;

  /**
   * Which changes could not be taken back as the files are now, and what to do first, by their
   * numbers. Those that are taken back already are not looked at.
   */
  public Map<Integer, String> hindrances(List<Line> lines) {
    Map<Integer, String> hindrances = new HashMap<>();
    Map<Path, byte[]> read = new HashMap<>();
    for (Line line : lines) {
      HistoryEntry entry = line.entry();
      if (line.undone() || entry.files().size() > MOST_LOOKED_THROUGH) {
        continue;
      }
      try {
        for (AlteredFile file : entry.files()) {
          Path path = library.resolve(file.file());
          byte[] now = read.computeIfAbsent(path, Disk::readIfThere);
          before(entry, file, path, now);
        }
      } catch (LibraryException e) {
        hindrances.put(entry.number(), e.problems().get(0).remedy());
      }
    }
    return hindrances;
  }

  private void takeBack(HistoryEntry entry) {
    String what = "undo of " + entry.number() + ": " + entry.what();
    OptionalInt undoes = OptionalInt.of(entry.number());
    try (ChangeSet change = library.change(what, undoes, Steps.NONE)) {
      for (AlteredFile file : entry.files()) {
        Path path = library.resolve(file.file());
        byte[] now = Disk.readIfThere(path);
        byte[] before = before(entry, file, path, now);
        change.put(path, now, before);
      }
      change.commit();
    }
  }

  private byte[] before(HistoryEntry entry, AlteredFile file, Path path, byte[] now) {
    if (Hash.of(now).equals(file.is())) {
      try {
        return file.restored(now);
      } catch (IllegalArgumentException e) {
        LibraryException damaged =
            new LibraryException(
                folder.file(entry.number()),
                "the history is damaged: " + e.getMessage(),
                "nothing was changed; bring the file back from a backup");
        damaged.initCause(e);
        throw damaged;
      }
    }
    byte[] takenOut = now == null ? null : file.takenOut(now);
    if (takenOut == null || !isReadable(file.file(), takenOut)) {
      throw changedSince(entry, file, path);
    }
    return takenOut;
  }

  /** Whether a file of the library can be read with other bytes. */
  private boolean isReadable(String relative, byte[] bytes) {
    Optional<LibraryFile> file = library.look(relative);
    if (file.isEmpty()) {
      return false;
    }
    try {
      Stored.of(file.get().path(), bytes, Consistency.codec(file.get().kind()));
      return true;
    } catch (LibraryException e) {
      return false;
    }
  }

  private LibraryException changedSince(HistoryEntry entry, AlteredFile file, Path path) {
    List<String> later = new ArrayList<>();
    for (Line line : lines()) {
      boolean counts = !line.undone() && line.takesBack().isEmpty();
      if (counts && line.entry().number() > entry.number() && line.entry().touches(file.file())) {
        later.add(Integer.toString(line.entry().number()));
      }
    }
    return new LibraryException(
        path,
        "the change "
            + entry.number()
            + " ("
            + entry.what()
            + ") cannot be taken back: the file has been changed since; nothing was changed",
        later.isEmpty()
            ? "somebody has edited it by hand; edit it again, or bring it back from a backup"
            : "take back first what came after it: " + String.join(", ", later));
  }
}
