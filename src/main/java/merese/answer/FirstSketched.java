package merese.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.ConceptCoverage.Sketched;
import merese.answer.CoverageQuestion.Showing;
import merese.model.PlaceTest;
import merese.shelf.NoteSketch.Name;
import merese.vocabulary.Thesaurus;

/**
 * Of unread notes those of the sources that come first by R4: exact and pictured, exact in words,
 * narrower and pictured, narrower in words; then by year and author.
 *
 * @param shown their namings
 * @param sources the keys of all sources that have one
 */
record FirstSketched(List<Sketched> shown, Set<String> sources) {
  /** Where a source stands, by the best of its namings. */
  private static final class Ranked {
    private final String key;
    private final byte[] standing;
    private int rank;

    private Ranked(String key, byte[] standing, int rank) {
      this.key = key;
      this.standing = standing;
      this.rank = rank;
    }
  }

  /**
   * @param asked the concept asked for
   * @param test which places count
   * @param showing how many sources
   */
  static FirstSketched of(
      List<Sketched> all, String asked, Thesaurus thesaurus, PlaceTest test, Showing showing) {
    Map<String, Ranked> bySource = new HashMap<>();
    Map<String, Boolean> narrower = new HashMap<>();
    for (Sketched each : all) {
      Name name = each.naming().name();
      if (name.passes(test)) {
        String concept = name.concept().get();
        Boolean isNarrower = narrower.get(concept);
        if (isNarrower == null) {
          isNarrower = thesaurus.isBroader(asked, concept);
          narrower.put(concept, isNarrower);
        }
        int rank = (isNarrower ? 2 : 0) + (name.isPictured(test) ? 0 : 1);
        String key = each.note().source();
        Ranked known = bySource.get(key);
        if (known == null) {
          bySource.put(key, new Ranked(key, each.note().hit().owner().standing(), rank));
        } else {
          known.rank = Math.min(known.rank, rank);
        }
      }
    }
    int most = showing.of(bySource.size());
    if (most >= bySource.size()) {
      return new FirstSketched(all, bySource.keySet());
    }
    List<Ranked> ranked = new ArrayList<>(bySource.values());
    ranked.sort(new ByRank());
    Set<String> first = new HashSet<>();
    for (Ranked source : ranked.subList(0, most)) {
      first.add(source.key);
    }
    List<Sketched> shown = new ArrayList<>();
    for (Sketched each : all) {
      if (first.contains(each.note().source())) {
        shown.add(each);
      }
    }
    return new FirstSketched(shown, bySource.keySet());
  }

  private static final class ByRank implements Comparator<Ranked> {
    @Override
    public int compare(Ranked a, Ranked b) {
      return a.rank != b.rank
          ? Integer.compare(a.rank, b.rank)
          : Arrays.compareUnsigned(a.standing, b.standing);
    }
  }
}
