package merese.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One note from a cold process beside a question from a cold process at each size; what it writes;
 * and how long the check of that whole library takes.
 */
final class NotingBenchmark implements Benchmark {
  private static final int RUNS = 11;
  private static final double AGAINST_COVERS = 1.5;

  /** It holds what all works refer to. */
  private static final int MOST_CHECKED_IN_LITTLE = 20_000;

  private final Libraries libraries;

  NotingBenchmark(Libraries libraries) {
    this.libraries = libraries;
  }

  @Override
  public void run(Report report) throws Exception {
    for (int works : libraries.sizes()) {
      atSize(report, libraries.of(works));
    }
  }

  private static void atSize(Report report, LargeLibrary large) throws Exception {
    int works = large.list().works();
    String size = Report.whole(large.list().notes()) + " notes";
    report.input(
        "Noting, " + large.words() + ": " + RUNS + " notes in as many sources, one a process");
    Timed covers = Timed.merese(large.folder(), "covers", "bladed ring");
    double asked = InTurns.medians(covers)[0];
    double[] noted = new double[RUNS];
    List<String> sources = large.sources(RUNS);
    Map<Path, String> before = stamps(large.folder());
    for (int run = 0; run < RUNS; run++) { // the index is left as it is, so each reads some works
      noted[run] =
          Timed.merese(
                  large.folder(),
                  "note",
                  sources.get(run),
                  "pl. 99, fig. " + (run + 1),
                  "bladed ring",
                  "--pictured")
              .once();
    }
    double note = Report.median(noted);
    report.ratio("cold note, " + size + ", against cold covers", note, asked, "ms", AGAINST_COVERS);
    report.cost("cold note", works, note, "ms");
    report.say("… bytes that a note writes, " + size, written(before, large.folder()));
    boolean many = works > MOST_CHECKED_IN_LITTLE;
    double check = Timed.meresesHeap(many ? "2g" : "512m", large.folder(), "check").once();
    report.say(
        "check of " + large.words() + (many ? ", in 2 GB" : ", in 512 MB"),
        Report.words(check, "ms"));
    report.cost("check", works, check, "ms");
  }

  /** Each file with what would differ if it had been written. */
  private static Map<Path, String> stamps(Path folder) throws IOException {
    Map<Path, String> stamps = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        stamps.put(file, Files.size(file) + " " + Files.getLastModifiedTime(file));
      }
    }
    return stamps;
  }

  private static String written(Map<Path, String> before, Path folder) throws IOException {
    List<Path> written = new ArrayList<>();
    stamps(folder)
        .forEach(
            (file, stamp) -> {
              if (!stamp.equals(before.get(file))) {
                written.add(file);
              }
            });
    long works = bytes(written, "works");
    long history = bytes(written, ".history");
    long rest = bytes(written, "") - works - history;
    return works / RUNS
        + " of its work, "
        + history / RUNS
        + " of the history, "
        + rest
        + " of all else in "
        + RUNS
        + " notes";
  }

  private static long bytes(List<Path> files, String folder) {
    long bytes = 0;
    for (Path file : files) {
      if (folder.isEmpty() || file.toString().contains("/" + folder + "/")) {
        try {
          bytes += Files.size(file);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
    return bytes;
  }
}
