package merese.store;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The word that was probably meant: for "did you mean". */
final class Nearest {
  private Nearest() {}

  /**
   * The nearest of {@code known} where one is near: at most one slip in three letters and no more
   * than three, a slip being a letter too many, too few, wrong, or two swapped. Case does not
   * count.
   */
  static Optional<String> to(String word, Collection<String> known) {
    String folded = word.toLowerCase(Locale.ROOT);
    String best = null;
    int allowed = Math.min(3, Math.max(1, word.length() / 3));
    for (String candidate : known) {
      if (Math.abs(candidate.length() - word.length()) > allowed) {
        continue;
      }
      int slips = slips(folded, candidate.toLowerCase(Locale.ROOT));
      if (slips < allowed || (slips == allowed && best == null)) {
        best = candidate;
        allowed = slips;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The optimal string alignment distance: each pair of letters is swapped at most once. */
  static int slips(String a, String b) {
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
