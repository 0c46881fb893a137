package merese.benchmark;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** Measures by JMH what a process does that is warm and has half a gigabyte. */
final class Warm {
  private static final TimeValue WARM = TimeValue.seconds(2);
  private static final TimeValue MEASURED = TimeValue.seconds(5);

  private Warm() {}

  /**
   * @param benchmarks a class with a parameter for the folder of the library
   * @param wanted what must have been measured
   * @return milliseconds of each, by its name
   */
  static Map<String, Statistics> measured(Class<?> benchmarks, Path folder, List<String> wanted)
      throws Exception {
    var options =
        new OptionsBuilder()
            .include("^" + benchmarks.getName() + "\\.")
            .param("folder", folder.toString())
            .forks(1)
            .jvmArgs("-Xmx512m")
            .warmupIterations(2)
            .warmupTime(WARM)
            .measurementIterations(1)
            .measurementTime(MEASURED)
            .timeout(TimeValue.minutes(5))
            .verbosity(VerboseMode.SILENT)
            .shouldFailOnError(true)
            .build();
    Map<String, Statistics> times = new TreeMap<>();
    for (RunResult result : new Runner(options).run()) {
      String name = result.getParams().getBenchmark();
      String unit = result.getPrimaryResult().getScoreUnit();
      if (!unit.equals("ms/op")) {
        throw new IllegalStateException(name + " is in " + unit);
      }
      times.put(
          name.substring(name.lastIndexOf('.') + 1), result.getPrimaryResult().getStatistics());
    }
    if (!times.keySet().containsAll(wanted)) {
      throw new IllegalStateException("only these were measured: " + times.keySet());
    }
    return times;
  }
}
