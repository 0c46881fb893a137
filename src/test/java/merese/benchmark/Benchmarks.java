package merese.benchmark;

import java.util.List;

/**
 * Runs every comparison and prints its ratio. Started by {@code mvn -B -ntp -Pbenchmark verify}, on
 * the program that this builds. Nothing here is a test: a slow machine fails nothing.
 */
final class Benchmarks {
  /** A new comparison is one line here. */
  private static final List<Benchmark> ALL =
      List.of(
          new StartBenchmark(),
          new NotingBenchmark(),
          new IndexBenchmark(),
          new MemoryBenchmark(),
          new QuestionBenchmark(),
          new ReadingBenchmark(),
          new ImportBenchmark(),
          new DeskBenchmark());

  private Benchmarks() {}

  public static void main(String[] args) throws Exception {
    Report report = new Report(System.out);
    report.say("Java " + System.getProperty("java.version") + ", runs in turn");
    for (Benchmark benchmark : ALL) {
      benchmark.run(report);
    }
  }
}
