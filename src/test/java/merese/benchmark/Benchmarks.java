package merese.benchmark;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Runs every comparison and prints one table. Started by {@code mvn -B -ntp -Pbenchmark verify}, on
 * the program that this builds; {@code -Dsizes=1000,20000,200000} says how many works the libraries
 * have, {@code -Donly=start,build} which comparisons are made. Nothing here is a test: a slow
 * machine fails nothing.
 */
final class Benchmarks {
  private Benchmarks() {}

  /** A new comparison is one line here. */
  private static Map<String, Benchmark> all(Libraries libraries) {
    Map<String, Benchmark> all = new LinkedHashMap<>();
    all.put("start", new StartBenchmark(libraries));
    all.put("questions", new QuestionsBenchmark(libraries));
    all.put("build", new BuildBenchmark(libraries));
    all.put("pages", new PagesBenchmark(libraries));
    all.put("noting", new NotingBenchmark(libraries));
    all.put("weighing", new QuestionBenchmark());
    all.put("reading", new ReadingBenchmark());
    all.put("import", new ImportBenchmark());
    all.put("desk", new DeskBenchmark());
    return all;
  }

  public static void main(String[] args) throws Exception {
    Report report = new Report(System.out);
    report.input(
        "Java "
            + System.getProperty("java.version")
            + ", "
            + Runtime.getRuntime().availableProcessors()
            + " processors, runs in turn; ratios are what counts, seconds are this machine's");
    String only = System.getProperty("only", "").toLowerCase(Locale.ROOT);
    try (Libraries libraries = new Libraries(System.getProperty("sizes", "1000,20000"))) {
      for (Map.Entry<String, Benchmark> each : all(libraries).entrySet()) {
        if (only.isEmpty() || ("," + only + ",").contains("," + each.getKey() + ",")) {
          each.getValue().run(report);
        }
      }
    }
    report.finish(Path.of("target/benchmark.md"));
  }
}
