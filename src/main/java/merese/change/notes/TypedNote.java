package merese.change.notes;

import java.util.List;
import java.util.Optional;
import merese.model.Claim;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;

/**
 * What somebody typed of one place in a source.
 *
 * @param namings at least one; a printed term of blanks is as none
 * @param quotation the source's words
 * @param reading what the user makes of them
 * @param by who took the note
 */
public record TypedNote(
    List<Naming> namings,
    Where where,
    List<TypedClaim> claims,
    Optional<String> quotation,
    Optional<String> reading,
    Optional<String> part,
    Optional<Note.ObjectLink> object,
    String by) {

  public TypedNote {
    namings = namings.stream().map(TypedNote::withoutBlanks).toList();
    claims = List.copyOf(claims);
  }

  private static Naming withoutBlanks(Naming naming) {
    return naming.printed().isBlank() ? new Naming("", naming.concept(), naming.why()) : naming;
  }

  /**
   * The places of a note.
   *
   * @param locator as typed
   * @param shows what a picture shows; for the pictures among the places
   * @param inText further places, in words
   * @param inPictures further places, in pictures
   * @param picture an id of the same picture in any edition
   * @param piece an id of the piece that all the places speak of
   * @param corrects the key of the edition that is corrected, with the place in it after a colon
   */
  public record Where(
      String locator,
      Doing doing,
      Optional<Place.Shows> shows,
      List<String> inText,
      List<String> inPictures,
      Optional<String> picture,
      Optional<String> piece,
      Optional<String> corrects) {
    public Where {
      inText = List.copyOf(inText);
      inPictures = List.copyOf(inPictures);
    }
  }

  /** What a source does at a place. */
  public enum Doing {
    NAMES(Place.Stance.NAMES, Place.Medium.TEXT),
    DEFINES(Place.Stance.DEFINES, Place.Medium.TEXT),
    DESCRIBES_UNNAMED(Place.Stance.DESCRIBES_UNNAMED, Place.Medium.TEXT),
    CAPTION(Place.Stance.NAMES, Place.Medium.CAPTION),
    PHOTO(Place.Stance.PICTURES, Place.Medium.PHOTO),
    DRAWING(Place.Stance.PICTURES, Place.Medium.DRAWING),
    SAYS_NOT_SHOWN(Place.Stance.SAYS_ABSENT, Place.Medium.TEXT),
    CORRECTS(Place.Stance.CORRECTS, Place.Medium.TEXT),
    LISTS(Place.Stance.LISTS, Place.Medium.TEXT),
    LISTS_WITH_PHOTOS(Place.Stance.LISTS, Place.Medium.PHOTO),
    LISTS_WITH_DRAWINGS(Place.Stance.LISTS, Place.Medium.DRAWING);

    private final Place.Stance stance;
    private final Place.Medium medium;

    Doing(Place.Stance stance, Place.Medium medium) {
      this.stance = stance;
      this.medium = medium;
    }

    Place.Stance stance() {
      return stance;
    }

    public Place.Medium medium() {
      return medium;
    }
  }

  /**
   * What the source asserts.
   *
   * @param words as printed
   */
  public record TypedClaim(Claim.Kind kind, String words, Claim.About about) {}
}
