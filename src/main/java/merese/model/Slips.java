package merese.model;

/** How far a word is from another: for "did you mean". */
public final class Slips {
  private Slips() {}

  /**
   * The fewest letters to add, drop, change or swap with their neighbour; each pair is swapped at
   * most once (the optimal string alignment distance).
   */
  public static int between(String a, String b) {
    int[] older = new int[b.length() + 1];
    int[] above = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(above[j - 1] + wrong, 1 + Math.min(above[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], older[j - 2] + 1);
        }
      }
      int[] free = older;
      older = above;
      above = row;
      row = free;
    }
    return above[b.length()];
  }
}
