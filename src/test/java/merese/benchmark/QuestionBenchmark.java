package merese.benchmark;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsQuestion;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.ConcordanceQuestion;
import merese.answer.concordance.Concording;
import merese.answer.fewest.Fewest;
import merese.answer.fewest.FewestQuestion;
import merese.answer.fewest.FewestSources;
import merese.shelf.Shelf;

/**
 * The questions that weigh many notes, each from the opening of the library to its answer, beside
 * reading every document of the same index from Lucene alone. There is no goal.
 */
final class QuestionBenchmark implements Benchmark {
  private static final int RUNS = 3;

  /** Its proof may take a minute. */
  private static final int RUNS_OF_FEWEST = 1;

  /** Asks, and says in words how large the answer is. */
  private interface Question {
    String ask(Shelf shelf);
  }

  @Override
  public void run(Report report) throws IOException {
    try (LargeLibrary large = LargeLibrary.indexed(500, 10_000)) {
      List<String> concepts = large.concepts().subList(0, 130);
      measure(
          "Concordance of 500 sources by 130 concepts",
          large,
          report,
          s -> concordance(s, concepts));
    }
    try (LargeLibrary large = LargeLibrary.indexed(2_000, 40_000)) {
      List<String> concepts = large.concepts();
      List<String> middling = concepts.subList(concepts.size() / 2 - 15, concepts.size() / 2 + 15);
      measure(
          "Fewest sources for 30 features among 2,000 sources",
          large,
          report,
          s -> fewest(s, middling),
          RUNS_OF_FEWEST);
    }
    try (LargeLibrary large = LargeLibrary.indexed(1_000, 20_000)) {
      measure(
          "Claims of all concepts over 20,000 notes",
          large,
          report,
          s -> claims(s, large.concepts()));
    }
  }

  private static void measure(String what, LargeLibrary large, Report report, Question question)
      throws IOException {
    measure(what, large, report, question, RUNS);
  }

  private static void measure(
      String what, LargeLibrary large, Report report, Question question, int runs)
      throws IOException {
    double ours = Double.MAX_VALUE;
    double bare = Double.MAX_VALUE;
    String size = "";
    for (int run = 0; run < runs; run++) { // in turn, so that both meet the same machine
      long before = System.nanoTime();
      try (Shelf shelf = large.open()) {
        size = question.ask(shelf);
      }
      ours = Math.min(ours, (System.nanoTime() - before) / 1e6);
      bare = Math.min(bare, BareReading.of(large.index()));
    }
    report.beside(
        what + " (" + size + "), against reading every document from Lucene alone",
        ours,
        bare,
        "ms");
  }

  private static String concordance(Shelf shelf, List<String> concepts) {
    Concordance answer =
        Concording.answer(shelf, new ConcordanceQuestion(concepts, Optional.empty()));
    return answer.rows().size() + " sources in its table";
  }

  private static String fewest(Shelf shelf, List<String> concepts) {
    FewestSources answer =
        Fewest.answer(shelf, FewestQuestion.of(true, concepts.toArray(String[]::new)));
    FewestSources.Proof proof = answer.proof();
    return answer.best().orElseThrow().sources().size()
        + " sources, "
        + (proof.fewest() ? "proved" : "not proved")
        + ", "
        + (proof.ranked() ? "the first of its ties" : "not the first of its ties for certain");
  }

  private static String claims(Shelf shelf, List<String> concepts) {
    int claims = 0;
    for (String concept : concepts) {
      var kinds = Claims.answer(shelf, ClaimsQuestion.of(concept)).sections().get(0).kinds();
      for (var kind : kinds) {
        for (var group : kind.groups()) {
          claims += group.rows().size();
        }
      }
    }
    return claims + " claims, each with all narrower";
  }
}
