package merese.vocabulary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the labels that occur in a printed term, by their first words. */
final class PrintedTerms {
  private final Map<String, List<LabelEntry>> whole = new HashMap<>();
  private final List<LabelIndex.OptionalWords> optionals;
  private final List<Map<String, List<LabelEntry>>> flexible = new ArrayList<>();

  PrintedTerms(LabelIndex index) {
    optionals = index.optionals;
    for (LabelEntry entry : index.entries) {
      if (!entry.bareNoun) {
        put(whole, entry.words.get(0), entry);
      }
    }
    for (LabelIndex.OptionalWords optional : optionals) {
      Map<String, List<LabelEntry>> byFirst = new HashMap<>();
      for (List<LabelEntry> same : optional.flexible.values()) {
        for (LabelEntry entry : same) {
          put(byFirst, entry.essential.get(0), entry);
        }
      }
      flexible.add(byFirst);
    }
  }

  List<PossibleMeaning> possible(List<String> printed) {
    List<Occurrence> found = new ArrayList<>();
    int[] places = new int[printed.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = i;
    }
    find(whole, printed, places, false, found);
    for (int i = 0; i < flexible.size(); i++) {
      List<String> optional = optionals.get(i).words;
      List<String> rest = FacetWords.without(printed, optional);
      find(flexible.get(i), rest, placesOfRest(printed, optional, rest.size()), true, found);
    }
    dropBareNouns(found);
    found.sort(new LongestFirst());
    List<PossibleMeaning> meanings = new ArrayList<>();
    for (Occurrence occurrence : found) {
      if (!isListed(meanings, occurrence)) {
        meanings.add(
            new PossibleMeaning(
                occurrence.entry.concept,
                Optional.ofNullable(occurrence.entry.label),
                occurrence.start,
                occurrence.end - occurrence.start));
      }
    }
    return meanings;
  }

  private static void find(
      Map<String, List<LabelEntry>> byFirst,
      List<String> printed,
      int[] places,
      boolean essential,
      List<Occurrence> found) {
    for (int at = 0; at < printed.size(); at++) {
      for (LabelEntry entry : byFirst.getOrDefault(printed.get(at), List.of())) {
        List<String> words = essential ? entry.essential : entry.words;
        if (Thesaurus.standsAt(words, printed, at)) {
          int last = places[at + words.size() - 1];
          found.add(new Occurrence(entry, places[at], last + 1, words.size()));
        }
      }
    }
  }

  /**
   * "Neck ring" with its "neck" folded away is in every "bladed ring": it gives way to a longer
   * label around it, and stands where there is none.
   */
  private static void dropBareNouns(List<Occurrence> found) {
    List<Occurrence> dropped = new ArrayList<>();
    for (Occurrence bare : found) {
      if (bare.entry.bareNoun) {
        for (Occurrence other : found) {
          if (other.size > 1 && other.start <= bare.start && other.end >= bare.end) {
            dropped.add(bare);
            break;
          }
        }
      }
    }
    found.removeAll(dropped);
  }

  private static int[] placesOfRest(List<String> printed, List<String> optional, int size) {
    int[] places = new int[size];
    int next = 0;
    for (int i = 0; i < printed.size(); i++) {
      if (!optional.contains(printed.get(i))) {
        places[next++] = i;
      }
    }
    return places;
  }

  private static boolean isListed(List<PossibleMeaning> meanings, Occurrence occurrence) {
    for (PossibleMeaning meaning : meanings) {
      if (meaning.concept().id().equals(occurrence.entry.concept.id())) {
        return true;
      }
    }
    return false;
  }

  private static void put(Map<String, List<LabelEntry>> map, String key, LabelEntry entry) {
    List<LabelEntry> list = map.get(key);
    if (list == null) {
      list = new ArrayList<>();
      map.put(key, list);
    }
    list.add(entry);
  }

  private static final class Occurrence {
    private final LabelEntry entry;
    private final int start;
    private final int end;
    private final int size;

    private Occurrence(LabelEntry entry, int start, int end, int size) {
      this.entry = entry;
      this.start = start;
      this.end = end;
      this.size = size;
    }
  }

  private static final class LongestFirst implements Comparator<Occurrence> {
    private final Comparator<LabelEntry> labels = new PhraseMatcher.BestLabelFirst();

    @Override
    public int compare(Occurrence a, Occurrence b) {
      if (a.size != b.size) {
        return Integer.compare(b.size, a.size);
      }
      return a.start != b.start
          ? Integer.compare(a.start, b.start)
          : labels.compare(a.entry, b.entry);
    }
  }
}
