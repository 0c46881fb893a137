package merese.change.checks;

import java.util.ArrayList;
import java.util.List;
import merese.store.Problem;
import merese.store.Problem.Severity;
import merese.store.Stored;

/** What has been found so far, each with its place and what to do. */
final class Findings {
  private final List<Problem> problems = new ArrayList<>();

  List<Problem> all() {
    return problems;
  }

  /** What is likely to be a slip; the library can be used in spite of it. */
  void warn(Stored<?> file, Position at, String where, String what, String remedy) {
    add(file, at, where, what, remedy, Severity.WARNING);
  }

  void error(Stored<?> file, Position at, String where, String what, String remedy) {
    add(file, at, where, what, remedy, Severity.ERROR);
  }

  void add(Problem problem) {
    problems.add(problem);
  }

  private void add(
      Stored<?> file, Position at, String where, String what, String remedy, Severity severity) {
    problems.add(new Problem(file.file(), at.line(), at.column(), where, what, remedy, severity));
  }
}
