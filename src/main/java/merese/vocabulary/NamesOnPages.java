package merese.vocabulary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.vocabulary.PageReading.Run;

/**
 * Finds where labels and words of the register stand on a page, by R7: a facet's optional words may
 * be missing or in between, unless they are the label's only noun. A name within a longer one is
 * not another: a "double bladed ring" is no "bladed ring" as well. What is no more than a facet's
 * noun ("neck ring") is found in full only, since a page has rings of all sorts.
 *
 * <p>One word alone is found in its loose form only where it is long: see {@link MisreadWords}.
 */
public final class NamesOnPages {
  private static final int SHORTEST_LOOSE = 5;

  private final List<Lookup> lookups = new ArrayList<>();

  NamesOnPages(LabelIndex index) {
    Lookup whole = new Lookup(List.of());
    for (LabelEntry entry : index.entries) {
      whole.add(entry, entry.words);
    }
    lookups.add(whole);
    for (LabelIndex.OptionalWords optional : index.optionals) {
      Lookup without = new Lookup(optional.words);
      for (List<LabelEntry> same : optional.flexible.values()) {
        for (LabelEntry entry : same) {
          if (!entry.bareNoun) {
            without.add(entry, entry.essential);
          }
        }
      }
      lookups.add(without);
    }
  }

  /** Labels by their first words, as they are and loosely. */
  private static final class Lookup {
    private final List<String> optional;
    private final Map<String, List<Sought>> exact = new HashMap<>();
    private final Map<String, List<Sought>> loose = new HashMap<>();

    Lookup(List<String> optional) {
      this.optional = optional;
    }

    void add(LabelEntry entry, List<String> words) {
      put(exact, new Sought(entry, words));
      if (words.size() > 1 || words.get(0).length() >= SHORTEST_LOOSE) {
        List<String> misread = new ArrayList<>(words.size());
        words.forEach(w -> misread.add(MisreadWords.loose(w)));
        put(loose, new Sought(entry, misread));
      }
    }

    private static void put(Map<String, List<Sought>> map, Sought sought) {
      map.computeIfAbsent(sought.words().get(0), w -> new ArrayList<>(2)).add(sought);
    }
  }

  private record Sought(LabelEntry entry, List<String> words) {}

  /** A label at a place; {@code first} and {@code last} are words of the run. */
  private record Standing(
      LabelEntry entry, boolean loose, Run run, int first, int last, int start, int end) {
    static final Comparator<Standing> LONGEST_FIRST =
        Comparator.comparingInt(Standing::start)
            .thenComparing(Comparator.comparingInt(Standing::end).reversed())
            .thenComparing(Standing::loose);
  }

  /** All names on a page, in the order of the text. */
  public List<NameOnPage> of(PageReading page) {
    List<Standing> found = new ArrayList<>();
    for (List<Run> runs : List.of(page.runs(), page.overTheEnd())) {
      for (Run run : runs) {
        for (Lookup lookup : lookups) {
          find(lookup, run, found);
        }
      }
    }
    found.sort(Standing.LONGEST_FIRST);
    List<NameOnPage> names = new ArrayList<>();
    int reached = 0;
    for (int i = 0; i < found.size(); ) {
      Standing longest = found.get(i);
      int after = i;
      while (after < found.size() && isAtSamePlace(longest, found.get(after))) {
        after++;
      }
      if (longest.end() > reached) {
        reached = longest.end();
        names.add(name(page, found.subList(i, after)));
      }
      i = after;
    }
    return names;
  }

  /** The folded words of what only one of the two finds, or finds as something else. */
  public Set<List<String>> wordsOtherThan(NamesOnPages other) {
    Set<Finds> ours = finds();
    Set<Finds> theirs = other.finds();
    Set<List<String>> words = new LinkedHashSet<>();
    for (Finds each : ours) {
      if (!theirs.contains(each)) {
        words.add(each.words());
      }
    }
    for (Finds each : theirs) {
      if (!ours.contains(each)) {
        words.add(each.words());
      }
    }
    return words;
  }

  /** All that a label's words stand for on a page. */
  private record Finds(List<String> words, List<String> without, String concept, int kind) {}

  private Set<Finds> finds() {
    Set<Finds> finds = new HashSet<>();
    for (Lookup lookup : lookups) {
      for (List<Sought> same : lookup.exact.values()) {
        for (Sought sought : same) {
          LabelEntry entry = sought.entry();
          int kind = entry.isRegister() ? 2 : entry.label.elsewhere() ? 1 : 0;
          finds.add(new Finds(sought.words(), lookup.optional, entry.concept.id(), kind));
        }
      }
    }
    return finds;
  }

  private static boolean isAtSamePlace(Standing a, Standing b) {
    return a.start() == b.start() && a.end() == b.end();
  }

  private static void find(Lookup lookup, Run run, List<Standing> found) {
    int[] places = places(run, lookup.optional);
    for (int at = 0; at < places.length; at++) {
      PageWord word = run.words().get(places[at]);
      find(lookup.exact.get(word.exact()), false, run, places, at, found);
      find(lookup.loose.get(word.loose()), true, run, places, at, found);
    }
  }

  private static int[] places(Run run, List<String> without) {
    int[] places = new int[run.words().size()];
    int count = 0;
    for (int i = 0; i < places.length; i++) {
      if (without.isEmpty() || !without.contains(run.words().get(i).exact())) {
        places[count++] = i;
      }
    }
    return Arrays.copyOf(places, count);
  }

  private static void find(
      List<Sought> candidates, boolean loose, Run run, int[] places, int at, List<Standing> found) {
    if (candidates == null) {
      return;
    }
    for (Sought sought : candidates) {
      int last = at + sought.words().size() - 1;
      if (last < places.length
          && places[at] < run.to()
          && places[last] >= run.from()
          && standsAt(sought.words(), loose, run, places, at)) {
        found.add(
            new Standing(
                sought.entry(),
                loose,
                run,
                places[at],
                places[last],
                run.words().get(places[at]).start(),
                run.words().get(places[last]).end()));
      }
    }
  }

  private static boolean standsAt(
      List<String> words, boolean loose, Run run, int[] places, int at) {
    for (int i = 0; i < words.size(); i++) {
      PageWord word = run.words().get(places[at + i]);
      if (!words.get(i).equals(loose ? word.loose() : word.exact())) {
        return false;
      }
    }
    return true;
  }

  /** What stands at one place; where it stands exactly, what it is only like counts for nothing. */
  private static NameOnPage name(PageReading page, List<Standing> standing) {
    Standing best = standing.get(0);
    Set<String> concepts = new LinkedHashSet<>();
    boolean doubtful = false;
    for (boolean register : new boolean[] {false, true}) {
      for (Standing each : standing) {
        if (each.loose() == best.loose() && each.entry().isRegister() == register) {
          concepts.add(each.entry().concept.id());
          doubtful |= register || each.entry().label.elsewhere();
        }
      }
    }
    return new NameOnPage(
        page.printed(best.run(), best.first(), best.last()),
        List.copyOf(concepts),
        doubtful || concepts.size() > 1,
        best.loose(),
        best.start(),
        best.end());
  }
}
