package merese.search;

import java.util.Collection;
import java.util.Locale;
import merese.model.Slips;

/** Which of a few names a mistyped one may have meant. */
final class NearNames {
  private static final int LONGEST = 60;

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
    return nearest != null && lower.length() < LONGEST
        ? "did you mean " + nearest + "?"
        : "write one of " + String.join(", ", names);
  }

  /** As {@link Slips}; names of more than {@value #LONGEST} letters are not compared. */
  static int slips(String a, String b) {
    return a.length() > LONGEST || b.length() > LONGEST ? LONGEST : Slips.between(a, b);
  }
}
