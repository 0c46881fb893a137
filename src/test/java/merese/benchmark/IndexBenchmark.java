package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import merese.model.Work;
import merese.search.BareWriter;
import merese.search.IndexUpdate;
import merese.shelf.FilesForIndex;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.ManyWorks;
import merese.vocabulary.Thesaurus;

/**
 * Building the index, from works in memory to the commit, against a bare Lucene writer that is
 * given what the works were made into, and makes, analyses and writes the same documents.
 */
final class IndexBenchmark implements Benchmark {
  private static final int RUNS = 7;
  private static final int WORKS = 1_000;
  private static final int NOTES = 20;

  @Override
  public void run(Report report) throws IOException {
    Thesaurus thesaurus = starter();
    List<Work> works = ManyWorks.of(thesaurus, WORKS, NOTES);
    BareWriter bare = new BareWriter(new FilesForIndex(thesaurus).of(works));
    double[] ours = new double[RUNS];
    double[] theirs = new double[RUNS];
    build(thesaurus, works);
    theirs(bare);
    for (int run = 0; run < RUNS; run++) {
      ours[run] = bare.size() / build(thesaurus, works);
      theirs[run] = bare.size() / theirs(bare);
    }
    report.share(
        "Documents a second while building the index, against a bare Lucene writer",
        Report.median(ours),
        Report.median(theirs),
        0.6);
  }

  private static Thesaurus starter() {
    Path demo = Path.of("target/merese/demo/library").toAbsolutePath();
    try (Shelf shelf = Shelf.open(LibraryFolder.open(demo), Watcher.NONE)) {
      return shelf.thesaurus();
    }
  }

  /** Seconds. */
  private static double build(Thesaurus thesaurus, List<Work> works) throws IOException {
    Path folder = Files.createTempDirectory("merese-index");
    long before = System.nanoTime();
    FilesForIndex files = new FilesForIndex(thesaurus);
    try (IndexUpdate update = IndexUpdate.fromNothing(folder)) {
      for (Work work : works) {
        update.replace(files.of(work));
      }
      update.commit();
    }
    double seconds = (System.nanoTime() - before) / 1e9;
    delete(folder);
    return seconds;
  }

  private static double theirs(BareWriter bare) throws IOException {
    Path folder = Files.createTempDirectory("merese-bare");
    long before = System.nanoTime();
    bare.write(folder);
    double seconds = (System.nanoTime() - before) / 1e9;
    delete(folder);
    return seconds;
  }

  static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
