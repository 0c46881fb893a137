package merese.cli;

import java.util.List;
import merese.shelf.Shortfall;
import merese.store.Problem;

/**
 * Says on standard error what an answer lacks because files of the library are damaged: there it is
 * seen by whoever pipes the answer, and leaves the answer's own form as it is.
 */
final class IncompleteText {
  /** So many files are named. */
  static final int SHOWN = 5;

  private IncompleteText() {}

  static void print(Context context, List<Shortfall> shortfalls) {
    if (context.screen().terminal() && context.errorScreen().terminal()) {
      context.err().println();
    }
    Page page = new Page(context.err(), context.errorScreen());
    page.heading("This answer is incomplete:");
    int shown = Math.min(SHOWN, shortfalls.size());
    for (Shortfall shortfall : shortfalls.subList(0, shown)) {
      page.hanging("  ", words(context, shortfall));
    }
    int more = shortfalls.size() - shown;
    page.hanging(
        "  ",
        more > 0
            ? "and " + more + " more; merese check lists them all, and what to do"
            : "merese check says what to do.");
  }

  private static String words(Context context, Shortfall shortfall) {
    List<Problem> problems = shortfall.problems();
    int more = problems.size() - 1;
    Problem first = context.fromHere(problems.get(0));
    Problem brief =
        new Problem(
            first.file(),
            first.line(),
            first.column(),
            first.where(),
            first.what(),
            "",
            first.severity());
    return brief
        + (more > 0 ? "; and " + more + " more" : "")
        + " ("
        + shortfall.effect().words()
        + ")";
  }
}
