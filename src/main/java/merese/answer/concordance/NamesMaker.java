package merese.answer.concordance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.SourceLines;
import merese.answer.concordance.Concordance.Name;
import merese.answer.concordance.Concordance.Names;
import merese.answer.witnesses.Independence;
import merese.shelf.Source;

/** Counts what each concept is called. */
final class NamesMaker {
  private final SourceLines lines;
  private final WordKeys keys;
  private final Independence independence;

  NamesMaker(SourceLines lines, WordKeys keys, Independence independence) {
    this.lines = lines;
    this.keys = keys;
    this.independence = independence;
  }

  /**
   * @param uses those of the concept, in order
   */
  Names of(Heading concept, List<Use> uses) {
    Map<String, Map<Source, Set<String>>> byWord = new TreeMap<>();
    Set<Source> having = new LinkedHashSet<>();
    Set<Source> naming = new HashSet<>();
    for (Use use : uses) {
      if (use.isExact()) {
        having.add(use.source());
      }
      if (use.counts()) {
        naming.add(use.source());
        byWord
            .computeIfAbsent(keys.of(use.naming().printed()), k -> new TreeMap<>(Source.BY_YEAR))
            .computeIfAbsent(use.source(), s -> new LinkedHashSet<>())
            .add(use.naming().printed());
      }
    }
    Map<String, String> also = new TreeMap<>();
    for (Use use : uses) {
      String printed = use.naming().printed();
      if (use.isExact() && !printed.isBlank() && !byWord.containsKey(keys.of(printed))) {
        also.putIfAbsent(keys.of(printed), printed);
      }
    }
    List<Name> names = new ArrayList<>();
    byWord.values().forEach(sources -> names.add(name(sources)));
    names.sort(
        (a, b) -> {
          int sources = Integer.compare(b.sources().size(), a.sources().size());
          return sources != 0 ? sources : Integer.compare(b.independent(), a.independent());
        }); // stable: then by word
    having.removeAll(naming);
    return new Names(concept, names, lines(having), List.copyOf(also.values()));
  }

  private Name name(Map<Source, Set<String>> sources) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Set<Independence.Witness> witnesses = new HashSet<>();
    for (Map.Entry<Source, Set<String>> each : sources.entrySet()) {
      each.getValue().forEach(s -> counts.merge(s, 1, Integer::sum));
      witnesses.add(independence.of(each.getKey()));
    }
    return new Name(
        commonest(counts),
        List.copyOf(new TreeSet<>(counts.keySet())),
        lines(sources.keySet()),
        witnesses.size());
  }

  /** The spelling of most sources; of several, the one of the earliest. */
  static String commonest(Map<String, Integer> counts) {
    String best = null;
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      if (best == null || each.getValue() > counts.get(best)) {
        best = each.getKey();
      }
    }
    return best;
  }

  private List<SourceLine> lines(Collection<Source> sources) {
    List<SourceLine> made = new ArrayList<>();
    lines.sorted(sources).forEach(s -> made.add(lines.of(s)));
    return made;
  }
}
