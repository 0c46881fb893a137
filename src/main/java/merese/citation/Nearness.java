package merese.citation;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import merese.model.Slips;

/** Which names are near to one that does not exist. */
final class Nearness {
  private Nearness() {}

  /** Those that are a few letters off, then those that begin with or contain what was typed. */
  static List<String> best(String typed, List<String> names, int most) {
    String wanted = fold(typed);
    int allowed = Math.max(1, wanted.length() / 4);
    record Candidate(String name, int distance) {}
    return names.stream()
        .map(name -> new Candidate(name, distance(wanted, fold(name), allowed)))
        .filter(candidate -> candidate.distance <= allowed + 2)
        .sorted(
            Comparator.comparingInt(Candidate::distance)
                .thenComparingInt(candidate -> candidate.name.length())
                .thenComparing(Candidate::name))
        .limit(most)
        .map(Candidate::name)
        .toList();
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }

  private static int distance(String wanted, String name, int allowed) {
    int edits =
        Math.abs(wanted.length() - name.length()) > allowed
            ? allowed + 9
            : Slips.between(wanted, name);
    if (edits <= allowed) {
      return edits;
    }
    boolean long_ = wanted.length() >= 3;
    return long_ && name.startsWith(wanted)
        ? allowed + 1
        : long_ && name.contains(wanted) ? allowed + 2 : allowed + 9;
  }
}
