package merese.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Gathers what was measured into one table of ratios, since seconds differ from machine to machine
 * and ratios less. What a comparison was made on is printed as it starts; the table comes last.
 */
final class Report {
  private static final String NOTHING = "–";

  private final PrintStream out;
  private final List<List<String>> rows = new ArrayList<>();
  private final Map<String, Map<Integer, String>> curves = new LinkedHashMap<>();

  Report(PrintStream out) {
    this.out = out;
    rows.add(List.of("what", "ours", "reference", "ratio", "target", ""));
  }

  /** Says what is about to be measured, and on what. */
  void input(String line) {
    out.println(line);
  }

  /**
   * A ratio beside its target.
   *
   * @param measured ours, in the unit
   * @param yardstick what it is compared with, measured in the same run
   * @param goal the ratio that is not to be exceeded
   */
  void ratio(String what, double measured, double yardstick, String unit, double goal) {
    double ratio = measured / yardstick;
    row(
        what,
        words(measured, unit),
        words(yardstick, unit),
        number(ratio),
        "at most " + number(goal),
        met(ratio <= goal));
  }

  /**
   * Our rate as a share of another.
   *
   * @param ours so many a second
   * @param yardstick so many a second, measured in the same run
   * @param goal the share that is not to be fallen short of
   */
  void share(String what, double ours, double yardstick, double goal) {
    double share = ours / yardstick;
    row(
        what,
        words(ours, "/s"),
        words(yardstick, "/s"),
        number(share * 100) + " %",
        "at least " + number(goal * 100) + " %",
        met(share >= goal));
  }

  /** Ours beside another's that does less or something else, without a target. */
  void beside(String what, double ours, double theirs, String unit) {
    row(what, words(ours, unit), words(theirs, unit), number(ours / theirs), NOTHING, "");
  }

  /** A number that has a target of its own, such as a limit in milliseconds. */
  void bound(String what, double measured, String unit, double goal) {
    row(
        what,
        words(measured, unit),
        NOTHING,
        NOTHING,
        "at most " + words(goal, unit),
        met(measured <= goal));
  }

  /** That something had to work at all, such as in a small heap, and did. */
  void fits(String what, String ours, String goal) {
    row(what, ours, NOTHING, NOTHING, goal, met(true));
  }

  /** What is worth knowing, without a judgement. */
  void say(String what, String ours) {
    row(what, ours, NOTHING, NOTHING, NOTHING, "");
  }

  private void row(String... cells) {
    rows.add(List.of(cells));
    out.println("  " + String.join(" | ", cells));
  }

  /** What an operation cost in a library of so many works, for the table of costs by size. */
  void cost(String operation, int works, double measured, String unit) {
    curves.computeIfAbsent(operation, o -> new TreeMap<>()).put(works, words(measured, unit));
  }

  /** Prints the tables, and writes them into a file too. */
  void finish(Path file) throws IOException {
    String tables = text(rows) + (curves.isEmpty() ? "" : "\n" + text(costs()));
    out.println();
    out.print(tables);
    Files.writeString(file, tables);
  }

  private List<List<String>> costs() {
    TreeMap<Integer, String> sizes = new TreeMap<>();
    curves.values().forEach(sizes::putAll);
    List<List<String>> costs = new ArrayList<>();
    costs.add(new ArrayList<>(List.of("operation")));
    sizes.keySet().forEach(works -> costs.get(0).add(whole(works) + " works"));
    curves.forEach(
        (operation, bySize) -> {
          List<String> row = new ArrayList<>(List.of(operation));
          sizes.keySet().forEach(works -> row.add(bySize.getOrDefault(works, NOTHING)));
          costs.add(row);
        });
    return costs;
  }

  /** As Markdown, with columns that line up. */
  private static String text(List<List<String>> table) {
    StringBuilder text = new StringBuilder();
    int columns = table.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : table) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(Math.max(3, widths[i]), row.get(i).length());
      }
    }
    for (int line = 0; line < table.size(); line++) {
      text.append('|');
      for (int i = 0; i < columns; i++) {
        String cell = table.get(line).get(i);
        text.append(' ').append(cell).append(" ".repeat(widths[i] - cell.length())).append(" |");
      }
      text.append('\n');
      if (line == 0) {
        text.append('|');
        for (int width : widths) {
          text.append(' ').append("-".repeat(width)).append(" |");
        }
        text.append('\n');
      }
    }
    return text.toString();
  }

  private static String met(boolean met) {
    return met ? "met" : "missed";
  }

  /** A measure with three digits that count. */
  static String words(double value, String unit) {
    if (unit.equals("ms") && value >= 10_000) {
      return number(value / 1_000) + " s";
    }
    return number(value) + (unit.isEmpty() ? "" : " " + unit);
  }

  static String number(double value) {
    if (value >= 100 || value == Math.rint(value)) {
      return whole(Math.round(value));
    }
    int decimals = value >= 10 ? 1 : value >= 0.1 ? 2 : 4;
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  static String whole(long value) {
    return String.format(Locale.ROOT, "%,d", value);
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** The value that so many of a hundred do not exceed. */
  static double percentile(double[] values, int percent) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[Math.max(0, (sorted.length * percent + 99) / 100 - 1)];
  }
}
