package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TermChoice;
import merese.change.notes.TermChoice.Choice;
import merese.model.Claim;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.WritingShelf;

/** Notes that were just taken, laid out, with what may be worth a second look. */
final class NotedText {
  private static final int MARGIN = 2;

  private final Page page;
  private final WritingShelf shelf;

  NotedText(Context context, WritingShelf shelf) {
    this.page = new Page(context.out(), context.screen());
    this.shelf = shelf;
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
      note.namings().forEach(naming -> open(naming, facet));
    }
    for (Place place : taken.notes().get(0).places()) {
      if (place.photo().isPresent()) {
        item(
            "Your photograph is kept: pictures/"
                + place.photo().get()
                + ". "
                + PhotoOption.CAUTION);
      }
      if (place.locator().usuallyPicture() && !place.medium().isPicture() && isWord(place)) {
        item(
            place.locator().printed()
                + " is noted as text; a picture there counts once it is noted with --pictured or"
                + " --drawing.");
      }
    }
  }

  /** A caption or a denial is not mistaken for a picture. */
  private static boolean isWord(Place place) {
    return place.medium() == Place.Medium.TEXT && place.stance() == Place.Stance.NAMES;
  }

  private void item(String text) {
    page.hanging(" ".repeat(MARGIN), text);
  }

  /** A note in one line, with all its places. */
  String words(Note note) {
    return words(note, note.places());
  }

  /** The same with some of its places. */
  String words(Note note, List<Place> places) {
    List<String> parts = new ArrayList<>();
    for (Place place : places) {
      parts.add(place.locator().printed() + " (" + doing(place) + ")");
    }
    String names = "";
    for (Naming naming : note.namings()) {
      names += (names.isEmpty() ? "" : ", ") + words(naming);
    }
    StringBuilder words = new StringBuilder(String.join(", ", parts)).append(", ").append(names);
    for (Claim claim : note.claims()) {
      String kind = claim.kind().code().replace('-', ' ');
      words.append("; ").append(kind).append(" “").append(claim.words()).append("”");
    }
    return words.toString();
  }

  private static String doing(Place place) {
    String doing =
        place.stance() == Place.Stance.PICTURES
            ? place.medium().code()
            : place.stance().code().replace('-', ' ');
    boolean picture = place.medium().isPicture() && place.stance() != Place.Stance.PICTURES;
    boolean caption = place.medium() == Place.Medium.CAPTION;
    return doing + (picture || caption ? ", " + place.medium().code() : "");
  }

  private String words(Naming naming) {
    String printed = naming.printed().isBlank() ? "unnamed" : "“" + naming.printed() + "”";
    return naming
        .concept()
        .map(id -> printed + meaning(naming.printed(), id))
        .orElse(printed + ", meaning left open");
  }

  private String meaning(String printed, String id) {
    String label = shelf.thesaurus().label(id);
    boolean same = shelf.thesaurus().areSameWords(label, printed);
    return same ? " (" + id + ")" : " = " + label + " (" + id + ")";
  }

  /** What a term that was left open may mean. */
  private void open(Naming naming, Optional<String> facet) {
    if (naming.concept().isPresent() || naming.printed().isBlank()) {
      return;
    }
    TermChoice meaning = TermChoice.of(shelf, naming.printed(), facet);
    List<String> maybe = new ArrayList<>();
    for (Choice choice : meaning.mustChoose() ? meaning.choices() : meaning.maybe()) {
      maybe.add(choice.label() + " (" + choice.concept() + ")");
    }
    if (meaning.naming().concept().isPresent()) {
      return; // left open though the word is known, as was asked for
    }
    if (meaning.mustChoose()) {
      item("“" + naming.printed() + "” may mean " + String.join(", ", maybe) + ".");
      return;
    }
    item(
        "No word of the vocabulary is “"
            + naming.printed()
            + "”"
            + (maybe.isEmpty() ? "." : "; it may mean " + String.join(", ", maybe) + "."));
  }
}
