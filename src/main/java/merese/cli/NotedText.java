package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.NoteWords;
import merese.change.notes.TermChoice.Choice;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.WritingShelf;

/** Notes that were just taken, laid out, with what may be worth a second look. */
final class NotedText {
  private static final int MARGIN = 2;

  private final Page page;
  private final WritingShelf shelf;
  private final NoteWords words;

  NotedText(Context context, WritingShelf shelf) {
    this.page = new Page(context.out(), context.screen());
    this.shelf = shelf;
    this.words = new NoteWords(shelf);
  }

  /**
   * @param facet the heading that the terms stand under
   */
  void print(Taken taken, Optional<String> facet) {
    String where = taken.source().reference() + " (" + taken.source().key() + ")";
    if (taken.notes().size() == 1) {
      page.text("Noted in " + where + ": " + words(taken.notes().get(0)) + ".");
    } else {
      page.text("Noted " + taken.notes().size() + " headings in " + where + ":");
      taken.notes().forEach(note -> item(words(note)));
    }
    remarks(taken, facet);
    page.text("merese undo takes it back.");
  }

  /** The same for one who is told of every note, and knows the source. */
  void printShort(Taken taken, Optional<String> facet) {
    page.hanging("Noted: ", words(taken.notes().get(0)) + ".");
    remarks(taken, facet);
  }

  /** What may be worth a second look. */
  private void remarks(Taken taken, Optional<String> facet) {
    for (Note note : taken.notes()) {
      for (Naming naming : note.namings()) {
        words.typedId(naming, facet).ifPresent(this::typedId);
        words.open(naming, facet).ifPresent(this::item);
      }
    }
    NoteWords.outside(shelf, taken).forEach(this::item);
    for (Place place : taken.notes().get(0).places()) {
      if (place.photo().isPresent()) {
        item(
            "Your photograph is kept: pictures/"
                + place.photo().get()
                + ". "
                + PhotoOption.CAUTION);
      }
      if (NoteWords.mayBePicture(place)) {
        item(
            place.locator().printed()
                + " is noted as text; a picture there counts once it is noted with --pictured or"
                + " --drawing.");
      }
    }
  }

  private void typedId(Choice concept) {
    item(
        "“"
            + concept.concept()
            + "” is the id of "
            + concept.label()
            + "; --as "
            + concept.concept()
            + " gives a term that meaning.");
  }

  private void item(String text) {
    page.hanging(" ".repeat(MARGIN), text);
  }

  /** A note in one line, with all its places. */
  String words(Note note) {
    return words.words(note);
  }

  /** The same with some of its places. */
  String words(Note note, List<Place> places) {
    return words.words(note, places);
  }
}
