package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/**
 * The measures give what trec_eval gives for its own test files; the values are those of its
 * expected output out.test.aq, to four digits (checks/SOURCES.md).
 */
class RankingMeasuresTest {
  private static final Path FILES = Path.of("src/test/resources/merese/checks/trec-eval");

  private record Line(String document, double score) {}

  private static double mean(BiFunction<List<String>, Map<String, Integer>, Double> measure)
      throws IOException {
    Map<String, Map<String, Integer>> grades = new TreeMap<>();
    for (String line : Files.readAllLines(FILES.resolve("qrels.test"))) {
      String[] words = line.strip().split("\\s+");
      grades
          .computeIfAbsent(words[0], t -> new TreeMap<>())
          .put(words[2], Integer.valueOf(words[3]));
    }
    Map<String, List<Line>> runs = new TreeMap<>();
    for (String line : Files.readAllLines(FILES.resolve("results.test"))) {
      String[] words = line.strip().split("\\s+");
      runs.computeIfAbsent(words[0], t -> new ArrayList<>())
          .add(new Line(words[2], Double.parseDouble(words[4])));
    }
    double sum = 0;
    for (Map.Entry<String, List<Line>> run : runs.entrySet()) {
      // trec_eval goes by the score, then by the document's name backwards, and not by the rank
      run.getValue()
          .sort(Comparator.comparingDouble(Line::score).thenComparing(Line::document).reversed());
      List<String> ranked = run.getValue().stream().map(Line::document).toList();
      sum += measure.apply(ranked, grades.get(run.getKey()));
    }
    return sum / runs.size();
  }

  @Test
  void averagePrecisionIsThatOfTrecEval() throws IOException {
    assertEquals(0.1785, mean(RankingMeasures::averagePrecision), 0.00005);
  }

  @Test
  void precisionAtTenIsThatOfTrecEval() throws IOException {
    assertEquals(0.3000, mean((r, g) -> RankingMeasures.precision(r, g, 10)), 0.00005);
  }

  @Test
  void ndcgIsThatOfTrecEval() throws IOException {
    assertEquals(0.4021, mean((r, g) -> RankingMeasures.ndcg(r, g, Integer.MAX_VALUE)), 0.00005);
  }

  @Test
  void ndcgAtTenIsThatOfTrecEval() throws IOException {
    assertEquals(0.3016, mean((r, g) -> RankingMeasures.ndcg(r, g, 10)), 0.00005);
  }
}
