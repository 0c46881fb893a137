package merese.answer.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import merese.answer.fewest.CoverSolver.State;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Every subset of a few columns, looked at one by one, gives the same covers in the same order. */
class ExhaustiveSearchTest {
  private record Case(CoverProblem problem, Ranking ranking) {}

  private static Case random(long seed) {
    Random random = new Random(seed);
    int rows = 1 + random.nextInt(6);
    int count = 3 + random.nextInt(7);
    List<BitSet> columns = new ArrayList<>();
    List<BitSet> pictured = new ArrayList<>();
    List<BitSet> exact = new ArrayList<>();
    BitSet owned = new BitSet();
    for (int column = 0; column < count; column++) {
      BitSet has = new BitSet();
      for (int row = 0; row < rows; row++) {
        has.set(row, random.nextInt(3) == 0);
      }
      columns.add(has);
      pictured.add(part(has, random));
      exact.add(part(has, random));
      owned.set(column, random.nextBoolean());
    }
    for (int row = 0; row < rows; row++) {
      columns.get(random.nextInt(count)).set(row);
    }
    int[] years =
        IntStream.range(0, count)
            .map(i -> random.nextInt(8) == 0 ? Ranking.UNDATED : 1900 + random.nextInt(4))
            .sorted()
            .toArray();
    BitSet must = new BitSet();
    must.set(0, random.nextInt(5) == 0);
    return new Case(
        new CoverProblem(rows, columns, must), new Ranking(pictured, exact, owned, years));
  }

  private static BitSet part(BitSet whole, Random random) {
    BitSet part = new BitSet();
    whole.stream().filter(row -> random.nextBoolean()).forEach(part::set);
    return part;
  }

  private static List<List<Integer>> everyFewestCover(Case random) {
    List<List<Integer>> covers = new ArrayList<>();
    int columns = random.problem.columns().size();
    int fewest = Integer.MAX_VALUE;
    for (int subset = 0; subset < 1 << columns; subset++) {
      int bits = subset;
      List<Integer> taken =
          IntStream.range(0, columns).filter(i -> (bits >> i & 1) == 1).boxed().toList();
      boolean forced = random.problem.must().stream().allMatch(taken::contains);
      if (forced && random.problem.isCover(taken) && taken.size() <= fewest) {
        if (taken.size() < fewest) {
          covers.clear();
        }
        fewest = taken.size();
        covers.add(taken);
      }
    }
    covers.sort(order(random.ranking));
    return covers;
  }

  /** R6, written out as a comparison. */
  private static Comparator<List<Integer>> order(Ranking ranking) {
    return Comparator.comparingInt((List<Integer> c) -> -had(ranking.pictured(), c))
        .thenComparingInt(c -> -had(ranking.exact(), c))
        .thenComparingLong(c -> -c.stream().filter(ranking.owned()::get).count())
        .thenComparing(c -> c.stream().map(i -> ranking.years()[i]).toList(), lists())
        .thenComparing(c -> c, lists());
  }

  private static Comparator<List<Integer>> lists() {
    return (a, b) -> {
      for (int i = 0; i < a.size(); i++) {
        if (!a.get(i).equals(b.get(i))) {
          return a.get(i).compareTo(b.get(i));
        }
      }
      return 0;
    };
  }

  private static int had(List<BitSet> rows, List<Integer> cover) {
    BitSet had = new BitSet();
    cover.forEach(column -> had.or(rows.get(column)));
    return had.cardinality();
  }

  @Property(tries = 60, seed = "1")
  void findsTheSameCoversInTheSameOrder(@ForAll long seed) {
    Case random = random(seed);
    List<List<Integer>> expected = everyFewestCover(random);
    long deadline = System.nanoTime() + TimeUnit.MINUTES.toNanos(5);
    FewestColumns fewest = FewestColumns.of(random.problem, deadline);
    assertTrue(fewest.isProved());
    assertEquals(expected.get(0).size(), fewest.columns().size());
    CoverSolver solver = new CoverSolver(random.problem, deadline);
    solver.atMost(solver.size(), fewest.columns().size());
    for (List<Integer> cover : expected.stream().limit(11).toList()) {
      Ranking.Found found = random.ranking.next(solver, cover.size());
      assertEquals(cover, found.columns(), found.state() + " of " + expected);
    }
    if (expected.size() <= 11) {
      assertEquals(State.NONE, random.ranking.next(solver, fewest.columns().size()).state());
    }
  }
}
