package merese.answer.pull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.pull.Pull.Others;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** What the notes of a source say of a place in it. A denial (R3) says nothing here. */
final class SourceNotes {
  private final Shelf shelf;
  private final Map<Source, List<Note>> known = new HashMap<>();

  SourceNotes(Shelf shelf) {
    this.shelf = shelf;
  }

  List<Note> of(Source source) {
    return known.computeIfAbsent(
        source, s -> shelf.notesOf(s).stream().map(SourcedNote::note).toList());
  }

  /** Fills in what the notes know of the place that is needed. */
  void describe(Source source, Need need) {
    if (need.locator.isEmpty()) {
      return;
    }
    boolean any = need.concepts.isEmpty();
    boolean exactly = isNoted(source, need.locator.get());
    Set<String> pieces = new LinkedHashSet<>();
    for (Note note : of(source)) {
      for (Naming naming : note.namings()) {
        boolean wanted = any || naming.concept().filter(need.concepts::containsKey).isPresent();
        for (Place place : note.placesOf(naming)) {
          if (wanted && isAt(need.locator.get(), place, exactly)) {
            describe(need, note, naming, place, any);
            place.piece().ifPresent(pieces::add);
          }
        }
      }
    }
    need.others = others(source, need.locator.get(), pieces);
  }

  private void describe(Need need, Note note, Naming naming, Place place, boolean any) {
    if (any && naming.concept().isPresent()) {
      String id = naming.concept().get();
      need.addConcepts(List.of(new ConceptLine(id, shelf.thesaurus().label(id))));
    }
    if (!naming.printed().isEmpty()) {
      need.printed.add(naming.printed());
    }
    need.pictured |= place.isPictured();
    Optional<String> part = Places.pointAt(place.locator());
    if (part.isPresent() && !need.pointAt.contains(part.get())) {
      need.pointAt.add(part.get());
    }
    if (any && place.isPictured()) {
      for (Place other : note.placesOf(naming)) {
        boolean samePiece = other.piece().isEmpty() || other.piece().equals(place.piece());
        if (!other.medium().isPicture()
            && samePiece
            && PlaceTest.COVERS.holds(other)
            && !Places.holds(need.locator.orElseThrow(), other.locator())) {
          need.texts.add(other.locator());
        }
      }
    }
  }

  /** Whether some note is of just this place; then those of what is inside it are left alone. */
  private boolean isNoted(Source source, Locator asked) {
    for (Note note : of(source)) {
      for (Place place : note.places()) {
        if (isAt(asked, place, true)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isAt(Locator asked, Place place, boolean exactly) {
    return PlaceTest.COVERS.holds(place)
        && Places.holds(asked, place.locator())
        && (!exactly || Places.areOneDepth(asked, place.locator()));
  }

  /** The pieces that are pictured there beside those meant. */
  private Optional<Others> others(Source source, Locator locator, Set<String> meant) {
    Set<String> pieces = new LinkedHashSet<>();
    Set<String> called = new LinkedHashSet<>();
    for (Note note : of(source)) {
      for (Naming naming : note.namings()) {
        for (Place place : note.placesOf(naming)) {
          if (place.isPictured()
              && place.piece().isPresent()
              && !meant.contains(place.piece().get())
              && Places.holds(locator, place.locator())) {
            pieces.add(place.piece().get());
            if (!naming.printed().isEmpty()) {
              called.add(naming.printed());
            }
          }
        }
      }
    }
    return meant.isEmpty() || pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(new Others(pieces.size(), List.copyOf(called)));
  }

  /** The ids of the pictures at a place. */
  Set<String> pictures(Source source, Locator locator) {
    Set<String> ids = new LinkedHashSet<>();
    for (Note note : of(source)) {
      for (Place place : note.places()) {
        if (place.isPictured() && isAt(locator, place, false)) {
          place.picture().ifPresent(ids::add);
        }
      }
    }
    return ids;
  }

  /** Where a source has one of these pictures, in physical order. */
  List<Locator> whereIs(Source source, Set<String> pictures) {
    List<Locator> found = new ArrayList<>();
    for (Note note : of(source)) {
      for (Place place : note.places()) {
        if (place.isPictured() && place.picture().filter(pictures::contains).isPresent()) {
          found.add(place.locator());
        }
      }
    }
    found.sort(null);
    return found;
  }
}
