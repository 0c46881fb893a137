package merese.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What becomes of a change of several files that was broken off. */
final class Recovery {
  private Recovery() {}

  /** Whether a change is decided and not yet finished, by whomever it is being made. */
  static boolean isPending(Path root) {
    return new Journal(root, Steps.NONE).isThere();
  }

  /** Finishes one that was decided, else takes away what was put by; the caller has the lock. */
  static void settle(Path root) {
    if (Staging.isThere(root)) {
      if (isPending(root)) {
        new Journal(root, Steps.NONE).finish();
      }
      Staging.discard(root);
    }
  }

  /** That a library cannot be read, since a change of it can neither be finished nor undone. */
  static LibraryException refusal(Path root, LibraryException cause) {
    List<Problem> problems = new ArrayList<>();
    problems.add(
        Problem.of(
            root,
            "a change of several files is not finished, and until it is, the library cannot be"
                + " read",
            "see what keeps it from being finished:"));
    problems.addAll(cause.problems());
    LibraryException refusal = new LibraryException(problems);
    refusal.initCause(cause);
    return refusal;
  }
}
