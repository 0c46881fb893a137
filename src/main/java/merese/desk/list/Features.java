package merese.desk.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Covers;
import merese.answer.Script;
import merese.desk.list.Question.Part;
import merese.shelf.Shelf;

/** The features of an address, as answers take them and as a page names them. */
public final class Features {
  /** How messages name a script that was pasted in. */
  private Features() {}

  /**
   * A feature that was chosen.
   *
   * @param label the user's own or the preferred one where it has one meaning, else as typed
   * @param meanings those of a word that has several
   */
  public record Line(Part part, String label, List<ConceptLine> meanings, boolean known) {}

  static CoverageQuestion question(Shelf shelf, Part feature, Narrowing narrowing) {
    boolean byId =
        feature.name().equals("concept") || shelf.thesaurus().concept(feature.value()).isPresent();
    CoverageQuestion question =
        byId ? CoverageQuestion.ofConcept(feature.value()) : CoverageQuestion.of(feature.value());
    return question.with(narrowing);
  }

  static List<CoverageQuestion> questions(Shelf shelf, Question asked, Narrowing narrowing) {
    List<CoverageQuestion> questions = new ArrayList<>();
    for (Part feature : asked.features()) {
      questions.add(question(shelf, feature, narrowing));
    }
    return questions;
  }

  /** The script of an address; empty where it has none. */
  static Optional<Script> script(Shelf shelf, Question asked) {
    return asked.has("script")
        ? Optional.of(Script.read(asked.get("script"), "", shelf))
        : Optional.empty();
  }

  /** What the page calls them; what cannot be answered is named as it was typed. */
  static List<Line> lines(Shelf shelf, Question asked) {
    List<Line> lines = new ArrayList<>();
    for (Part feature : asked.features()) {
      lines.add(line(shelf, feature));
    }
    return lines;
  }

  private static Line line(Shelf shelf, Part feature) {
    if (feature.name().equals("concept") && shelf.thesaurus().concept(feature.value()).isEmpty()) {
      return new Line(feature, feature.value(), List.of(), false);
    }
    Coverage answer = Covers.answer(shelf, question(shelf, feature, Narrowing.NONE));
    List<ConceptLine> meanings = new ArrayList<>();
    for (Section section : answer.sections()) {
      meanings.add(new ConceptLine(section.heading().id(), section.heading().label()));
    }
    boolean one = meanings.size() == 1;
    return new Line(
        feature,
        one ? meanings.get(0).label() : feature.value(),
        one ? List.of() : meanings,
        !meanings.isEmpty());
  }
}
