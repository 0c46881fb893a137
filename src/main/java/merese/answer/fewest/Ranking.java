package merese.answer.fewest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import merese.answer.fewest.CoverSolver.Answer;
import merese.answer.fewest.CoverSolver.Goal;
import merese.answer.fewest.CoverSolver.RowsHad;
import merese.answer.fewest.CoverSolver.State;
import merese.answer.fewest.CoverSolver.Sum;

/**
 * Finds the covers of one size in the order of rule R6, the best first: most rows pictured; most
 * rows exact; most columns owned; the smallest ascending list of years; authors from A to Z. One
 * goal after the other is solved and then kept.
 *
 * @param pictured the rows that each column pictures
 * @param exact the rows that each column has as they were asked for
 * @param owned columns that are owned
 * @param years of the columns, {@link #UNDATED} where there is none; columns are in the order of
 *     years and, in one year, of authors
 */
record Ranking(List<BitSet> pictured, List<BitSet> exact, BitSet owned, int[] years) {
  /** Comes after every year. */
  static final int UNDATED = Integer.MAX_VALUE;

  /** Weights of one goal stay below this, so that the solver's fractions can tell them apart. */
  private static final long LARGEST_WEIGHT = 20_000;

  /**
   * The next cover under the solver's conditions; it is ruled out for the next time.
   *
   * @return empty where there is none more
   */
  Found next(CoverSolver solver, int size) {
    int kept = 0;
    Answer last = new Answer(State.NOT_PROVED, List.of(), 0);
    for (Goal goal : List.of(new RowsHad(pictured), new RowsHad(exact), ownedColumns())) {
      last = solver.largest(goal);
      if (last.state() != State.PROVED) {
        solver.takeBack(kept);
        return new Found(last.state(), List.of());
      }
      solver.atLeast(goal, last.value());
      kept++;
    }
    List<List<Integer>> groups = byYear();
    int open = size;
    for (Sum goal : goals(groups, size)) {
      if (open == 0) {
        break;
      }
      last = solver.largest(goal);
      if (last.state() != State.PROVED) {
        solver.takeBack(kept);
        return new Found(last.state(), List.of());
      }
      solver.atLeast(goal, last.value());
      kept++;
      open -= (int) last.columns().stream().filter(c -> goal.weights()[c] > 0).count();
    }
    for (Sum goal : goals(rivals(groups, last.columns()), 1)) {
      last = solver.largest(goal);
      if (last.state() != State.PROVED) {
        solver.takeBack(kept);
        return new Found(last.state(), List.of());
      }
      solver.atLeast(goal, last.value());
      kept++;
    }
    solver.takeBack(kept);
    long[] these = new long[years.length];
    last.columns().forEach(column -> these[column] = 1);
    solver.atMost(new Sum(these), size - 1L);
    return new Found(State.PROVED, last.columns());
  }

  /**
   * @param columns ascending; none where the state is not PROVED
   */
  record Found(State state, List<Integer> columns) {
    static final Found UNPROVED = new Found(State.NOT_PROVED, List.of());
  }

  private Sum ownedColumns() {
    long[] weights = new long[years.length];
    owned.stream().forEach(column -> weights[column] = 1);
    return new Sum(weights);
  }

  /** The columns of each year, the earliest first. */
  private List<List<Integer>> byYear() {
    TreeMap<Integer, List<Integer>> byYear = new TreeMap<>();
    for (int column = 0; column < years.length; column++) {
      byYear.computeIfAbsent(years[column], y -> new ArrayList<>()).add(column);
    }
    return List.copyOf(byYear.values());
  }

  /** Where a year has more columns than are taken of it: each of its columns by itself. */
  private static List<List<Integer>> rivals(List<List<Integer>> groups, List<Integer> taken) {
    List<List<Integer>> rivals = new ArrayList<>();
    for (List<Integer> group : groups) {
      long of = group.stream().filter(taken::contains).count();
      if (of > 0 && of < group.size()) {
        group.forEach(column -> rivals.add(List.of(column)));
      }
    }
    return rivals;
  }

  /**
   * Goals that, one after the other, prefer covers with more columns of the first group, then of
   * the second, and so on; several groups in one goal while their weights allow it.
   *
   * @param most columns of a group that a cover can have
   */
  private List<Sum> goals(List<List<Integer>> groups, int most) {
    List<Sum> goals = new ArrayList<>();
    int start = 0;
    while (start < groups.size()) {
      int end = start;
      long heaviest = 1;
      while (end < groups.size() && heaviest * (most + 1L) <= LARGEST_WEIGHT) {
        end++;
        heaviest *= most + 1L;
      }
      end = Math.max(end, start + 1);
      long[] weights = new long[years.length];
      long weight = 1;
      for (int i = end - 1; i >= start; i--) {
        for (int column : groups.get(i)) {
          weights[column] = weight;
        }
        weight *= most + 1L;
      }
      goals.add(new Sum(weights));
      start = end;
    }
    return goals;
  }
}
