package merese.answer.fewest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A set covering problem: the fewest columns that have all rows between them. Rows and columns are
 * numbered from 0.
 *
 * @param rows how many there are; each is in some column
 * @param columns the rows that each has
 * @param must columns that are taken in any case
 */
record CoverProblem(int rows, List<BitSet> columns, BitSet must) {

  /** A cover that takes the largest column first: no fewest one, but a place to start. */
  List<Integer> greedy() {
    BitSet open = new BitSet();
    open.set(0, rows);
    List<Integer> taken = new ArrayList<>();
    must.stream()
        .forEach(
            column -> {
              taken.add(column);
              open.andNot(columns.get(column));
            });
    while (!open.isEmpty()) {
      int best = -1;
      int most = 0;
      for (int column = 0; column < columns.size(); column++) {
        BitSet gain = (BitSet) columns.get(column).clone();
        gain.and(open);
        if (gain.cardinality() > most) {
          best = column;
          most = gain.cardinality();
        }
      }
      if (best < 0) {
        throw new IllegalStateException("a row is in no column");
      }
      taken.add(best);
      open.andNot(columns.get(best));
    }
    return taken;
  }

  boolean isCover(Iterable<Integer> taken) {
    BitSet covered = new BitSet();
    for (int column : taken) {
      covered.or(columns.get(column));
    }
    return covered.cardinality() == rows;
  }

  /**
   * The columns without those whose rows all are in one other: enough to know how few will do, too
   * little to know which.
   */
  List<Integer> undominated() {
    List<Integer> kept = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      if (must.get(column) || !isDominated(column)) {
        kept.add(column);
      }
    }
    return kept;
  }

  private boolean isDominated(int column) {
    BitSet own = columns.get(column);
    for (int other = 0; other < columns.size(); other++) {
      if (other != column) {
        BitSet rest = (BitSet) own.clone();
        rest.andNot(columns.get(other));
        boolean same = own.equals(columns.get(other));
        if (rest.isEmpty() && (!same || other < column || must.get(other))) {
          return true;
        }
      }
    }
    return false;
  }

  /** The same rows, with these columns alone. */
  CoverProblem of(List<Integer> kept) {
    BitSet forced = new BitSet();
    for (int i = 0; i < kept.size(); i++) {
      forced.set(i, must.get(kept.get(i)));
    }
    return new CoverProblem(rows, kept.stream().map(columns::get).toList(), forced);
  }
}
