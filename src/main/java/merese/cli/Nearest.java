package merese.cli;

import java.util.ArrayList;
import java.util.List;

/** Which commands a mistyped word may have meant. */
final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /** The names that start with the word, else those at most two slips away, nearest first. */
  static List<String> to(String typed, List<Commands.Entry> commands) {
    List<String> near = new ArrayList<>();
    for (Commands.Entry entry : commands) {
      if (entry.name().startsWith(typed) && near.size() < MOST) {
        near.add(entry.name());
      }
    }
    for (int slips = 0; near.isEmpty() && slips <= Math.min(2, typed.length() / 2); slips++) {
      for (Commands.Entry entry : commands) {
        if (slips(typed, entry.name()) == slips && near.size() < MOST) {
          near.add(entry.name());
        }
      }
    }
    return near;
  }

  /**
   * The fewest letters to add, drop, change or swap with their neighbour (the optimal string
   * alignment distance).
   */
  static int slips(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
