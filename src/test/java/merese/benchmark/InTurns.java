package merese.benchmark;

import java.util.ArrayList;
import java.util.List;

/**
 * Runs things in turn, so that all of them meet the same machine: each once to warm the disk, then
 * as often as time allows.
 */
final class InTurns {
  private static final int LEAST = 3;
  private static final int MOST = 21;
  private static final double SECONDS = 15;

  private InTurns() {}

  /** Does something and says how long it took, in milliseconds. */
  interface Run {
    double once() throws Exception;
  }

  /** The median of each, in milliseconds. */
  static double[] medians(Run... runs) throws Exception {
    List<List<Double>> times = new ArrayList<>();
    for (Run run : runs) {
      run.once();
      times.add(new ArrayList<>());
    }
    long before = System.nanoTime();
    for (int turn = 0; turn < MOST; turn++) {
      if (turn >= LEAST && System.nanoTime() - before > SECONDS * 1e9) {
        break;
      }
      for (int i = 0; i < runs.length; i++) {
        times.get(i).add(runs[i].once());
      }
    }
    return times.stream()
        .mapToDouble(t -> Report.median(t.stream().mapToDouble(Double::doubleValue).toArray()))
        .toArray();
  }

  /** Milliseconds since a moment of {@link System#nanoTime}. */
  static double since(long before) {
    return (System.nanoTime() - before) / 1e6;
  }
}
