package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import merese.answer.Found.Hit;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.testing.DemoLibrary;
import merese.testing.RankingMeasures;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Thirty questions to the demo library against judgements of our own, which were made by reading
 * its files before anything was run (src/test/resources/merese/find/judged.tsv).
 */
class FindRankingTest {
  private static final Path JUDGED = Path.of("src/test/resources/merese/find/judged.tsv");

  @TempDir private static Path folder;
  private static Shelf shelf;
  private static Map<String, Map<String, Integer>> judged;

  @BeforeAll
  static void openTheDemoLibrary() throws IOException {
    shelf = Shelf.open(DemoLibrary.copyTo(folder), Watcher.NONE);
    judged = new LinkedHashMap<>();
    for (String line : Files.readAllLines(JUDGED)) {
      if (!line.startsWith("#")) {
        String[] columns = line.split("\t", -1);
        judged
            .computeIfAbsent(columns[0], q -> new LinkedHashMap<>())
            .put(columns[1], Integer.valueOf(columns[2]));
      }
    }
  }

  @AfterAll
  static void close() {
    shelf.close();
  }

  private static String id(Hit hit) {
    return switch (hit.kind()) {
          case NOTE -> "note:";
          case SOURCE -> "source:";
          case CONCEPT -> "concept:";
          case OWN_PIECE -> "piece:";
          default -> "mine:";
        }
        + hit.id();
  }

  private static List<String> ranked(String question, int limit) {
    return Find.answer(shelf, question, limit).hits().stream().map(FindRankingTest::id).toList();
  }

  @Test
  void thereAreThirtyQuestionsAndEveryJudgedHitIsInTheLibrary() {
    assertEquals(30, judged.size());
    List<String> everything =
        ranked("is:note OR is:source OR is:concept OR is:piece OR is:mine", 10_000);
    for (Map.Entry<String, Map<String, Integer>> question : judged.entrySet()) {
      for (String hit : question.getValue().keySet()) {
        assertTrue(everything.contains(hit), question.getKey() + ": there is no " + hit);
      }
    }
  }

  /**
   * The floor is 0.90. When the weights were set the mean was 0.923; with every word counting once,
   * without the vocabulary's labels, the authors' names and the bonus for words side by side, it
   * was 0.893, so whoever loses those falls under it.
   */
  @Test
  void theFirstTenHitsAreMostlyTheRightOnes() {
    double sum = 0;
    for (Map.Entry<String, Map<String, Integer>> question : judged.entrySet()) {
      List<String> ranked = ranked(question.getKey(), 10);
      double ndcg = RankingMeasures.ndcg(ranked, question.getValue(), 10);
      System.out.println(String.format(Locale.ROOT, "nDCG@10 %.3f  %s", ndcg, question.getKey()));
      sum += ndcg;
    }
    double mean = sum / judged.size();
    System.out.println(String.format(Locale.ROOT, "nDCG@10 %.3f  mean", mean));
    assertTrue(mean >= 0.90, "nDCG@10 is " + mean);
  }
}
