package merese.change.notes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.checks.ArticlePages;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TermChoice.Choice;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.Lexicon;
import merese.shelf.WritingShelf;
import merese.vocabulary.Thesaurus;

/** A note in words, and what of it may be worth a second look. */
public final class NoteWords {
  private final Lexicon lexicon;

  public NoteWords(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** A note in one line, with all its places. */
  public String words(Note note) {
    return words(note, note.places());
  }

  /** The same with some of its places. */
  public String words(Note note, List<Place> places) {
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
    Thesaurus thesaurus = lexicon.thesaurus();
    String label = thesaurus.label(id);
    boolean same = thesaurus.areSameWords(label, printed);
    return same ? " (" + id + ")" : " = " + label + " (" + id + ")";
  }

  /** The concept whose id, and no label, was typed for a term: most likely by mistake. */
  public Optional<Choice> typedId(Naming naming, Optional<String> facet) {
    Thesaurus thesaurus = lexicon.thesaurus();
    String printed = naming.printed();
    if (naming.concept().isPresent() || thesaurus.concept(printed).isEmpty()) {
      return Optional.empty();
    }
    TermChoice meaning = TermChoice.of(lexicon, printed, facet);
    return meaning.mustChoose() || meaning.naming().concept().isPresent()
        ? Optional.empty()
        : Optional.of(Choice.of(thesaurus, printed));
  }

  /**
   * What a term that was left open may mean; empty where nothing is to be said of it.
   *
   * @param facet the heading that the term stands under
   */
  public Optional<String> open(Naming naming, Optional<String> facet) {
    boolean said = naming.concept().isPresent() || typedId(naming, facet).isPresent();
    if (said || naming.printed().isBlank()) {
      return Optional.empty();
    }
    TermChoice meaning = TermChoice.of(lexicon, naming.printed(), facet);
    List<String> maybe = new ArrayList<>();
    for (Choice choice : meaning.mustChoose() ? meaning.choices() : meaning.maybe()) {
      maybe.add(choice.label() + " (" + choice.concept() + ")");
    }
    if (meaning.naming().concept().isPresent()) {
      return Optional.empty(); // left open though the word is known, as was asked for
    }
    String words = String.join(", ", maybe);
    if (meaning.mustChoose()) {
      return Optional.of("“" + naming.printed() + "” may mean " + words + ".");
    }
    return Optional.of(
        "No word of the vocabulary is “"
            + naming.printed()
            + "”"
            + (maybe.isEmpty() ? "." : "; it may mean " + words + "."));
  }

  /** What is said of those of the places of a note that are not in the article that it is of. */
  public static List<String> outside(Edition edition, List<Place> places) {
    Optional<ArticlePages> article = ArticlePages.of(edition);
    Set<String> said = new LinkedHashSet<>();
    for (Place place : places) {
      article
          .flatMap(a -> a.outside(place.locator()))
          .ifPresent(
              what ->
                  said.add(
                      place.locator().printed() + " " + what + "; correct the one or the other."));
    }
    return List.copyOf(said);
  }

  /** The same of all places that were just taken. */
  public static List<String> outside(WritingShelf shelf, Taken taken) {
    Edition edition = NoteTaking.edition(shelf.read(taken.source()).value(), taken.source());
    return outside(edition, taken.notes().stream().flatMap(n -> n.places().stream()).toList());
  }

  /**
   * Whether a place that is noted as text usually is a picture. A caption or a denial is not
   * mistaken for one.
   */
  public static boolean mayBePicture(Place place) {
    return place.locator().usuallyPicture()
        && place.medium() == Place.Medium.TEXT
        && place.stance() == Place.Stance.NAMES;
  }
}
