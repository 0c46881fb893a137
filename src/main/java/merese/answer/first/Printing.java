package merese.answer.first;

import java.util.ArrayList;
import java.util.List;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.PlaceTest;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** A term in print: a naming of a note. */
record Printing(SourcedNote sourced, Naming naming) {
  Source source() {
    return sourced.source();
  }

  /** Whether it is only there to say that the thing is not shown. */
  boolean isOnlyDenied() {
    return !PlaceTest.PRESENT.holdsForAny(sourced.note().placesOf(naming));
  }

  /** Where the word stands: in text and captions, or where nothing is known of these, anywhere. */
  List<Locator> locators() {
    List<Locator> inWords = new ArrayList<>();
    List<Locator> all = new ArrayList<>();
    boolean denied = isOnlyDenied();
    for (Place place : sourced.note().placesOf(naming)) {
      if (denied || PlaceTest.PRESENT.holds(place)) {
        all.add(place.locator());
        if (place.medium() == Medium.TEXT || place.medium() == Medium.CAPTION) {
          inWords.add(place.locator());
        }
      }
    }
    return inWords.isEmpty() ? all : inWords;
  }
}
