package merese.answer.witnesses;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Entries;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.witnesses.Dependence.Kind;
import merese.answer.witnesses.Witnesses.Folded;
import merese.answer.witnesses.Witnesses.Section;
import merese.answer.witnesses.Witnesses.Witness;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Answers how many sources speak for themselves on a feature, and after whom the others speak.
 *
 * <p>What makes works one witness is said by {@link Independence}. For one feature there is one
 * thing more: a source that has nothing on it but pictures that others had before is no witness.
 */
public final class Witnessing {
  private final Shelf shelf;
  private final SourceLines lines;

  private Witnessing(Shelf shelf) {
    this.shelf = shelf;
    this.lines = new SourceLines();
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static Witnesses answer(Shelf shelf, WitnessesQuestion question) {
    return shelf.ask(
        asked -> {
          Witnessing witnessing = new Witnessing(asked);
          List<Section> sections = new ArrayList<>();
          for (Topic topic : Topic.of(asked, question.terms(), question.facet())) {
            sections.add(witnessing.section(topic));
          }
          return new Witnesses(sections);
        });
  }

  private Section section(Topic topic) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    Map<Source, List<Classified>> counted = bySource(coverage.in(Group.COUNTED));
    Map<Source, List<Classified>> own = bySource(coverage.in(Group.OWN_WORK));
    Entries entries = new Entries(lines, shelf.thesaurus(), Optional.of(topic.concept()));
    Map<Source, Entry> lineOf = new LinkedHashMap<>();
    counted.forEach((s, n) -> lineOf.put(s, entries.of(n, PlaceTest.COVERS).get(0)));

    Independence independence = Independence.of(shelf, counted.keySet());
    Pictures pictures = new Pictures(lines, counted, own);
    List<Witness> witnesses = witnesses(independence, pictures, lineOf);
    Set<Source> all = new LinkedHashSet<>(lines.sorted(counted.keySet()));
    all.addAll(lines.sorted(own.keySet()));
    Mentions mentions = new Mentions(lines, lines.sorted(counted.keySet()), pictures.ids());
    return new Section(
        topic.heading(),
        counted.size(),
        witnesses.size(),
        witnesses,
        pictures.shared(all),
        mentions.borrowings(),
        mentions.citations(),
        entries.of(coverage.in(Group.OWN_WORK), PlaceTest.COVERS));
  }

  private List<Witness> witnesses(
      Independence independence, Pictures pictures, Map<Source, Entry> lineOf) {
    Map<Source, Witness> byFirst = new LinkedHashMap<>();
    Map<Independence.Witness, Source> borrowers = new LinkedHashMap<>();
    for (Independence.Witness found : independence.witnesses()) {
      Source from = pictures.borrowedFrom(found, independence);
      if (from == null) {
        Witness witness = new Witness(lineOf.get(found.first()), new ArrayList<>());
        byFirst.put(found.first(), witness);
        addFolded(found, witness, lineOf);
      } else {
        borrowers.put(found, from);
      }
    }
    borrowers.forEach(
        (borrower, from) -> {
          Witness witness = byFirst.get(independence.of(from).first());
          Dependence same =
              new Dependence(
                  Kind.SAME_PICTURE, lines.reference(from), Optional.empty(), Optional.empty());
          witness.folded().add(new Folded(lineOf.get(borrower.first()), List.of(same)));
          addFolded(borrower, witness, lineOf);
        });
    return List.copyOf(byFirst.values());
  }

  private static void addFolded(
      Independence.Witness found, Witness witness, Map<Source, Entry> lineOf) {
    for (Independence.Folded each : found.folded()) {
      witness.folded().add(new Folded(lineOf.get(each.source()), each.why()));
    }
  }

  private static Map<Source, List<Classified>> bySource(List<Classified> namings) {
    Map<Source, List<Classified>> bySource = new TreeMap<>(Source.BY_YEAR);
    for (Classified classified : namings) {
      bySource
          .computeIfAbsent(classified.sourced().source(), s -> new ArrayList<>())
          .add(classified);
    }
    return bySource;
  }
}
