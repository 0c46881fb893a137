package merese.benchmark;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.Locale;

/** Prints what was measured, as ratios: seconds differ from machine to machine, ratios less. */
final class Report {
  private final PrintStream out;

  Report(PrintStream out) {
    this.out = out;
  }

  /**
   * One line: a ratio beside its goal.
   *
   * @param measured ours, a median
   * @param yardstick what it is compared with, measured in the same run
   * @param goal the ratio that is not to be exceeded
   */
  void ratio(String what, double measured, double yardstick, String unit, double goal) {
    double ratio = measured / yardstick;
    out.printf(
        Locale.ROOT,
        "%s: %.0f %s / %.0f %s = %.1f (goal: at most %.1f; %s)%n",
        what,
        measured,
        unit,
        yardstick,
        unit,
        ratio,
        goal,
        ratio <= goal ? "met" : "missed");
  }

  /**
   * One line: our rate as a share of another.
   *
   * @param ours so many a second, a median
   * @param yardstick so many a second, measured in the same run
   * @param goal the share that is not to be fallen short of
   */
  void share(String what, double ours, double yardstick, double goal) {
    double share = ours / yardstick;
    out.printf(
        Locale.ROOT,
        "%s: %.0f / %.0f = %.0f %% (goal: at least %.0f %%; %s)%n",
        what,
        ours,
        yardstick,
        share * 100,
        goal * 100,
        share >= goal ? "met" : "missed");
  }

  /**
   * One line: our rate beside another's that does less, without a goal.
   *
   * @param ours so many a second, the best of several runs
   * @param theirs so many a second, the best of as many runs in turn with ours
   */
  void beside(String what, double ours, double theirs) {
    out.printf(Locale.ROOT, "%s: %.0f / %.0f = %.0f %%%n", what, ours, theirs, ours / theirs * 100);
  }

  /** One line without a judgement. */
  void say(String line) {
    out.println(line);
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
