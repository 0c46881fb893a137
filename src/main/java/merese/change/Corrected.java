package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.Effect.Sort;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;

/** What corrections correct, after an edition has another key. */
final class Corrected {
  private Corrected() {}

  /** A work's corrections, of the kept edition where they were of one that goes. */
  static Work following(Work work, List<String> gone, String kept, List<Effect> effects) {
    List<Edition> editions = new ArrayList<>();
    for (Edition edition : work.editions()) {
      List<Note> notes = new ArrayList<>();
      for (Note note : edition.notes()) {
        Note now = following(note, gone, kept);
        notes.add(now);
        if (!now.equals(note)) {
          effects.add(
              new Effect(
                  Sort.FOLLOWS, edition.key() + ", " + note.id() + ": correction of " + kept));
        }
      }
      editions.add(notes.equals(edition.notes()) ? edition : edition.withNotes(notes));
    }
    return work.withEditions(editions);
  }

  private static Note following(Note note, List<String> gone, String kept) {
    List<Place> places = new ArrayList<>();
    for (Place place : note.places()) {
      boolean follows = place.corrects().filter(c -> gone.contains(c.edition())).isPresent();
      places.add(
          follows
              ? place.withCorrects(
                  Optional.of(
                      new Place.Corrected(kept, place.corrects().flatMap(c -> c.locator()))))
              : place);
    }
    return places.equals(note.places()) ? note : note.withPlaces(places);
  }
}
