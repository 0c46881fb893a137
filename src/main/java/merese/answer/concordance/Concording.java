package merese.answer.concordance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Entries;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.concordance.Concordance.Agreement;
import merese.answer.concordance.Concordance.Apart;
import merese.answer.concordance.Concordance.Cell;
import merese.answer.concordance.Concordance.Folded;
import merese.answer.concordance.Concordance.Names;
import merese.answer.concordance.Concordance.Row;
import merese.answer.concordance.Concordance.Why;
import merese.answer.witnesses.Independence;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.Thesaurus;

/**
 * Answers what each source calls each of some concepts.
 *
 * <p>A cell holds what the source says of just that concept and, marked as narrower, of what is
 * narrower and has no column of its own (R1). Statistics take only what is exact, and of each note
 * the first naming.
 */
public final class Concording {
  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final WordKeys keys;

  private Concording(Shelf shelf) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = new SourceLines();
    this.keys = new WordKeys(thesaurus);
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static Concordance answer(Shelf shelf, ConcordanceQuestion question) {
    return shelf.ask(asked -> new Concording(asked).answer(question));
  }

  private Concordance answer(ConcordanceQuestion question) {
    Map<String, Heading> asked = new LinkedHashMap<>();
    for (Topic topic : Topic.withFacets(shelf, question.terms(), question.facet())) {
      asked.put(topic.concept(), topic.heading());
    }
    Uses uses = new Uses(shelf, asked.keySet());
    Map<String, List<Use>> byConcept = new LinkedHashMap<>();
    asked.keySet().forEach(c -> byConcept.put(c, new ArrayList<>()));
    Map<Source, List<Use>> bySource = new TreeMap<>(Source.BY_YEAR);
    for (Use use : uses.covering) {
      byConcept.get(use.concept()).add(use);
      bySource.computeIfAbsent(use.source(), s -> new ArrayList<>()).add(use);
    }
    Independence independence = Independence.of(shelf, bySource.keySet());
    List<Heading> concepts = new ArrayList<>();
    List<Heading> without = new ArrayList<>();
    List<Names> names = new ArrayList<>();
    NamesMaker namesMaker = new NamesMaker(lines, keys, independence);
    byConcept.forEach(
        (concept, its) -> {
          (its.isEmpty() ? without : concepts).add(asked.get(concept));
          if (!its.isEmpty()) {
            names.add(namesMaker.of(asked.get(concept), its));
          }
        });
    List<Row> rows = new ArrayList<>();
    bySource.forEach((s, its) -> rows.add(row(s, its, byConcept.keySet(), independence)));
    List<Use> exact = uses.covering.stream().filter(Use::isExact).toList();
    Agreement agreement = Agreeing.of(exact, keys, independence);
    return new Concordance(
        question.terms(),
        concepts,
        rows,
        folded(independence),
        without,
        others(bySource.keySet()),
        apart(uses),
        names,
        new WordsMaker(shelf, lines, keys).of(exact),
        agreement);
  }

  private Row row(
      Source source, List<Use> uses, Collection<String> order, Independence independence) {
    Map<String, List<Use>> byConcept = new LinkedHashMap<>();
    uses.forEach(u -> byConcept.computeIfAbsent(u.concept(), c -> new ArrayList<>()).add(u));
    List<Cell> cells = new ArrayList<>();
    for (String concept : order) {
      List<Use> here = byConcept.get(concept);
      if (here != null) {
        cells.add(new Cell(concept, terms(concept, here)));
      }
    }
    boolean independent = independence.of(source).first().equals(source);
    return new Row(lines.of(source), independent, cells);
  }

  /** What is exact before what is narrower, what is pictured before what is in words only (R4). */
  private List<Passage> terms(String concept, List<Use> uses) {
    Entries entries = new Entries(lines, thesaurus, Optional.of(concept));
    Map<List<String>, List<Classified>> byTerm = new LinkedHashMap<>();
    for (Use use : uses) {
      byTerm
          .computeIfAbsent(
              List.of(use.naming().printed(), use.naming().concept().get()), t -> new ArrayList<>())
          .add(use.classified());
    }
    List<Passage> terms = new ArrayList<>();
    for (List<Classified> namings : byTerm.values()) {
      terms.add(entries.passage(namings.get(0).naming().concept(), namings, PlaceTest.COVERS));
    }
    terms.sort(Comparator.comparing(Passage::narrower).thenComparing(t -> t.pictured().isEmpty()));
    return terms;
  }

  private List<Folded> folded(Independence independence) {
    List<Folded> folded = new ArrayList<>();
    for (Independence.Witness witness : independence.witnesses()) {
      for (Independence.Folded each : witness.folded()) {
        folded.add(new Folded(lines.of(each.source()), lines.of(witness.first()), each.why()));
      }
    }
    return folded;
  }

  /** The user's own works are not among those that have nothing to say. */
  private int others(Set<Source> having) {
    Set<Source> others = new HashSet<>(shelf.sources());
    others.removeAll(having);
    others.removeIf(Source::mine);
    return others.size();
  }

  private List<Apart> apart(Uses uses) {
    List<Apart> apart = new ArrayList<>();
    add(apart, Why.OWN_WORK, uses.own, PlaceTest.COVERS);
    add(apart, Why.SAYS_NOT_SHOWN, uses.absent, PlaceTest.ABSENCE);
    add(apart, Why.HOW_IT_IS_MADE, uses.made, PlaceTest.PROCESS);
    add(apart, Why.MEANING_NOT_STATED, uses.notStated, PlaceTest.PRESENT);
    return apart;
  }

  private void add(List<Apart> apart, Why why, List<Use> uses, PlaceTest places) {
    Set<Classified> namings = new LinkedHashSet<>();
    uses.forEach(u -> namings.add(u.classified()));
    List<Entry> entries = new Entries(lines, thesaurus, Optional.empty()).of(namings, places);
    if (!entries.isEmpty()) {
      apart.add(new Apart(why, entries));
    }
  }
}
