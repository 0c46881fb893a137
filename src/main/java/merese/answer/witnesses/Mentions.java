package merese.answer.witnesses;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.SourceLines;
import merese.answer.witnesses.Witnesses.Mention;
import merese.model.WorkLink;
import merese.shelf.Source;

/** Links among the works of some sources that leave their words their own. */
final class Mentions {
  private final List<Mention> borrowings = new ArrayList<>();
  private final List<Mention> citations = new ArrayList<>();

  /**
   * @param sources by year
   * @param pictures the ids of the pictures that are in question
   */
  Mentions(SourceLines lines, Collection<Source> sources, Set<String> pictures) {
    Map<String, Source> firstOf = new LinkedHashMap<>();
    sources.forEach(s -> firstOf.putIfAbsent(s.workId(), s));
    for (Source source : firstOf.values()) {
      for (WorkLink link : source.work().links()) {
        Source other = firstOf.get(link.to());
        List<Mention> to = listFor(link.kind());
        boolean inQuestion = link.picture().isEmpty() || pictures.contains(link.picture().get());
        if (other != null && to != null && inQuestion) {
          to.add(new Mention(lines.of(source), lines.of(other), link.picture(), link.evidence()));
        }
      }
    }
  }

  private List<Mention> listFor(WorkLink.Kind kind) {
    return switch (kind) {
      case CITES -> citations;
      case REUSES_PICTURE -> borrowings;
      case REPEATS, TRANSLATES, SAME_WORK_ABROAD -> null;
    };
  }

  List<Mention> borrowings() {
    return borrowings;
  }

  List<Mention> citations() {
    return citations;
  }
}
