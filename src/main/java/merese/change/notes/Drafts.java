package merese.change.notes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.notes.TypedNote.Doing;
import merese.change.notes.TypedNote.TypedClaim;
import merese.change.notes.TypedNote.Where;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Corrected;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;

/** Makes notes of what was typed. */
final class Drafts {
  /** Stands for the id that a note gets when it is written. */
  static final String NO_ID = "new";

  /**
   * The words before a claim that take something back from it, the longest first; common practice,
   * no source.
   */
  private static final List<String> HEDGES =
      List.of(
          "almost wholly",
          "almost always",
          "said to be",
          "generally",
          "perhaps",
          "possibly",
          "probably",
          "chiefly",
          "usually",
          "mostly",
          "mainly",
          "wholly",
          "often",
          "only");

  private static final List<String> METHODS = List.of("applied", "cut", "blown", "pressed");

  private Drafts() {}

  /**
   * @throws ChangeRefusedException where what was typed contradicts itself
   * @throws LocatorException where a place cannot be read
   */
  static Note note(TypedNote typed, LocalDate today) {
    typed.namings().forEach(naming -> requireOneLine(naming.printed()));
    try {
      return new Note(
          NO_ID,
          typed.namings(),
          places(typed.where()),
          typed.claims().stream().map(Drafts::claim).toList(),
          typed.quotation(),
          typed.reading(),
          typed.part(),
          typed.object(),
          Optional.empty(),
          Optional.of(new Note.Checked(typed.by(), Optional.of(today))));
    } catch (IllegalArgumentException e) {
      if (e instanceof LocatorException) {
        throw e;
      }
      throw ChangeRefusedException.of(e);
    }
  }

  private static void requireOneLine(String term) {
    for (int i = 0; i < term.length(); i++) {
      char c = term.charAt(i);
      if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
        String after = i == 0 ? " at its begin" : " after “" + term.substring(0, i) + "”";
        throw new ChangeRefusedException(
            "the term has " + named(c) + after + "; type it as printed, in one line");
      }
    }
  }

  private static String named(char control) {
    return switch (control) {
      case '\n', '\r', '\u0085', '\u2028', '\u2029' -> "a line break";
      case '\t' -> "a tab";
      default -> "a control character (" + Integer.toHexString(control) + " hexadecimal)";
    };
  }

  private static List<Place> places(Where where) {
    List<Place> places = new ArrayList<>();
    places.add(place(where, where.locator(), where.doing().stance(), where.doing().medium()));
    for (String locator : where.inPictures()) {
      places.add(place(where, locator, Stance.PICTURES, Medium.PHOTO));
    }
    for (String locator : where.inText()) {
      places.add(place(where, locator, Stance.NAMES, Medium.TEXT));
    }
    if (where.shows().isPresent() && places.stream().noneMatch(p -> p.medium().isPicture())) {
      throw new ChangeRefusedException(
          "what a picture shows was given, but no place is a picture; say --pictured or --drawing");
    }
    return places;
  }

  private static Place place(Where where, String locator, Stance stance, Medium medium) {
    boolean picture = medium.isPicture();
    Optional<Shows> shows = picture ? where.shows() : Optional.empty();
    Optional<Corrected> corrects =
        stance == Stance.CORRECTS ? where.corrects().map(Drafts::corrected) : Optional.empty();
    return new Place(
        Locator.parse(locator.strip()),
        stance,
        medium,
        picture && shows.isEmpty() && stance != Stance.LISTS ? Optional.of(Shows.EXAMPLE) : shows,
        Optional.empty(),
        picture ? where.picture() : Optional.empty(),
        where.piece(),
        corrects);
  }

  private static Corrected corrected(String typed) {
    int colon = typed.indexOf(':');
    return colon < 0
        ? new Corrected(typed.strip(), Optional.empty())
        : new Corrected(
            typed.substring(0, colon).strip(),
            Optional.of(Locator.parse(typed.substring(colon + 1).strip())));
  }

  private static Claim claim(TypedClaim typed) {
    String words = typed.words().strip();
    Optional<String> hedge = hedge(words);
    boolean isMethod = typed.kind() == Claim.Kind.METHOD && METHODS.contains(words);
    return new Claim(
        typed.kind(),
        words,
        isMethod ? Optional.of(words) : Optional.empty(),
        hedge,
        Optional.empty(),
        typed.kind() == Claim.Kind.COPY_WARNING ? Claim.About.COPIES : typed.about(),
        Optional.empty());
  }

  /** As printed, so with its capitals. */
  private static Optional<String> hedge(String words) {
    for (String hedge : HEDGES) {
      boolean starts = words.regionMatches(true, 0, hedge, 0, hedge.length());
      if (starts && words.length() > hedge.length() && words.charAt(hedge.length()) == ' ') {
        return Optional.of(words.substring(0, hedge.length()));
      }
    }
    return Optional.empty();
  }

  /** The same note with an id. */
  static Note withId(Note note, String id) {
    return new Note(
        id,
        note.namings(),
        note.places(),
        note.claims(),
        note.quotation(),
        note.reading(),
        note.part(),
        note.object(),
        note.rights(),
        note.checked());
  }

  static boolean lists(Doing doing) {
    return doing.stance() == Stance.LISTS;
  }
}
