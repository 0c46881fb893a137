package merese.answer.concordance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.CheckLog;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.Checked;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.NotChecked;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Entries;
import merese.answer.SourceLines;
import merese.answer.concordance.Concordance.Cell;
import merese.answer.concordance.Concordance.Row;
import merese.answer.concordance.Standings.Line;
import merese.answer.concordance.Standings.Stand;
import merese.answer.concordance.Standings.Standing;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.Thesaurus;

/** Puts a concordance and the check logs together. */
final class StandingsMaker {
  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final List<Heading> concepts = new ArrayList<>();
  private final Map<String, Row> rows = new HashMap<>();
  private final Map<String, Map<String, List<Passage>>> denied = new HashMap<>();
  private final Map<String, Map<String, List<Passage>>> apart = new HashMap<>();

  StandingsMaker(Shelf shelf, Concordance answer) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = new SourceLines();
    concepts.addAll(answer.concepts());
    concepts.addAll(answer.without());
    answer.rows().forEach(row -> rows.put(row.source().key(), row));
    List<String> ids = new ArrayList<>();
    concepts.forEach(heading -> ids.add(heading.id()));
    Uses uses = new Uses(shelf, ids);
    add(denied, uses.absent, PlaceTest.ABSENCE);
    add(apart, uses.made, PlaceTest.PROCESS);
    add(apart, uses.notStated, PlaceTest.PRESENT);
  }

  /** Each under the concept asked about that it concerns. */
  private void add(Map<String, Map<String, List<Passage>>> to, List<Use> uses, PlaceTest places) {
    Map<String, Set<Classified>> byConcept = new LinkedHashMap<>();
    for (Use use : uses) {
      byConcept.computeIfAbsent(use.concept(), c -> new LinkedHashSet<>()).add(use.classified());
    }
    Entries entries = new Entries(lines, thesaurus, Optional.empty());
    byConcept.forEach(
        (concept, namings) -> {
          for (Entry entry : entries.of(namings, places)) {
            to.computeIfAbsent(entry.source().key(), k -> new LinkedHashMap<>())
                .computeIfAbsent(concept, c -> new ArrayList<>())
                .addAll(entry.passages());
          }
        });
  }

  Standings make() {
    List<Source> sources = new ArrayList<>();
    for (Source source : lines.sorted(shelf.sources())) {
      if (!source.mine()) {
        sources.add(source);
      }
    }
    Map<String, Map<String, List<CheckLine>>> checks = new HashMap<>();
    Map<String, Map<String, String>> remarks = new HashMap<>();
    for (Heading heading : concepts) {
      CheckLog log = CheckLog.of(shelf, lines, List.of(heading.id()), Narrowing.NONE);
      for (Checked checked : log.checked(sources)) {
        checks
            .computeIfAbsent(checked.source().key(), k -> new HashMap<>())
            .put(heading.id(), checked.checks());
      }
      for (NotChecked not : log.notChecked(sources)) {
        not.remark()
            .ifPresent(
                words ->
                    remarks
                        .computeIfAbsent(not.source().key(), k -> new HashMap<>())
                        .put(heading.id(), words));
      }
    }
    List<Line> made = new ArrayList<>();
    List<SourceLine> none = new ArrayList<>();
    for (Source source : sources) {
      String key = source.key();
      if (rows.containsKey(key)
          || denied.containsKey(key)
          || apart.containsKey(key)
          || checks.containsKey(key)) {
        made.add(
            line(source, checks.getOrDefault(key, Map.of()), remarks.getOrDefault(key, Map.of())));
      } else {
        none.add(lines.of(source));
      }
    }
    return new Standings(concepts, made, none);
  }

  private Line line(
      Source source, Map<String, List<CheckLine>> checks, Map<String, String> remarks) {
    Row row = rows.get(source.key());
    List<Standing> standings = new ArrayList<>();
    for (Heading heading : concepts) {
      standings.add(
          standing(
              source.key(),
              heading.id(),
              checks.getOrDefault(heading.id(), List.of()),
              Optional.ofNullable(remarks.get(heading.id()))));
    }
    return new Line(lines.of(source), row == null || row.independent(), standings);
  }

  private Standing standing(
      String key, String concept, List<CheckLine> checks, Optional<String> remark) {
    Row row = rows.get(key);
    List<Passage> terms = row == null ? List.of() : row.terms(concept);
    List<Passage> no = denied.getOrDefault(key, Map.of()).getOrDefault(concept, List.of());
    List<Passage> other = apart.getOrDefault(key, Map.of()).getOrDefault(concept, List.of());
    if (!terms.isEmpty()) {
      return new Standing(concept, stand(terms), terms, checks, Optional.empty());
    } else if (row != null && hasNarrower(row, concept)) {
      return new Standing(concept, Stand.NARROWER, List.of(), checks, Optional.empty());
    } else if (!no.isEmpty()) {
      return new Standing(concept, Stand.SAYS_NOT_SHOWN, no, checks, Optional.empty());
    } else if (!other.isEmpty()) {
      return new Standing(concept, Stand.APART, other, checks, Optional.empty());
    } else if (!checks.isEmpty()) {
      return new Standing(concept, Stand.CHECKED, List.of(), checks, Optional.empty());
    }
    return new Standing(concept, Stand.NOT_CHECKED, List.of(), List.of(), remark);
  }

  private boolean hasNarrower(Row row, String concept) {
    for (Cell cell : row.cells()) {
      if (thesaurus.isBroader(concept, cell.concept())) {
        return true;
      }
    }
    return false;
  }

  private static Stand stand(List<Passage> terms) {
    boolean named = false;
    for (Passage term : terms) {
      if (!term.pictured().isEmpty()) {
        return Stand.PICTURED;
      }
      named |= !term.printed().isEmpty();
    }
    return named ? Stand.NAMED : Stand.DESCRIBED;
  }
}
