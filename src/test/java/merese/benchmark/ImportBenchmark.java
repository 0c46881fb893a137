package merese.benchmark;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.store.LibraryFolder;
import merese.testing.InventedBibtex;

/** Brings a bibliography of 50,000 entries into a library, in a process with a heap of 512 MB. */
final class ImportBenchmark implements Benchmark {
  private static final int ENTRIES = 50_000;

  @Override
  public void run(Report report) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("merese-import");
    Path file = folder.resolve("invented.bib");
    try (Writer out = Files.newBufferedWriter(file)) {
      InventedBibtex.write(0, ENTRIES, out);
    }
    Path library = folder.resolve("library");
    LibraryFolder.create(library, "Of a bibliography");
    double preview = merese(file, library).once();
    double applied = merese(file, library, "--apply").once();
    double again = merese(file, library).once();
    report.fits(
        "50,000 entries of BibTeX: previewed; brought in; found to be there",
        Math.round(preview / 1_000)
            + " s; "
            + Math.round(applied / 1_000)
            + " s; "
            + Math.round(again / 1_000)
            + " s",
        "fits in 512 MB");
    LargeLibrary.delete(folder);
  }

  private static Timed merese(Path file, Path library, String... more) {
    List<String> words = new ArrayList<>(List.of("import", file.toString()));
    words.addAll(List.of(more));
    words.addAll(List.of("--library", library.toString()));
    return Timed.meresesHeap("512m", library, words.toArray(String[]::new));
  }
}
