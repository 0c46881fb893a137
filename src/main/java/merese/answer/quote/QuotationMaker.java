package merese.answer.quote;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Corrections;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.PartCitation;
import merese.answer.SourceLines;
import merese.answer.quote.Quotations.Quotation;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PageBreaks;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/**
 * Makes of a note its quotation with its citation: in full where it is the source's first, and
 * where a short one would not tell which edition is meant.
 */
final class QuotationMaker {
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final Corrections corrections;
  private final Citations citations;
  private final Output output;
  private final Set<String> cited = new HashSet<>();
  private final Set<String> inSeveralEditions = new HashSet<>();

  QuotationMaker(Shelf shelf, SourceLines lines, Citations citations, Output output) {
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
    this.corrections = new Corrections(shelf, lines);
    this.citations = citations;
    this.output = output;
    Set<String> seen = new HashSet<>();
    for (Source source : shelf.sources()) {
      if (!seen.add(source.workId())) {
        inSeveralEditions.add(source.workId());
      }
    }
  }

  SourceLine line(Source source) {
    return lines.of(source);
  }

  /** By year and author of the source, then in physical order. */
  Comparator<SourcedNote> order() {
    return Comparator.comparing(SourcedNote::source, Source.BY_YEAR)
        .thenComparing(note -> places(note.note()).get(0))
        .thenComparing(note -> note.note().quotation().orElse(""));
  }

  /**
   * As a quotation on a concept.
   *
   * @param wanted the concept and all that is narrower
   */
  Quotation on(SourcedNote sourced, String concept, Set<String> wanted) {
    Set<String> narrower = new LinkedHashSet<>();
    for (String id : meanings(sourced.note())) {
      if (id.equals(concept)) {
        return quotation(sourced, List.of(), false);
      } else if (wanted.contains(id)) {
        narrower.add(id);
      }
    }
    return quotation(sourced, labels(narrower), !narrower.isEmpty());
  }

  /** As a quotation of its source, with what it is about. */
  Quotation ofSource(SourcedNote sourced) {
    return quotation(sourced, labels(meanings(sourced.note())), false);
  }

  private Quotation quotation(SourcedNote sourced, List<ConceptLine> concepts, boolean narrower) {
    Note note = sourced.note();
    PageBreaks breaks = PageBreaks.of(note);
    List<Locator> places = places(note);
    return new Quotation(
        lines.of(sourced.source()),
        note.id(),
        concepts,
        narrower,
        places,
        breaks.marked(),
        breaks.numbers(),
        breaks.doubt(),
        citation(sourced, places),
        Corrections.isCorrection(note),
        corrections.correctedBy(note),
        corrections.of(sourced));
  }

  private String citation(SourcedNote sourced, List<Locator> places) {
    merese.citation.Source source = PartCitation.of(sourced);
    boolean wouldNotTellEditions = inSeveralEditions.contains(sourced.source().workId());
    return cited.add(source.id()) || wouldNotTellEditions
        ? citations.note(source, places, output)
        : citations.shortNote(source, places, output);
  }

  private List<ConceptLine> labels(Set<String> ids) {
    List<ConceptLine> labels = new ArrayList<>();
    for (String id : ids) {
      labels.add(new ConceptLine(id, thesaurus.label(id)));
    }
    return labels;
  }

  private static Set<String> meanings(Note note) {
    Set<String> meanings = new LinkedHashSet<>();
    for (Naming naming : note.namings()) {
      naming.concept().ifPresent(meanings::add);
    }
    return meanings;
  }

  /** Words stand where there are words; a note of pictures alone is quoted from them. */
  private static List<Locator> places(Note note) {
    Set<Locator> inWords = new TreeSet<>();
    Set<Locator> pictured = new TreeSet<>();
    for (Place place : note.places()) {
      (place.medium().isPicture() ? pictured : inWords).add(place.locator());
    }
    return List.copyOf(inWords.isEmpty() ? pictured : inWords);
  }
}
