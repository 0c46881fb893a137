package merese.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * The names that were probably meant by one that does not exist: for "did you mean". Capitals do
 * not count, nor whether a space, a hyphen or a low line joins two words.
 */
public final class Nearest {
  /** Fewer letters say too little of what a name holds. */
  private static final int TELLING = 3;

  private Nearest() {}

  /**
   * Those that start with what was typed, the shortest first; else those by {@link #bySlips}; else
   * those that contain it.
   *
   * @param most how many at most
   */
  public static List<String> to(String typed, Collection<String> names, int most) {
    String wanted = folded(typed);
    List<String> near = new ArrayList<>();
    List<String> holding = new ArrayList<>();
    for (String name : names) {
      String folded = folded(name);
      if (!wanted.isEmpty() && folded.startsWith(wanted)) {
        near.add(name);
      } else if (wanted.length() >= TELLING && folded.contains(wanted)) {
        holding.add(name);
      }
    }
    if (near.isEmpty()) {
      near = bySlips(typed, names);
    } else {
      near.sort((a, b) -> a.length() - b.length());
    }
    List<String> best = near.isEmpty() ? holding : near;
    return List.copyOf(best.subList(0, Math.min(most, best.size())));
  }

  /**
   * Those with the fewest {@link Slips}, in their order: at most one slip in three letters, and no
   * more than three.
   */
  public static List<String> bySlips(String typed, Collection<String> names) {
    String wanted = folded(typed);
    int allowed = Math.min(3, Math.max(1, wanted.length() / 3));
    List<String> near = new ArrayList<>();
    for (String name : names) {
      if (Math.abs(name.length() - wanted.length()) <= allowed) {
        int slips = Slips.between(wanted, folded(name));
        if (slips < allowed) {
          near.clear();
        }
        if (slips <= allowed) {
          near.add(name);
          allowed = slips;
        }
      }
    }
    return near;
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }
}
