package merese.answer.concordance;

import java.util.Comparator;
import java.util.List;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Group;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/**
 * One naming of a note, under a concept that was asked about.
 *
 * @param concept the one asked about, which is the naming's or broader
 */
record Use(SourcedNote sourced, Naming naming, String concept) {
  /** By source and then by where the note begins; of one place, by what it prints. */
  static final Comparator<Use> IN_ORDER =
      (a, b) -> {
        int sources = Source.BY_YEAR.compare(a.source(), b.source());
        int places = sources != 0 ? sources : a.firstPlace().compareTo(b.firstPlace());
        return places != 0 ? places : a.naming.printed().compareTo(b.naming.printed());
      };

  Source source() {
    return sourced.source();
  }

  List<Place> places() {
    return sourced.note().placesOf(naming);
  }

  boolean has(PlaceTest test) {
    return test.holdsForAny(places());
  }

  boolean isExact() {
    return naming.means(concept);
  }

  /** Whether it counts in statistics: the note's first naming, of just this concept, in words. */
  boolean counts() {
    return isExact()
        && !naming.printed().isBlank()
        && sourced.note().namings().get(0).equals(naming);
  }

  Classified classified() {
    return new Classified(sourced, naming, Group.COUNTED);
  }

  private Locator firstPlace() {
    Locator first = null;
    for (Place place : sourced.note().places()) {
      if (first == null || place.locator().compareTo(first) < 0) {
        first = place.locator();
      }
    }
    return first;
  }
}
