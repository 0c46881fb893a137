package merese.answer.literature;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Correction;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Entries;
import merese.answer.SourceLines;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsAnswer.OfKind;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Standing;
import merese.answer.claims.ClaimsQuestion;
import merese.answer.literature.Literature.Mention;
import merese.answer.literature.Literature.OfType;
import merese.answer.literature.Literature.Saying;
import merese.answer.literature.Literature.Sentence;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** What there is on one feature: pictures of other pieces, and what is claimed of it. */
final class TypeMaker {
  private final Shelf shelf;
  private final SourceLines lines;
  private final Noted noted;
  private final Citations citations;

  TypeMaker(Shelf shelf, SourceLines lines, Noted noted, Citations citations) {
    this.shelf = shelf;
    this.lines = lines;
    this.noted = noted;
    this.citations = citations;
  }

  /**
   * Makes it.
   *
   * @param claims what is claimed of it
   * @param linked notes that are told apart
   */
  OfType type(Heading heading, ClaimsAnswer.Section claims, Set<SourcedNote> linked) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, heading.id());
    ConceptLine concept = new ConceptLine(heading.id(), heading.label());
    Sentences sentences = new Sentences(noted);
    Map<ConceptLine, List<Row>> narrower = new LinkedHashMap<>();
    List<Row> exact = new ArrayList<>();
    for (OfKind kind : claims.kinds()) {
      for (Row row : kind.rows(Standing.CLAIMED)) {
        (row.narrower() ? narrower.computeIfAbsent(row.concept(), c -> new ArrayList<>()) : exact)
            .add(row);
      }
    }
    List<Sentence> ofNarrower = new ArrayList<>();
    narrower.forEach(
        (kind, rows) ->
            sentences
                .of(
                    "Of a narrower kind (" + kind.label() + ")",
                    kind,
                    rows,
                    claims.contradictions().listed())
                .ifPresent(ofNarrower::add));
    List<Saying> copies = new ArrayList<>();
    claims.copies().forEach(row -> copies.add(sentences.saying(row)));
    return new OfType(
        heading,
        pictured(coverage, Group.COUNTED, linked),
        pictured(coverage, Group.OWN_WORK, linked),
        sentences.of("Of a type", concept, exact, claims.contradictions().listed()),
        ofNarrower,
        copies,
        claims.saysNotShown().stream().map(ClaimsAnswer.Denial::source).toList());
  }

  /** What is claimed of a concept. */
  static ClaimsAnswer.Section claims(Shelf shelf, String concept) {
    return Claims.answer(shelf, ClaimsQuestion.of(concept)).sections().get(0);
  }

  private List<Mention> pictured(ConceptCoverage coverage, Group group, Set<SourcedNote> linked) {
    List<Classified> others = new ArrayList<>();
    for (Classified classified : coverage.in(group)) {
      if (!linked.contains(classified.sourced())) {
        others.add(classified);
      }
    }
    Entries entries = new Entries(lines, shelf.thesaurus(), Optional.of(coverage.concept()));
    List<Mention> mentions = new ArrayList<>();
    for (boolean narrower : new boolean[] {false, true}) {
      for (Entry entry : entries.of(others, PlaceTest.COVERS)) {
        for (Passage passage : entry.passages()) {
          if (!passage.pictured().isEmpty() && passage.narrower() == narrower) {
            mentions.add(mention(entry, passage, others));
          }
        }
      }
    }
    return mentions;
  }

  private Mention mention(Entry entry, Passage passage, List<Classified> notes) {
    Source source = noted.source(entry.source().key());
    Set<Correction> corrected = new LinkedHashSet<>();
    for (Classified classified : notes) {
      boolean here =
          classified.sourced().source().equals(source)
              && classified.naming().concept().equals(passage.concept().map(ConceptLine::id))
              && classified.places().stream()
                  .anyMatch(place -> passage.pictured().contains(place.locator()));
      if (here) {
        corrected.addAll(noted.corrections(classified.sourced()));
      }
    }
    return new Mention(
        entry.source(),
        Optional.empty(),
        passage.pictured(),
        passage.narrower() ? passage.concept() : Optional.empty(),
        Optional.empty(),
        citations.note(
            merese.citation.Source.of(source.work(), source.edition()),
            passage.pictured(),
            Output.TEXT),
        List.copyOf(corrected));
  }
}
