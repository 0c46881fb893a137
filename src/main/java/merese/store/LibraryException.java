package merese.store;

import java.nio.file.Path;
import java.util.List;
import merese.model.ForTheUser;

/**
 * That a library could not be read or written. The message is for a person: a line a problem, cut
 * after {@value #SHOWN}. Where a save throws it, nothing was written.
 */
public final class LibraryException extends RuntimeException implements ForTheUser {
  /** How many problems the message lists. */
  public static final int SHOWN = 20;

  private final transient List<Problem> problems;
  private final boolean newer;

  /** At least one problem is needed. */
  public LibraryException(List<Problem> problems) {
    this(problems, false);
  }

  private LibraryException(List<Problem> problems, boolean newer) {
    super(message(problems));
    this.problems = List.copyOf(problems);
    this.newer = newer;
  }

  /** That a newer program made the library: nothing of it may be taken for what it seems. */
  static LibraryException ofNewerProgram(Problem problem) {
    return new LibraryException(List.of(problem), true);
  }

  LibraryException(Problem problem) {
    this(List.of(problem));
  }

  LibraryException(Path file, String what, String remedy) {
    this(Problem.of(file, what, remedy));
  }

  /** All problems, in the order of the file; never empty. */
  public List<Problem> problems() {
    return problems;
  }

  /** Whether the library is refused as a whole, since a newer program made it. */
  public boolean isOfNewerProgram() {
    return newer;
  }

  private static String message(List<Problem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("an exception without a problem");
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < problems.size() && i < SHOWN; i++) {
      out.append(i > 0 ? "\n" : "").append(problems.get(i));
    }
    if (problems.size() > SHOWN) {
      out.append("\n… and ").append(problems.size() - SHOWN).append(" more");
    }
    return out.toString();
  }
}
