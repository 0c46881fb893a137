package merese.answer.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Headings;
import merese.answer.PartCitation;
import merese.answer.SourceLines;
import merese.answer.TermException;
import merese.answer.Topic;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.literature.Literature.Mention;
import merese.answer.literature.Literature.OfType;
import merese.answer.literature.Literature.Piece;
import merese.answer.literature.Literature.Section;
import merese.answer.literature.Literature.Sentence;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.model.Nearest;
import merese.model.Note.ObjectLink;
import merese.model.Note.ObjectLink.Sameness;
import merese.model.OwnObject;
import merese.model.Place;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/**
 * Writes the "Lit." and "Cf." lines of a piece and the sentence that its type bears. The very piece
 * is one that a note calls the same with its evidence; all else is like it at most.
 */
public final class Referring {
  /** Said with every answer (common practice, no source). */
  static final List<String> CAUTIONS =
      List.of(
          "These are the sources' opinions: an attribution is not an appraisal, and shape alone does"
              + " not date a piece.");

  private final Shelf shelf;
  private final Citations citations;
  private final SourceLines lines;
  private final Noted noted;
  private final TypeMaker types;

  private Referring(Shelf shelf, Citations citations) {
    this.shelf = shelf;
    this.citations = citations;
    this.lines = new SourceLines();
    this.noted = new Noted(shelf, lines);
    this.types = new TypeMaker(shelf, lines, noted, citations);
  }

  /**
   * Answers a question. What is the reference of a piece, in capitals or not, is not taken for a
   * term.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static Literature answer(Shelf shelf, LiteratureQuestion question, Citations citations) {
    return shelf.ask(asked -> new Referring(asked, citations).answer(question));
  }

  private Literature answer(LiteratureQuestion question) {
    List<Section> sections = new ArrayList<>();
    for (String asked : new LinkedHashSet<>(question.asked())) {
      Optional<OwnObject> piece = piece(asked);
      if (piece.isPresent()) {
        sections.add(section(piece.get()));
      } else {
        Topic topic = topic(asked, question.facet());
        ClaimsAnswer.Section claims = TypeMaker.claims(shelf, topic.concept());
        OfType type = types.type(topic.heading(), claims, Set.of());
        sections.add(
            new Section(
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(type)));
      }
    }
    return new Literature(sections, citations.remarks(), CAUTIONS);
  }

  private Topic topic(String asked, Optional<String> facet) {
    try {
      return Topic.of(shelf, List.of(asked), facet).get(0);
    } catch (TermException e) {
      List<String> refs = shelf.objects().stream().map(OwnObject::ref).toList();
      List<String> near = Nearest.bySlips(asked, refs);
      boolean isNoWord = shelf.meanings(List.of(asked)).get(asked).isEmpty();
      String piece =
          near.isEmpty()
              ? "; nor has a piece of yours that reference"
              : "; of your pieces, near it: " + String.join(", ", near);
      throw isNoWord ? new TermException(e.getMessage() + piece) : e;
    }
  }

  private Optional<OwnObject> piece(String asked) {
    for (OwnObject object : shelf.objects()) {
      if (object.ref().equalsIgnoreCase(asked.strip())) {
        return Optional.of(object);
      }
    }
    return Optional.empty();
  }

  private Section section(OwnObject piece) {
    List<SourcedNote> linked =
        new ArrayList<>(shelf.notes(List.of(new NoteCriterion.LinkedTo(piece.ref()))));
    linked.sort(
        Comparator.comparing((SourcedNote note) -> !isPictured(note))
            .thenComparing(SourcedNote::source, Source.BY_YEAR)
            .thenComparing(note -> places(note).get(0)));
    List<Mention> same = new ArrayList<>();
    List<Mention> similar = new ArrayList<>();
    List<Mention> own = new ArrayList<>();
    Set<SourcedNote> theSame = new HashSet<>();
    for (SourcedNote note : linked) {
      ObjectLink link = note.note().object().orElseThrow();
      if (note.source().mine()) {
        own.add(mention(note, link));
      } else if (isSame(link)) {
        same.add(mention(note, link));
        theSame.add(note);
      } else {
        similar.add(mention(note, link));
      }
    }
    List<OfType> ofTypes = new ArrayList<>();
    Map<String, ClaimsAnswer.Section> claims = new LinkedHashMap<>();
    for (String concept : shown(piece)) {
      claims.put(concept, TypeMaker.claims(shelf, concept));
      ofTypes.add(
          types.type(Headings.of(shelf, concept), claims.get(concept), new HashSet<>(linked)));
    }
    return new Section(
        Optional.of(new Piece(piece.ref(), piece.title())),
        same,
        similar,
        own,
        ofThePiece(piece, theSame, claims.values()),
        ofTypes);
  }

  /** Sameness without evidence is hearsay; the library's files refuse it as well. */
  private static boolean isSame(ObjectLink link) {
    return link.sameness() == Sameness.SAME
        && link.evidence().filter(evidence -> !evidence.isBlank()).isPresent();
  }

  /** What the piece is an example of, wholly or in part; not what it only looks like. */
  private static Set<String> shown(OwnObject piece) {
    Set<String> concepts = new LinkedHashSet<>();
    for (OwnObject.Evidence evidence : piece.evidence()) {
      if (evidence.kind() != OwnObject.Evidence.Kind.COUNTER_EXAMPLE) {
        concepts.add(evidence.concept());
      }
    }
    return concepts;
  }

  /** What notes of the very piece claim of it, each claim once. */
  private Optional<Sentence> ofThePiece(
      OwnObject piece, Set<SourcedNote> same, Iterable<ClaimsAnswer.Section> claims) {
    Map<List<Object>, Row> rows = new LinkedHashMap<>();
    for (ClaimsAnswer.Section section : claims) {
      for (Row row : section.objects()) {
        for (SourcedNote note : same) {
          if (note.source().key().equals(row.source().key())
              && note.note().id().equals(row.note())) {
            rows.putIfAbsent(List.of(row.source().key(), row.note(), row.kind(), row.words()), row);
          }
        }
      }
    }
    ConceptLine itself = new ConceptLine(piece.ref(), piece.title());
    return new Sentences(noted)
        .of("The piece itself is", itself, List.copyOf(rows.values()), List.of());
  }

  private Mention mention(SourcedNote note, ObjectLink link) {
    List<Locator> places = places(note);
    return new Mention(
        lines.of(note.source()),
        Optional.of(note.note().id()),
        places,
        Optional.empty(),
        link.evidence(),
        citations.note(PartCitation.of(note), places, Output.TEXT),
        noted.corrections(note));
  }

  private static boolean isPictured(SourcedNote note) {
    return note.note().places().stream().anyMatch(Place::isPictured);
  }

  /** Pictured places, then those in words alone, each in physical order (R5). */
  private static List<Locator> places(SourcedNote note) {
    Set<Locator> pictured = new TreeSet<>();
    Set<Locator> inWords = new TreeSet<>();
    for (Place place : note.note().places()) {
      (place.medium().isPicture() ? pictured : inWords).add(place.locator());
    }
    Set<Locator> all = new LinkedHashSet<>(pictured);
    all.addAll(inWords);
    return List.copyOf(all);
  }
}
