package merese.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one passage or picture of one edition says or shows.
 *
 * @param id unlike any other in its edition
 * @param namings at least one; the first is the one that counts in statistics
 * @param places at least one
 * @param quotation the source's words, unaltered; {@link QuotedText} says how the end of a page is
 *     marked in it
 * @param rights those in its pictures
 * @param reading what the user makes of it, kept apart from what the source says
 */
public record Note(
    String id,
    List<Naming> namings,
    List<Place> places,
    List<Claim> claims,
    Optional<String> quotation,
    Optional<String> reading,
    Optional<String> part,
    Optional<ObjectLink> object,
    Optional<PictureRights> rights,
    Optional<Checked> checked) {

  public Note {
    Require.text(id, "a note's id");
    Require.that(
        !namings.isEmpty(), "a note needs at least one naming; its printed term may be \"\"");
    Require.that(!places.isEmpty(), "a note needs at least one place");
    for (Place place : places) {
      if (place.naming().isPresent()) {
        requireNaming(place.naming().get(), namings);
      }
    }
    namings = List.copyOf(namings);
    places = List.copyOf(places);
    claims = List.copyOf(claims);
  }

  private static void requireNaming(String printed, List<Naming> namings) {
    for (Naming naming : namings) {
      if (naming.printed().equals(printed)) {
        return;
      }
    }
    throw new IllegalArgumentException(
        "a place speaks of the naming \"" + printed + "\", but the note has no naming printed so");
  }

  /** The same note under another id. */
  public Note withId(String other) {
    return new Note(
        other, namings, places, claims, quotation, reading, part, object, rights, checked);
  }

  /** The same note with other places. */
  public Note withPlaces(List<Place> others) {
    return new Note(id, namings, others, claims, quotation, reading, part, object, rights, checked);
  }

  /** The same note with another link to a piece of the user's own, or none. */
  public Note withObject(Optional<ObjectLink> other) {
    return new Note(id, namings, places, claims, quotation, reading, part, other, rights, checked);
  }

  /** The places that speak of a naming: those that name it and those that name none. */
  public List<Place> placesOf(Naming naming) {
    List<Place> found = new ArrayList<>();
    for (Place place : places) {
      if (place.naming().isEmpty() || place.naming().get().equals(naming.printed())) {
        found.add(place);
      }
    }
    return found;
  }

  /** Who made or verified the note, and when. */
  public record Checked(String by, Optional<LocalDate> on) {
    public Checked {
      Require.text(by, "who checked a note");
    }
  }

  /**
   * That the piece in the note is, or is like, one of the user's own.
   *
   * @param ref the object's reference
   * @param evidence why; required before anything is called the same piece
   */
  public record ObjectLink(String ref, Sameness sameness, Optional<String> evidence) {
    /** Whether it is the piece itself or one of its kind. */
    public enum Sameness implements Coded {
      SAME,
      SIMILAR
    }

    public ObjectLink {
      Require.text(ref, "an object's reference");
      Require.that(
          sameness != Sameness.SAME || evidence.isPresent(),
          "\"same\" needs its evidence; without any, write \"similar\"");
    }
  }
}
