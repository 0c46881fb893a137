package merese.desk.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.Sitting;
import merese.change.notes.TypedNote;
import merese.change.notes.TypedNote.Doing;
import merese.change.notes.TypedNote.TypedClaim;
import merese.desk.web.Typed;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.Naming;
import merese.model.Note.ObjectLink;
import merese.model.Place.Shows;

/** Reads a note from the fields of its form. */
final class NoteForm {
  /** What a place may do, as the form words it. */
  enum Does {
    NAMES("names", "names it in the text", Doing.NAMES),
    PHOTO("photo", "shows a photograph", Doing.PHOTO),
    DRAWING("drawing", "shows a drawing", Doing.DRAWING),
    CAPTION("caption", "names it in a caption", Doing.CAPTION),
    DEFINES("defines", "says what it means", Doing.DEFINES),
    NOT_SHOWN("not-shown", "says it is not shown", Doing.SAYS_NOT_SHOWN),
    CORRECTS("corrects", "corrects another source", Doing.CORRECTS);

    private final String code;
    private final String words;
    private final Doing doing;

    Does(String code, String words, Doing doing) {
      this.code = code;
      this.words = words;
      this.doing = doing;
    }
  }

  private final Typed typed;

  NoteForm(Typed typed) {
    this.typed = typed;
  }

  static List<NotePage.Option> does() {
    List<NotePage.Option> options = new ArrayList<>();
    for (Does each : Does.values()) {
      options.add(new NotePage.Option(each.code, each.words));
    }
    return options;
  }

  /**
   * A form with a claim for each field that has words.
   *
   * @param naming the term with its meaning
   */
  TypedNote note(Sitting sitting, Naming naming) {
    Locator at = place(sitting, "at", typed.get("at"));
    TypedNote.Where where =
        new TypedNote.Where(
            at.printed(),
            doing(naming),
            shows(),
            places(sitting, "texts"),
            places(sitting, "plates"),
            given("picture"),
            given("piece"),
            corrects());
    return new TypedNote(
        List.of(naming),
        where,
        claims(),
        given("text"),
        given("reading"),
        given("part"),
        object(),
        given("by").orElseThrow(() -> new WrongFieldException("by", "who notes? Type a name")));
  }

  /** What stands in a field; empty where nothing does. */
  Optional<String> given(String field) {
    String text = typed.get(field).strip().replace("\r\n", "\n");
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /**
   * The term as printed.
   *
   * @return "" where it was said that the place has no name for it
   */
  String term() {
    String term = typed.get("term").strip();
    boolean unnamed = typed.has("unnamed");
    if (term.isEmpty() && !unnamed) {
      throw new WrongFieldException(
          "term",
          "what is it called there? Type the term as printed, or tick “no name is printed there”"
              + " under More");
    } else if (!term.isEmpty() && unnamed) {
      throw new WrongFieldException(
          "term",
          "a term is typed, and “no name is printed there” is ticked under More; take one away");
    }
    return term;
  }

  static Locator place(Sitting sitting, String field, String text) {
    try {
      return sitting.place(text);
    } catch (LocatorException e) {
      throw new WrongFieldException(field, e.getMessage());
    }
  }

  /** One a line. */
  private List<String> places(Sitting sitting, String field) {
    List<String> places = new ArrayList<>();
    for (String line : lines(field)) {
      places.add(place(sitting, field, line).printed());
    }
    return places;
  }

  private List<String> lines(String field) {
    return typed.get(field).lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
  }

  private Doing doing(Naming naming) {
    String code = typed.has("does") ? typed.get("does") : Does.NAMES.code;
    for (Does each : Does.values()) {
      if (each.code.equals(code)) {
        boolean unnamed = each == Does.NAMES && naming.printed().isEmpty();
        return unnamed ? Doing.DESCRIBES_UNNAMED : each.doing;
      }
    }
    throw new WrongFieldException("does", "a place does not do \"" + code + "\"");
  }

  private Optional<Shows> shows() {
    if (given("shows").isEmpty()) {
      return Optional.empty();
    }
    boolean picture =
        typed.is("does", Does.PHOTO.code)
            || typed.is("does", Does.DRAWING.code)
            || !lines("plates").isEmpty();
    if (!picture) {
      throw new WrongFieldException(
          "shows", "what a picture shows is said, but no place is a picture; say above that it is");
    }
    return Optional.of(Codes.of(Shows.values(), typed.get("shows"), "shows"));
  }

  private Optional<String> corrects() {
    Optional<String> corrected = given("corrects");
    boolean corrects = typed.is("does", Does.CORRECTS.code);
    if (corrected.isPresent() && !corrects) {
      throw new WrongFieldException(
          "corrects", "say above, under “What it does there”, that it corrects another source");
    }
    if (corrects && corrected.isEmpty()) {
      throw new WrongFieldException(
          "corrects", "which source does it correct? Name it, as in quenby-1926:p. 41");
    }
    if (corrected.isPresent()) {
      int colon = corrected.get().indexOf(':');
      if (colon >= 0) {
        try {
          Locator.parse(corrected.get().substring(colon + 1).strip());
        } catch (LocatorException e) {
          throw new WrongFieldException("corrects", e.getMessage());
        }
      }
    }
    return corrected;
  }

  /** The field of each kind of claim. */
  static String field(Claim.Kind kind) {
    return "claim-" + kind.code();
  }

  private List<TypedClaim> claims() {
    Claim.About about =
        given("about")
            .map(code -> Codes.of(Claim.About.values(), code, "about"))
            .orElse(Claim.About.FEATURE);
    List<TypedClaim> claims = new ArrayList<>();
    for (Claim.Kind kind : Claim.Kind.values()) {
      for (String words : lines(field(kind))) {
        claims.add(new TypedClaim(kind, words, about));
      }
    }
    return claims;
  }

  private Optional<ObjectLink> object() {
    Optional<String> ref = given("object");
    Optional<String> same = given("same");
    if (ref.isEmpty()) {
      if (same.isPresent()) {
        throw new WrongFieldException("object", "which piece of yours is it? Choose it");
      }
      return Optional.empty();
    }
    ObjectLink.Sameness sameness =
        same.isPresent() ? ObjectLink.Sameness.SAME : ObjectLink.Sameness.SIMILAR;
    return Optional.of(new ObjectLink(ref.get(), sameness, same));
  }
}
