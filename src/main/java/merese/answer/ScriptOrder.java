package merese.answer;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Section;
import merese.answer.Script.Mark;
import merese.model.Locator;
import merese.shelf.Source;

/**
 * The order in which a script first needs its sources: where it names one, or where it comes to a
 * feature that the source covers. Sources that it does not need follow in the order of R4.
 */
final class ScriptOrder implements Comparator<Source> {
  private final Map<Source, Integer> first = new HashMap<>();
  private final Map<Source, NavigableSet<Locator>> named = new LinkedHashMap<>();

  private ScriptOrder() {}

  static ScriptOrder of(
      List<Mark> marks, Map<CoverageQuestion, Coverage> answers, Map<String, Source> sources) {
    ScriptOrder order = new ScriptOrder();
    for (Mark mark : marks) {
      if (mark instanceof Mark.OfSource place) {
        order.first.putIfAbsent(place.source(), order.first.size());
        NavigableSet<Locator> where =
            order.named.computeIfAbsent(place.source(), source -> new TreeSet<>());
        place.locator().ifPresent(where::add);
      } else if (mark instanceof Mark.OfTerm term) {
        for (Section section : answers.get(term.question()).sections()) {
          for (Group group : List.of(Group.COUNTED, Group.SAME_FEATURE)) {
            for (Entry entry : section.group(group)) {
              order.first.putIfAbsent(sources.get(entry.source().key()), order.first.size());
            }
          }
        }
      }
    }
    return order;
  }

  /** The sources that the script names itself, with the places that it shows: just those. */
  Map<Source, NavigableSet<Locator>> named() {
    return named;
  }

  /** Where the script first needs a source; past the end where it does not. */
  int position(Source source) {
    return first.getOrDefault(source, Integer.MAX_VALUE);
  }

  @Override
  public int compare(Source a, Source b) {
    int positions = Integer.compare(position(a), position(b));
    return positions != 0 ? positions : Source.BY_YEAR.compare(a, b);
  }
}
