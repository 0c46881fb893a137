package merese.answer.pull;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.model.Locator;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * What is to be seen at one place of a source, or on one piece of the user's own.
 *
 * @param printed the terms as printed there; none of a piece
 * @param pointAt what to point at
 * @param turn which way to turn a piece
 * @param photographs the user's own, of that place or piece
 */
public record Visible(
    List<ConceptLine> concepts,
    List<String> printed,
    List<String> pointAt,
    Optional<String> turn,
    List<Photograph> photographs) {

  /**
   * A photograph.
   *
   * @param at the place it is of, as printed, or the photograph's id on a piece
   * @param file below the library's folder of pictures, with "/" between names
   */
  public record Photograph(String at, String file) {}

  /** What the notes know of a place. */
  public static Visible at(Shelf shelf, Source source, Locator locator) {
    Need need = new Need(Optional.of(locator));
    SourceNotes notes = new SourceNotes(shelf);
    notes.describe(source, need);
    Set<Photograph> photographs = new LinkedHashSet<>();
    for (Note note : notes.of(source)) {
      for (Place place : note.places()) {
        if (place.photo().isPresent() && Places.holds(locator, place.locator())) {
          photographs.add(new Photograph(place.locator().printed(), place.photo().get()));
        }
      }
    }
    return of(need, List.copyOf(photographs));
  }

  /**
   * What a piece shows.
   *
   * @param rest "photo p3" for that one alone, or words for what is to be shown; may be empty
   */
  public static Visible of(Shelf shelf, OwnObject object, String rest) {
    List<Photograph> all = new ArrayList<>();
    List<Photograph> named = new ArrayList<>();
    for (OwnObject.Photograph each : object.photographs()) {
      Photograph photograph = new Photograph(each.id(), each.file());
      all.add(photograph);
      if (rest.equals(Pieces.PHOTO + each.id())) {
        named.add(photograph);
      }
    }
    return of(Pieces.named(shelf, object, rest).need(), named.isEmpty() ? all : named);
  }

  private static Visible of(Need need, List<Photograph> photographs) {
    return new Visible(
        List.copyOf(need.concepts.values()),
        List.copyOf(need.printed),
        List.copyOf(need.pointAt),
        need.turn,
        photographs);
  }
}
