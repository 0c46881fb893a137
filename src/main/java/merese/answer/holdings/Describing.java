package merese.answer.holdings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import merese.answer.CheckLog;
import merese.answer.Citing;
import merese.answer.Corrections;
import merese.answer.Coverage.ConceptLine;
import merese.answer.NamedSource;
import merese.answer.SourceLines;
import merese.answer.editions.Editions;
import merese.answer.editions.EditionsQuestion;
import merese.answer.holdings.Holding.Looked;
import merese.answer.holdings.Holding.NamingLine;
import merese.answer.holdings.Holding.NoteLine;
import merese.answer.holdings.Holding.PartLine;
import merese.answer.holdings.Holding.PlaceLine;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Check;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PictureRights;
import merese.model.Place;
import merese.model.Scope;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/** Describes one source. */
public final class Describing {
  private final Thesaurus thesaurus;
  private final Corrections corrections;

  private Describing(Thesaurus thesaurus, Corrections corrections) {
    this.thesaurus = thesaurus;
    this.corrections = corrections;
  }

  /**
   * Describes the source of a key.
   *
   * @throws merese.answer.UnknownSourceException where there is none
   */
  public static Holding answer(Shelf shelf, String key, Citations citations) {
    Source source = NamedSource.find(shelf, key).source();
    Edition edition = source.edition();
    SourceLines lines = new SourceLines();
    Corrections corrections = new Corrections(shelf, lines);
    Describing describing = new Describing(shelf.thesaurus(), corrections);
    return new Holding(
        lines.of(source),
        source.workId(),
        source.mine(),
        Citing.answer(shelf, source.key(), List.of(), citations, Output.TEXT),
        source.scope().map(Scope::words),
        edition.parts().stream().map(Describing::part).toList(),
        Editions.answer(shelf, EditionsQuestion.of(source.workId())).editions(),
        edition.copies(),
        inOrder(shelf.notesOf(source)).stream().map(describing::note).toList(),
        describing.checks(shelf, source),
        corrections.ofSource(source.key()));
  }

  private static PartLine part(Edition.Part part) {
    return new PartLine(
        part.id(), part.title(), part.authors().stream().map(Name::full).toList(), part.extent());
  }

  private static List<SourcedNote> inOrder(List<SourcedNote> notes) {
    return notes.stream()
        .sorted(
            Comparator.comparing((SourcedNote sourced) -> first(sourced.note()))
                .thenComparingInt(SourcedNote::order))
        .toList();
  }

  private static Locator first(Note note) {
    return Collections.min(note.places().stream().map(Place::locator).toList());
  }

  private NoteLine note(SourcedNote sourced) {
    Note note = sourced.note();
    return new NoteLine(
        note.id(),
        note.namings().stream().map(this::naming).toList(),
        note.places().stream()
            .sorted(Comparator.comparing(Place::locator))
            .map(Describing::place)
            .toList(),
        note.claims(),
        note.quotation(),
        note.reading(),
        note.part(),
        note.object(),
        note.rights().map(Describing::rights).orElse(List.of()),
        note.checked(),
        corrections.correctedBy(note),
        corrections.of(sourced));
  }

  private NamingLine naming(Naming naming) {
    return new NamingLine(
        naming.printed(),
        naming.concept().map(this::concept),
        naming.why().map(why -> why.code().replace('-', ' ')));
  }

  private ConceptLine concept(String id) {
    return new ConceptLine(id, thesaurus.label(id));
  }

  private static PlaceLine place(Place place) {
    return new PlaceLine(
        place.locator(),
        place.stance().code().replace('-', ' '),
        place.medium().code(),
        place.shows().map(Place.Shows::code),
        place.naming(),
        place.picture(),
        place.piece(),
        place.photo());
  }

  private static List<String> rights(PictureRights rights) {
    List<String> lines = new ArrayList<>();
    rights.book().ifPresent(layer -> lines.add("book: " + layer(layer)));
    rights.photograph().ifPresent(layer -> lines.add("photograph: " + layer(layer)));
    rights.owner().ifPresent(layer -> lines.add("owner: " + layer(layer)));
    rights.credit().ifPresent(credit -> lines.add("credit: " + credit));
    rights.words().ifPresent(lines::add);
    return lines;
  }

  private static String layer(PictureRights.Layer layer) {
    List<String> words = new ArrayList<>();
    layer.holder().ifPresent(words::add);
    layer.status().ifPresent(status -> words.add(status.words()));
    layer.terms().ifPresent(words::add);
    layer.by().ifPresent(words::add);
    layer.on().ifPresent(on -> words.add(on.toString()));
    return String.join(", ", words);
  }

  private List<Looked> checks(Shelf shelf, Source source) {
    List<String> concepts = thesaurus.concepts().stream().map(c -> c.id()).toList();
    return shelf.checks(concepts).stream()
        .filter(sourced -> sourced.source().equals(source))
        .map(sourced -> looked(sourced.check()))
        .distinct()
        .toList();
  }

  private Looked looked(Check check) {
    return new Looked(
        concept(check.concept()),
        CheckLog.line(check),
        check.on().map(LocalDate::toString),
        check.by(),
        check.copy());
  }
}
