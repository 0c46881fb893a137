package merese.search;

import java.util.Collection;
import java.util.Locale;

/** Which of a few names a mistyped one may have meant. */
final class NearNames {
  private NearNames() {}

  /** What to do about a name that is none of these: the nearest one, or all of them. */
  static String remedy(String typed, Collection<String> names) {
    String lower = typed.toLowerCase(Locale.ROOT);
    String nearest = null;
    int least = Math.max(1, lower.length() / 2) + 1;
    for (String name : names) {
      int slips = name.startsWith(lower) ? 0 : slips(lower, name);
      if (slips < least) {
        least = slips;
        nearest = name;
      }
    }
    return nearest != null && lower.length() < 60
        ? "did you mean " + nearest + "?"
        : "write one of " + String.join(", ", names);
  }

  /**
   * The fewest letters to add, drop, change or swap with their neighbour (the optimal string
   * alignment distance); more than 60 letters are not compared.
   */
  static int slips(String a, String b) {
    if (a.length() > 60 || b.length() > 60) {
      return a.equals(b) ? 0 : 60;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
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
