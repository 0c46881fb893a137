package merese.desk.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.desk.shelf.LineDifference.Row.Of;

/** In which lines two texts differ, with some of what stands around them. */
public final class LineDifference {
  private static final int AROUND = 3;

  /** Where comparing each line with each would take long, all between is taken for different. */
  private static final long MOST_COMPARED = 9_000_000;

  private LineDifference() {}

  /**
   * A line.
   *
   * @param number on the disk, or of what was typed where it is only there; 0 for lines left out
   */
  public record Row(Of of, int number, String text) {
    /** Where a line stands. */
    public enum Of {
      BOTH,
      DISK,
      TYPED,
      LEFT_OUT
    }

    /** For a reader who sees no colour. */
    public String sign() {
      return switch (of) {
        case BOTH, LEFT_OUT -> "";
        case DISK -> "on the disk";
        case TYPED -> "in your text";
      };
    }
  }

  static List<Row> between(String disk, String typed) {
    return shortened(all(List.of(disk.split("\n", -1)), List.of(typed.split("\n", -1))));
  }

  private static List<Row> all(List<String> disk, List<String> typed) {
    int start = 0;
    while (start < Math.min(disk.size(), typed.size())
        && disk.get(start).equals(typed.get(start))) {
      start++;
    }
    int end = 0;
    while (end < Math.min(disk.size(), typed.size()) - start
        && disk.get(disk.size() - 1 - end).equals(typed.get(typed.size() - 1 - end))) {
      end++;
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < start; i++) {
      rows.add(new Row(Of.BOTH, i + 1, disk.get(i)));
    }
    between(disk, typed, start, end, rows);
    for (int i = disk.size() - end; i < disk.size(); i++) {
      rows.add(new Row(Of.BOTH, i + 1, disk.get(i)));
    }
    return rows;
  }

  /** By the longest common run of lines of what neither begins nor ends both. */
  private static void between(
      List<String> disk, List<String> typed, int start, int end, List<Row> rows) {
    int n = disk.size() - end - start;
    int m = typed.size() - end - start;
    boolean compared = (long) n * m <= MOST_COMPARED;
    int[][] common = new int[compared ? n + 1 : 1][compared ? m + 1 : 1];
    for (int i = n - 1; compared && i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        common[i][j] =
            disk.get(start + i).equals(typed.get(start + j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    int i = 0;
    int j = 0;
    while (i < n || j < m) {
      if (compared && i < n && j < m && disk.get(start + i).equals(typed.get(start + j))) {
        rows.add(new Row(Of.BOTH, start + i + 1, disk.get(start + i)));
        i++;
        j++;
      } else if (i < n && (!compared || j >= m || common[i + 1][j] >= common[i][j + 1])) {
        rows.add(new Row(Of.DISK, start + i + 1, disk.get(start + i)));
        i++;
      } else {
        rows.add(new Row(Of.TYPED, start + j + 1, typed.get(start + j)));
        j++;
      }
    }
  }

  private static List<Row> shortened(List<Row> all) {
    boolean[] shown = new boolean[all.size()];
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).of() != Of.BOTH) {
        for (int k = Math.max(0, i - AROUND); k <= Math.min(all.size() - 1, i + AROUND); k++) {
          shown[k] = true;
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (shown[i]) {
        rows.add(all.get(i));
      } else if (rows.isEmpty() || rows.get(rows.size() - 1).of() != Of.LEFT_OUT) {
        rows.add(new Row(Of.LEFT_OUT, 0, "…"));
      }
    }
    return rows;
  }
}
