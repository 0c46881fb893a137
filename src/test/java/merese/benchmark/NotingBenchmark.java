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
 * One note from a cold process beside a question from a cold process, in a library of 5,000 works
 * and 100,000 notes; what it writes; and how long the check of that whole library takes.
 */
final class NotingBenchmark implements Benchmark {
  private static final int WORKS = 5_000;
  private static final int NOTES_EACH = 20;
  private static final int RUNS = 11;

  @Override
  public void run(Report report) throws IOException, InterruptedException {
    String merese = Path.of("target/merese/bin/merese").toAbsolutePath().toString();
    try (LargeLibrary large = LargeLibrary.of(WORKS, NOTES_EACH)) {
      Timed covers = new Timed(List.of(merese, "covers", "bladed ring"), large.folder());
      covers.once();
      double[] asked = new double[RUNS];
      double[] noted = new double[RUNS];
      List<String> sources = large.sources();
      for (int run = 0; run < RUNS; run++) {
        asked[run] = covers.once();
      }
      Map<Path, String> before = stamps(large.folder());
      for (int run = 0; run < RUNS; run++) { // the index is left as it is, so each reads some works
        String source = sources.get(run * sources.size() / RUNS);
        noted[run] =
            new Timed(
                    List.of(merese, "note", source, "pl. 12, fig. 3", "bladed ring", "--pictured"),
                    large.folder())
                .once();
      }
      report.ratio(
          "A cold 'merese note' against a cold 'merese covers', 100,000 notes",
          Report.median(noted),
          Report.median(asked),
          "ms",
          1.5);
      report.say(written(before, large.folder()));
      double check =
          new Timed(List.of("env", "MERESE_JAVA_OPTS=-Xmx512m", merese, "check"), large.folder())
              .once();
      report.say(
          "'merese check' of 5,000 works and 100,000 notes, in 512 MB: "
              + Math.round(check / 100) / 10.0
              + " s");
    }
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
    return "Bytes written by a note: "
        + works / RUNS
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
