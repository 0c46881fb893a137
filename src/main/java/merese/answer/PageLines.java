package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Found.PageLine;
import merese.answer.Found.Text;
import merese.model.Naming;
import merese.model.Note;
import merese.search.FindField;
import merese.search.FindQuery;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Any;
import merese.search.FindQuery.Condition;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Required;
import merese.search.Highlights.Mark;
import merese.search.PageHighlights;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedPage;
import merese.vocabulary.Folding;
import merese.vocabulary.NameOnPage;
import merese.vocabulary.OneLine;
import merese.vocabulary.PageReading;
import merese.vocabulary.Thesaurus;

/** Shows pages that have the words of a question, each in the sentence where they stand. */
final class PageLines {
  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final PageHighlights highlights;
  private final Set<String> concepts = new LinkedHashSet<>();
  private final PageNotes notes;
  private final Set<Source> known = new HashSet<>();

  PageLines(Shelf shelf, FindQuery asked) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = new SourceLines();
    this.highlights = new PageHighlights(asked);
    this.notes = new PageNotes(thesaurus);
    addConcepts(asked.root());
  }

  private void addConcepts(Node node) {
    if (node instanceof All all) {
      all.nodes().forEach(this::addConcepts);
    } else if (node instanceof Any any) {
      any.nodes().forEach(this::addConcepts);
    } else if (node instanceof Required required) {
      addConcepts(required.node());
    } else if (node instanceof Condition condition && condition.field() == FindField.CONCEPT) {
      if (thesaurus.concept(condition.value()).isPresent()) {
        concepts.add(condition.value());
      } else {
        thesaurus
            .match(condition.value(), Optional.empty())
            .meanings()
            .forEach(m -> concepts.add(m.concept().id()));
      }
    }
  }

  List<PageLine> of(List<SourcedPage> pages) {
    List<PageLine> made = new ArrayList<>();
    for (SourcedPage page : pages) {
      if (known.add(page.source())) {
        shelf.notesOf(page.source()).forEach(notes::add);
      }
      PageReading reading = shelf.read(page);
      List<Mark> marks = new ArrayList<>(highlights.in(reading));
      for (NameOnPage name : page.names()) {
        if (name.concepts().stream().anyMatch(this::isAskedFor)) {
          marks.add(new Mark(name.start(), name.end()));
        }
      }
      List<Mark> apart = PageHighlights.apart(marks, reading);
      made.add(
          new PageLine(
              lines.of(page.source()),
              page.locator(),
              page.cited(),
              isNoted(page, reading, apart),
              sentence(reading, apart)));
    }
    return made;
  }

  private boolean isAskedFor(String concept) {
    return concepts.stream().anyMatch(asked -> thesaurus.covers(asked, concept));
  }

  /** By a concept that one of the marked words is a name of, or by all of the words. */
  private boolean isNoted(SourcedPage page, PageReading reading, List<Mark> marks) {
    if (page.locator().isEmpty() || marks.isEmpty()) {
      return false;
    }
    for (NameOnPage name : page.names()) {
      boolean marked =
          marks.stream().anyMatch(m -> m.start() <= name.start() && m.end() >= name.end());
      if (marked && notes.have(page, name)) {
        return true;
      }
    }
    Set<String> words = new HashSet<>();
    marks.forEach(m -> words.addAll(Folding.words(reading.between(m.start(), m.end()))));
    for (Note note : notes.at(page.source().key(), page.locator().get())) {
      Set<String> has = new HashSet<>();
      for (Naming naming : note.namings()) {
        has.addAll(Folding.words(naming.printed()));
      }
      note.quotation().ifPresent(q -> has.addAll(Folding.words(q)));
      if (has.containsAll(words)) {
        return true;
      }
    }
    return false;
  }

  /** The sentence with the most marks, on one line. */
  static Text sentence(PageReading reading, List<Mark> marks) {
    boolean over = marks.stream().anyMatch(m -> reading.isOverTheEnd(m.end()));
    OneLine line = over ? reading.oneLineOverTheEnd() : reading.oneLine();
    List<Found.Mark> moved = new ArrayList<>();
    for (Mark mark : marks) {
      moved.add(new Found.Mark(line.at(mark.start()), line.at(mark.end())));
    }
    return Snippets.sentence(new Text(line.text(), moved));
  }
}
