package merese.store;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import merese.model.Slips;

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
      int slips = Slips.between(folded, candidate.toLowerCase(Locale.ROOT));
      if (slips < allowed || (slips == allowed && best == null)) {
        best = candidate;
        allowed = slips;
      }
    }
    return Optional.ofNullable(best);
  }
}
