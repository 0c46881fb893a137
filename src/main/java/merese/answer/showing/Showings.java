package merese.answer.showing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Photo;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.answer.Headings;
import merese.answer.Script;
import merese.answer.Script.Mark;
import merese.answer.SourceLines;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.ConcordanceQuestion;
import merese.answer.concordance.Concording;
import merese.answer.pull.Visible;
import merese.answer.showing.Showing.Called;
import merese.answer.showing.Showing.Detail;
import merese.answer.showing.Showing.Seen;
import merese.answer.showing.Showing.Slide;
import merese.model.OwnObject;
import merese.shelf.Shelf;

/** Makes a slide of each meaning of each feature, or of each mark of a script, in its order. */
public final class Showings {
  private final Shelf shelf;
  private final SourceLines lines;
  private final Map<String, Concordance.Names> names = new HashMap<>();
  private final List<Slide> slides = new ArrayList<>();
  private final Set<String> remarks = new LinkedHashSet<>();

  private Showings(Shelf shelf) {
    this.shelf = shelf;
    this.lines = new SourceLines();
  }

  /** Answers a question. */
  public static Showing answer(Shelf shelf, ShowingQuestion question) {
    return shelf.ask(asked -> new Showings(asked).of(question));
  }

  private Showing of(ShowingQuestion question) {
    question.features().forEach(this::feature);
    if (question.script().isPresent()) {
      Script script = question.script().get();
      remarks.addAll(script.remarks());
      for (Mark mark : script.marks()) {
        show(mark);
      }
    }
    return new Showing(List.copyOf(slides), List.copyOf(remarks), Showing.CAUTION);
  }

  private void show(Mark mark) {
    if (mark instanceof Mark.OfTerm term) {
      feature(term.question());
    } else if (mark instanceof Mark.OfSource place) {
      place(place);
    } else if (mark instanceof Mark.OfObject piece) {
      piece(piece.object(), piece.rest());
    }
  }

  private void feature(CoverageQuestion question) {
    Coverage answer = Covers.answer(shelf, question);
    if (answer.sections().isEmpty()) {
      remarks.add("“" + answer.asked() + "” is no word of the vocabulary that can be shown");
    }
    for (Section section : answer.sections()) {
      Heading heading = section.heading();
      Concordance.Names called = names(heading.id());
      List<Called> words = new ArrayList<>();
      for (Concordance.Name name : called.names()) {
        words.add(new Called(name.word(), references(name.sources())));
      }
      slides.add(
          new Slide(
              heading.label(),
              Optional.of(heading),
              Optional.empty(),
              words,
              references(called.unnamed()),
              pictures(section),
              section.howToTell()));
    }
  }

  /** Asked only for what is shown, since it weighs all sources. */
  private Concordance.Names names(String concept) {
    return names.computeIfAbsent(
        concept,
        id -> {
          ConcordanceQuestion question = new ConcordanceQuestion(List.of(id), Optional.empty());
          for (Concordance.Names each : Concording.answer(shelf, question).names()) {
            if (each.concept().id().equals(id)) {
              return each;
            }
          }
          return new Concordance.Names(Headings.of(shelf, id), List.of(), List.of(), List.of());
        });
  }

  private static List<String> references(List<Coverage.SourceLine> sources) {
    return sources.stream().map(Coverage.SourceLine::reference).toList();
  }

  private List<Seen> pictures(Section section) {
    List<Seen> pictures = new ArrayList<>();
    for (Group group : List.of(Group.COUNTED, Group.SAME_FEATURE)) {
      for (Entry entry : section.group(group)) {
        for (Passage passage : entry.passages()) {
          for (Photo photo : passage.photos()) {
            Optional<String> words =
                passage.printed().isEmpty()
                    ? Optional.empty()
                    : Optional.of("“" + String.join("”, “", passage.printed()) + "”");
            String reference = entry.source().reference();
            pictures.add(
                new Seen(photo.file(), reference, photo.locator().printed(), words, false));
          }
        }
      }
    }
    for (PieceLine piece : section.ownPieces()) {
      photograph(piece).ifPresent(pictures::add);
    }
    return pictures;
  }

  /** What it shows, and that it speaks against the feature where it does. */
  private Optional<Seen> photograph(PieceLine piece) {
    String against =
        piece.kind() == OwnObject.Evidence.Kind.EXAMPLE ? "" : piece.kind().words() + ": ";
    Optional<String> words =
        Optional.of(against + piece.words().orElse(piece.title())).filter(w -> !w.isEmpty());
    for (OwnObject object : shelf.objects()) {
      for (OwnObject.Photograph photo : object.photographs()) {
        if (object.ref().equals(piece.ref())
            && piece.photo().filter(photo.id()::equals).isPresent()) {
          return Optional.of(new Seen(photo.file(), piece.ref(), photo.id(), words, true));
        }
      }
    }
    return Optional.empty();
  }

  private void place(Mark.OfSource mark) {
    String reference = lines.reference(mark.source());
    if (mark.locator().isEmpty()) {
      Detail whole = new Detail(reference, List.of(), List.of(), Optional.empty());
      slides.add(of(mark.source().title(), whole, List.of()));
      return;
    }
    String at = mark.locator().get().printed();
    Visible visible = Visible.at(shelf, mark.source(), mark.locator().get());
    if (visible.concepts().isEmpty() && visible.printed().isEmpty()) {
      remarks.add(reference + ", " + at + ": no note says that anything is there");
    }
    Optional<Heading> heading =
        visible.concepts().stream().findFirst().map(line -> Headings.of(shelf, line.id()));
    List<Called> words = new ArrayList<>();
    visible.printed().forEach(word -> words.add(new Called(word, List.of(reference))));
    List<Seen> pictures = new ArrayList<>();
    for (Visible.Photograph each : visible.photographs()) {
      pictures.add(new Seen(each.file(), reference, each.at(), Optional.empty(), false));
    }
    String title =
        heading
            .map(Heading::label)
            .orElse(words.isEmpty() ? mark.source().title() : words.get(0).word());
    slides.add(
        new Slide(
            title,
            heading,
            Optional.of(
                new Detail(
                    reference + ", " + at,
                    others(visible, heading),
                    visible.pointAt(),
                    Optional.empty())),
            words,
            List.of(),
            pictures,
            List.of()));
  }

  private static List<ConceptLine> others(Visible visible, Optional<Heading> heading) {
    return visible.concepts().stream()
        .filter(line -> heading.isEmpty() || !heading.get().id().equals(line.id()))
        .toList();
  }

  private void piece(OwnObject object, String rest) {
    Visible visible = Visible.of(shelf, object, rest);
    List<Seen> pictures = new ArrayList<>();
    for (Visible.Photograph each : visible.photographs()) {
      pictures.add(new Seen(each.file(), object.ref(), each.at(), Optional.empty(), true));
    }
    String beside = rest.isEmpty() ? object.ref() : object.ref() + ", " + rest;
    Detail detail = new Detail(beside, visible.concepts(), visible.pointAt(), visible.turn());
    slides.add(of(object.title(), detail, pictures));
  }

  private static Slide of(String heading, Detail detail, List<Seen> pictures) {
    return new Slide(
        heading, Optional.empty(), Optional.of(detail), List.of(), List.of(), pictures, List.of());
  }
}
