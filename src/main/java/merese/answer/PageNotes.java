package merese.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.SourcedNote;
import merese.shelf.SourcedPage;
import merese.vocabulary.NameOnPage;
import merese.vocabulary.Thesaurus;

/**
 * Which words on pages are noted: a note of the same source is at that very page, or at something
 * on it, and has the words, or a concept that they are a name of.
 */
final class PageNotes {
  private final Thesaurus thesaurus;
  private final Map<String, List<Note>> bySource = new HashMap<>();

  PageNotes(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  void add(SourcedNote sourced) {
    List<Note> known = bySource.get(sourced.source().key());
    if (known == null) {
      known = new ArrayList<>();
      bySource.put(sourced.source().key(), known);
    }
    known.add(sourced.note());
  }

  /** By source, what an index has of all places that the notes' places are in. */
  Map<String, Set<String>> around() {
    Map<String, Set<String>> around = new HashMap<>();
    for (Map.Entry<String, List<Note>> source : bySource.entrySet()) {
      Set<String> keys = new HashSet<>();
      for (Note note : source.getValue()) {
        for (Place place : note.places()) {
          keys.addAll(place.locator().keysAround());
        }
      }
      around.put(source.getKey(), keys);
    }
    return around;
  }

  boolean have(SourcedPage page, NameOnPage name) {
    if (page.locator().isEmpty()) {
      return false;
    }
    for (Note note : at(page.source().key(), page.locator().get())) {
      for (Naming naming : note.namings()) {
        if (naming.concept().isPresent() && name.concepts().contains(naming.concept().get())
            || thesaurus.areSameWords(naming.printed(), name.words())) {
          return true;
        }
      }
    }
    return false;
  }

  /** The notes that are at a page or at something on it. */
  List<Note> at(String source, Locator page) {
    List<Note> at = new ArrayList<>();
    List<Note> known = bySource.get(source);
    if (known != null) {
      for (Note note : known) {
        for (Place place : note.places()) {
          if (place.locator().isPartlyIn(page)) {
            at.add(note);
            break;
          }
        }
      }
    }
    return at;
  }
}
