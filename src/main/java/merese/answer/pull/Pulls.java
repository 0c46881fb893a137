package merese.answer.pull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.answer.Script;
import merese.answer.Script.Mark;
import merese.answer.Topic;
import merese.answer.pull.Substitutes.Substitute;
import merese.model.Locator;
import merese.model.OwnObject;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Says which books and pieces to take out, and what to open each at: what a script names, in its
 * order; or for each feature the sources that cover it, in the order of R4, and the user's own
 * pieces after them. What is taken twice is one book with two openings.
 */
public final class Pulls {
  private final Shelf shelf;
  private final PullQuestion question;
  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final List<String> remarks = new ArrayList<>();
  private final SourceNotes notes;
  private final Substitutes substitutes;
  private final Map<String, Taken> taken = new LinkedHashMap<>();
  private final List<String> asked = new ArrayList<>();
  private final List<String> uncovered = new ArrayList<>();
  private int turn;

  private Pulls(Shelf shelf, PullQuestion question) {
    this.shelf = shelf;
    this.question = question;
    for (Source source : shelf.sources()) {
      sources.put(source.key(), source);
    }
    this.notes = new SourceNotes(shelf);
    this.substitutes = new Substitutes(shelf, sources, notes);
  }

  /** Answers a question. */
  public static Pull answer(Shelf shelf, PullQuestion question) {
    return shelf.ask(s -> new Pulls(s, question).answer());
  }

  private Pull answer() {
    question.script().map(Script::remarks).ifPresent(remarks::addAll);
    if (question.script().isPresent()) {
      for (Mark mark : question.script().get().marks()) {
        take(mark);
      }
    } else {
      for (Topic topic : Topic.of(shelf, question.terms(), question.facet())) {
        asked.add(topic.heading().label());
        take(
            topic.heading().label(),
            Covers.answer(shelf, CoverageQuestion.ofConcept(topic.concept())));
        Pieces.showing(shelf, topic.concept()).forEach(this::take);
      }
    }
    for (Taken book : List.copyOf(taken.values())) {
      addWhatToTakeInstead(book);
    }
    return new PullMaker(shelf, taken.values())
        .pull(question.script().isPresent(), asked, uncovered, remarks);
  }

  private void take(Mark mark) {
    if (mark instanceof Mark.OfSource place) {
      Need need = new Need(place.locator());
      notes.describe(place.source(), need);
      if (place.locator().isPresent() && need.concepts.isEmpty() && need.printed.isEmpty()) {
        remarks.add(
            place.source().reference()
                + ", "
                + place.locator().get()
                + ": no note says that anything is there");
      }
      add(place.source(), need, new Need.Turn(turn++, false));
    } else if (mark instanceof Mark.OfObject piece) {
      take(Pieces.named(shelf, piece.object(), piece.rest()));
    } else if (mark instanceof Mark.OfTerm term) {
      Coverage answer = Covers.answer(shelf, term.question());
      asked.add(answer.asked());
      take(answer.asked(), answer);
    }
  }

  private void take(Pieces.Shown shown) {
    OwnObject object = shown.object();
    shown.need().turns.add(new Need.Turn(turn++, false));
    taken
        .computeIfAbsent("object " + object.ref(), key -> new Taken(object))
        .addPiece(shown.need());
  }

  private void take(String words, Coverage answer) {
    int before = turn;
    for (Section section : answer.sections()) {
      for (Group group : List.of(Group.COUNTED, Group.SAME_FEATURE)) {
        for (Entry entry : section.group(group)) {
          Source source = sources.get(entry.source().key());
          for (Need need : needs(source, entry)) {
            add(source, need, new Need.Turn(turn++, false));
          }
        }
      }
    }
    if (turn == before) {
      uncovered.add(words);
    }
  }

  /** Each picture of the feature; each place in words where there is no picture. */
  private List<Need> needs(Source source, Entry entry) {
    List<Need> needs = new ArrayList<>();
    for (Passage passage : entry.passages()) {
      boolean pictured = !passage.pictured().isEmpty();
      List<Locator> places = pictured ? passage.pictured() : passage.inWords();
      for (Locator place : places) {
        Need need = new Need(Optional.of(place));
        passage.concept().ifPresent(line -> need.addConcepts(List.of(line)));
        need.pictured = pictured;
        if (pictured && place.equals(places.get(0))) {
          need.texts.addAll(passage.inWords());
          entry.conflicts().forEach(conflict -> conflict.text().ifPresent(need.texts::add));
        }
        notes.describe(source, need);
        needs.add(need);
      }
    }
    return needs;
  }

  private Need add(Source source, Need need, Need.Turn when) {
    need.turns.add(when);
    return taken
        .computeIfAbsent(source.key(), key -> new Taken(source, substitutes.shelving(source)))
        .add(need);
  }

  private void addWhatToTakeInstead(Taken book) {
    if (book.source().isEmpty() || book.shelving().atHand()) {
      return;
    }
    Source source = book.source().get();
    for (Need need : book.needs()) {
      Optional<Substitute> found = substitutes.of(source, need);
      if (found.isEmpty()) {
        continue;
      }
      Need other = instead(need, found.get());
      Optional<Need> there = known(found.get().source(), other);
      Need kept =
          there.isPresent()
              ? there.get()
              : add(found.get().source(), other, new Need.Turn(need.turns.first().at(), true));
      kept.insteadOf.add(source.reference());
      need.instead =
          Optional.of(new Need.Instead(found.get().samePicture(), found.get().source(), kept));
    }
  }

  private Optional<Need> known(Source source, Need need) {
    Taken book = taken.get(source.key());
    return book == null ? Optional.empty() : book.findShowing(need);
  }

  private Need instead(Need need, Substitute found) {
    if (found.entry().isPresent()) {
      return needs(found.source(), found.entry().get()).get(0);
    }
    Need other = new Need(found.locator());
    List<ConceptLine> lines = List.copyOf(need.concepts.values());
    other.addConcepts(lines);
    other.pictured = true;
    notes.describe(found.source(), other);
    return other;
  }
}
