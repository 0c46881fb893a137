package merese.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * How long a question takes from a cold process, beside a Java hello-world on the same machine: the
 * launcher and all it does, against {@code java -cp} with the flags that Java has by itself.
 */
final class StartBenchmark implements Benchmark {
  private static final int RUNS = 21;

  @Override
  public void run(Report report) throws IOException, InterruptedException {
    String java = System.getProperty("java.home") + "/bin/java";
    String classes = Path.of("target/test-classes").toAbsolutePath().toString();
    Path demo = Path.of("target/merese/demo").toAbsolutePath();
    Timed hello = new Timed(List.of(java, "-cp", classes, Hello.class.getName()), demo);
    Timed covers =
        new Timed(
            List.of(
                Path.of("target/merese/bin/merese").toAbsolutePath().toString(),
                "covers",
                "bladed ring"),
            demo);
    hello.once();
    covers.once(); // makes the index, and warms the disk for both
    double[] helloTimes = new double[RUNS];
    double[] coversTimes = new double[RUNS];
    for (int run = 0; run < RUNS; run++) { // in turn, so that both meet the same machine
      helloTimes[run] = hello.once();
      coversTimes[run] = covers.once();
    }
    report.ratio(
        "A cold 'merese covers' against a Java hello-world",
        Report.median(coversTimes),
        Report.median(helloTimes),
        "ms",
        4.0);
  }
}
