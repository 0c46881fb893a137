package merese.answer.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.StringTokenizer;
import java.util.concurrent.TimeUnit;
import merese.answer.fewest.CoverSolver.Answer;
import merese.answer.fewest.CoverSolver.State;
import merese.answer.fewest.CoverSolver.Sum;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Set covering instances of the OR-Library (J. E. Beasley, European Journal of Operational Research
 * 31 (1987) 85–93); the optima are those of SCIP in OR-Tools 9.15 (checks/SOURCES.md).
 */
class SetCoverLibraryTest {
  private static final Path FILES = Path.of("src/test/resources/merese/checks/setcover");

  /** Long enough for a slow machine; an optimum that is not proved fails whatever the time. */
  private static final long MOST_MINUTES = 10;

  private record Instance(CoverProblem problem, long[] costs) {}

  private static Instance read(String name) throws IOException {
    StringTokenizer numbers =
        new StringTokenizer(
            Files.readString(FILES.resolve(name + ".txt"), StandardCharsets.US_ASCII));
    int rows = Integer.parseInt(numbers.nextToken());
    int columns = Integer.parseInt(numbers.nextToken());
    long[] costs = new long[columns];
    List<BitSet> has = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      costs[column] = Long.parseLong(numbers.nextToken());
      has.add(new BitSet());
    }
    for (int row = 0; row < rows; row++) {
      int count = Integer.parseInt(numbers.nextToken());
      for (int i = 0; i < count; i++) {
        has.get(Integer.parseInt(numbers.nextToken()) - 1).set(row);
      }
    }
    return new Instance(new CoverProblem(rows, has, new BitSet()), costs);
  }

  private static long deadline() {
    return System.nanoTime() + TimeUnit.MINUTES.toNanos(MOST_MINUTES);
  }

  @ParameterizedTest
  @CsvSource({"scpe1, 5", "scpe2, 5"})
  void fewestColumns(String name, int optimum) throws IOException {
    CoverProblem problem = read(name).problem();
    FewestColumns found = FewestColumns.of(problem, deadline());
    assertTrue(found.isProved(), "at least " + found.atLeast());
    assertEquals(optimum, found.columns().size());
    assertTrue(problem.isCover(found.columns()));
  }

  @ParameterizedTest
  @CsvSource({"scp41, 429", "scp42, 512", "scp43, 516", "scp44, 494", "scp61, 138"})
  void cheapestColumns(String name, long optimum) throws IOException {
    Instance instance = read(name);
    Answer answer =
        new CoverSolver(instance.problem(), deadline()).smallest(new Sum(instance.costs()));
    assertEquals(State.PROVED, answer.state());
    assertEquals(optimum, answer.value());
    assertTrue(instance.problem().isCover(answer.columns()));
  }
}
