package merese.answer.rights;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.NamedSource;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.rights.Rights.Grouped;
import merese.answer.rights.Rights.Picture;
import merese.answer.rights.Rights.Printing;
import merese.answer.rights.Rights.Section;
import merese.answer.rights.Rights.Standing;
import merese.citation.Citations;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;

/**
 * Tells of each picture (R2) what is noted of its three layers. The same picture in several sources
 * is one, with all its places; what is noted of one printing is not said of another.
 */
public final class Clearing {
  /** Said with every answer (common practice, no source). */
  static final List<String> CAUTIONS =
      List.of(
          "This is what the notes say, not legal advice. Pictures in books are usually in"
              + " copyright: check before showing them. Nothing noted is not permission.",
          "Law differs from country to country: ask there, and ask a specialist.");

  private final Shelf shelf;
  private final RightsQuestion question;
  private final SourceLines lines;
  private final Citations citations;

  private Clearing(Shelf shelf, RightsQuestion question, Citations citations) {
    this.shelf = shelf;
    this.question = question;
    this.lines = new SourceLines();
    this.citations = citations;
  }

  /**
   * Answers a question; credit lines are composed in the style of the citations.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   * @throws merese.answer.UnknownSourceException for a key that no source has
   */
  public static Rights answer(Shelf shelf, RightsQuestion question, Citations citations) {
    return shelf.ask(asked -> new Clearing(asked, question, citations).answer());
  }

  private Rights answer() {
    Optional<NamedSource> source = question.source().map(key -> NamedSource.find(shelf, key));
    List<Section> sections = new ArrayList<>();
    if (question.terms().isEmpty()) {
      sections.add(section(source.orElseThrow()));
    }
    for (Topic topic : Topic.of(shelf, question.terms(), question.facet())) {
      sections.add(section(topic, source));
    }
    return new Rights(sections, CAUTIONS);
  }

  private Section section(Topic topic, Optional<NamedSource> source) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    PictureList pictures = new PictureList(Optional.of(topic.concept()));
    for (Classified classified : coverage.in(Group.COUNTED, Group.HOW_IT_IS_MADE, Group.OWN_WORK)) {
      SourcedNote note = classified.sourced();
      if (source.isEmpty() || note.source().equals(source.get().source())) {
        for (Place place : classified.places()) {
          pictures.add(note, place, classified.naming().concept());
        }
      }
    }
    return section(Optional.of(topic.heading()), Optional.empty(), pictures);
  }

  private Section section(NamedSource source) {
    PictureList pictures = new PictureList(Optional.empty());
    for (SourcedNote note : shelf.notesOf(source.source())) {
      for (Place place : note.note().places()) {
        pictures.add(note, place, Optional.empty());
      }
    }
    return section(Optional.empty(), Optional.of(lines.of(source.source())), pictures);
  }

  private Section section(
      Optional<Heading> heading, Optional<SourceLine> source, PictureList list) {
    PrintingMaker maker = new PrintingMaker(shelf, lines, citations);
    Map<Standing, List<Picture>> byStanding = new EnumMap<>(Standing.class);
    Set<String> sources = new HashSet<>();
    int count = 0;
    for (List<PictureList.Shown> picture : list.pictures(question.at())) {
      List<Printing> printings = new ArrayList<>();
      for (PictureList.Shown shown : picture) {
        printings.add(maker.printing(shown));
        sources.add(shown.source().key());
      }
      count++;
      Optional<String> id = printings.size() > 1 ? picture.get(0).picture() : Optional.empty();
      byStanding
          .computeIfAbsent(standing(printings), s -> new ArrayList<>())
          .add(new Picture(id, printings));
    }
    List<Grouped> groups = new ArrayList<>();
    byStanding.forEach(
        (standing, pictures) -> groups.add(new Grouped(standing, toldOnce(pictures, maker))));
    return new Section(heading, source, question.at(), count, sources.size(), groups);
  }

  /** What goes farthest: a refusal before all, then what is settled. */
  private static Standing standing(List<Printing> printings) {
    Standing first = Standing.NOT_NOTED;
    for (Printing printing : printings) {
      if (printing.standing().compareTo(first) < 0) {
        first = printing.standing();
      }
    }
    return first;
  }

  /** Pictures of one source alone of which the same is noted, as one. */
  private static List<Picture> toldOnce(List<Picture> pictures, PrintingMaker maker) {
    Map<Printing, List<Printing>> alike = new LinkedHashMap<>();
    for (Picture picture : pictures) {
      Printing first = picture.printings().get(0);
      if (picture.printings().size() == 1) {
        alike.computeIfAbsent(PrintingMaker.withoutPlace(first), p -> new ArrayList<>()).add(first);
      }
    }
    List<Picture> told = new ArrayList<>();
    for (Picture picture : pictures) {
      if (picture.printings().size() > 1) {
        told.add(picture);
        continue;
      }
      Printing first = picture.printings().get(0);
      List<Printing> same = alike.remove(PrintingMaker.withoutPlace(first));
      if (same != null) {
        told.add(new Picture(Optional.empty(), List.of(maker.together(same))));
      }
    }
    return told;
  }
}
