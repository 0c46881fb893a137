package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import merese.testing.ManyWorks;

/**
 * Indexes and asks a library of 1,000 works and 20,000 notes in processes with a heap of 256 MB.
 */
final class MemoryBenchmark implements Benchmark {
  private static final int WORKS = 1_000;
  private static final int NOTES = 20;

  @Override
  public void run(Report report) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("merese-large");
    LibraryFolder library = LibraryFolder.create(folder, "A large library");
    List<Work> works;
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      works = ManyWorks.of(shelf.thesaurus(), WORKS, NOTES);
    }
    works.forEach(library::add);
    List<String> words = new ArrayList<>();
    words.add(System.getProperty("java.home") + "/bin/java");
    words.addAll(
        List.of("-Xmx256m", "-cp", System.getProperty("java.class.path"), "merese.cli.Main"));
    words.addAll(List.of("covers", "bladed ring", "--library", folder.toString()));
    Timed covers = new Timed(words, folder);
    double first = covers.once();
    double second = covers.once();
    report.say(
        "1,000 works and 20,000 notes in a heap of 256 MB: read and indexed in "
            + Math.round(first)
            + " ms, asked again in "
            + Math.round(second)
            + " ms (goal: it fits; met)");
    IndexBenchmark.delete(folder);
  }
}
