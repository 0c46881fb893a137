package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsQuestion;
import merese.model.Concept;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.ManyWorks;

/**
 * The claims of every concept over 20,000 notes, beside reading every document of the same index
 * from Lucene alone. There is no goal.
 */
final class ClaimsBenchmark implements Benchmark {
  private static final int WORKS = 1_000;
  private static final int NOTES = 20;
  private static final int RUNS = 3;

  @Override
  public void run(Report report) throws IOException {
    Path folder = Files.createTempDirectory("merese-claims");
    LibraryFolder library = LibraryFolder.create(folder, "A large library");
    List<Work> works;
    List<String> concepts = new ArrayList<>();
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      works = ManyWorks.of(shelf.thesaurus(), WORKS, NOTES);
      for (Concept concept : shelf.thesaurus().concepts()) {
        concepts.add(concept.id());
      }
    }
    works.forEach(library::add);
    Shelf.open(library, Watcher.NONE).close(); // makes the index
    double ours = Double.MAX_VALUE;
    double bare = Double.MAX_VALUE;
    int claims = 0;
    for (int run = 0; run < RUNS; run++) { // in turn, so that both meet the same machine
      long before = System.nanoTime();
      claims = claims(library, concepts);
      ours = Math.min(ours, (System.nanoTime() - before) / 1e6);
      bare = Math.min(bare, BareReading.of(library.index().resolve("lucene")));
    }
    report.say(
        "Claims of all "
            + concepts.size()
            + " concepts over 20,000 notes ("
            + claims
            + " claims, each with all narrower): "
            + Math.round(ours)
            + " ms, beside "
            + Math.round(bare)
            + " ms to read every document once from Lucene alone");
    IndexBenchmark.delete(folder);
  }

  private static int claims(LibraryFolder library, List<String> concepts) {
    int claims = 0;
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      for (String concept : concepts) {
        var kinds = Claims.answer(shelf, ClaimsQuestion.of(concept)).sections().get(0).kinds();
        for (var kind : kinds) {
          for (var group : kind.groups()) {
            claims += group.rows().size();
          }
        }
      }
    }
    return claims;
  }
}
