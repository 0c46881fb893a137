package merese.answer.fewest;

import java.util.List;
import merese.answer.fewest.CoverSolver.Answer;
import merese.answer.fewest.CoverSolver.State;

/**
 * How few columns do.
 *
 * @param columns a cover, ascending: the smallest one where that is proved
 * @param atLeast so many are needed, as far as is proved
 */
record FewestColumns(List<Integer> columns, int atLeast) {
  boolean isProved() {
    return columns.size() == atLeast;
  }

  /**
   * Asks the solver again and again whether one column less will do, until it will not.
   *
   * @param deadline by {@link System#nanoTime}
   */
  static FewestColumns of(CoverProblem problem, long deadline) {
    List<Integer> kept = problem.undominated();
    CoverProblem smaller = problem.of(kept);
    CoverSolver solver = new CoverSolver(smaller, deadline);
    List<Integer> best = smaller.greedy();
    int atLeast = Math.max(1, solver.lowerBound());
    while (best.size() > atLeast) {
      solver.atMost(solver.size(), best.size() - 1L);
      Answer answer = solver.any();
      if (answer.state() == State.NONE) {
        atLeast = best.size();
      } else if (answer.state() == State.PROVED) {
        best = answer.columns();
      } else {
        break;
      }
    }
    return new FewestColumns(best.stream().map(kept::get).sorted().toList(), atLeast);
  }
}
