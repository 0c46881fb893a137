package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.CaptionConflict;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.shelf.Shelf;
import merese.vocabulary.Thesaurus;

/**
 * Holds captions against what the text of the same source says of the same piece.
 *
 * <p>A wording means the concept that the note gives it from the text; else what the vocabulary
 * knows it for; else what the user reads it as. Two wordings disagree where no meaning of one is
 * the same as, broader or narrower than a meaning of the other.
 */
final class Captions {
  private final Shelf shelf;
  private final Thesaurus thesaurus;

  Captions(Shelf shelf) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
  }

  private record Wording(Naming naming, Place place) {}

  /** The disagreements among the notes of one source. */
  List<CaptionConflict> conflicts(Collection<Note> notes) {
    List<Wording> texts = new ArrayList<>();
    for (Note note : notes) {
      texts.addAll(wordings(note, Medium.TEXT));
    }
    Map<String, CaptionConflict> found = new LinkedHashMap<>();
    for (Note note : notes) {
      for (Wording caption : wordings(note, Medium.CAPTION)) {
        for (CaptionConflict conflict : conflicts(caption, texts)) {
          found.putIfAbsent(key(conflict), conflict);
        }
      }
    }
    return List.copyOf(found.values());
  }

  private static String key(CaptionConflict conflict) {
    return conflict.caption()
        + '\n'
        + conflict.captionAt()
        + '\n'
        + (conflict.text().isPresent()
            ? conflict.text().get() + "\n" + conflict.words().get()
            : "");
  }

  private List<CaptionConflict> conflicts(Wording caption, List<Wording> texts) {
    List<CaptionConflict> conflicts = new ArrayList<>();
    for (Wording text : texts) {
      if (text.place().piece().isPresent()
          && text.place().piece().equals(caption.place().piece())
          && disagree(caption, text)) {
        conflicts.add(
            new CaptionConflict(
                caption.naming().printed(),
                caption.place().locator(),
                Optional.of(text.naming().printed()),
                Optional.of(text.place().locator())));
      }
    }
    if (conflicts.isEmpty() && contradictsReading(caption.naming())) {
      conflicts.add(
          new CaptionConflict(
              caption.naming().printed(),
              caption.place().locator(),
              Optional.empty(),
              Optional.empty()));
    }
    return conflicts;
  }

  private static List<Wording> wordings(Note note, Medium medium) {
    List<Wording> found = new ArrayList<>();
    for (Naming naming : note.namings()) {
      if (!naming.printed().isEmpty()) {
        for (Place place : note.placesOf(naming)) {
          if (place.medium() == medium) {
            found.add(new Wording(naming, place));
          }
        }
      }
    }
    return found;
  }

  private boolean disagree(Wording caption, Wording text) {
    return !caption.naming().printed().equals(text.naming().printed())
        && areIncompatible(meanings(caption.naming()), meanings(text.naming()));
  }

  private boolean contradictsReading(Naming naming) {
    return naming.why().isPresent()
        && naming.why().get() != Why.TEXT
        && areIncompatible(ordinaryMeanings(naming), Set.of(naming.concept().get()));
  }

  private Set<String> meanings(Naming naming) {
    if (naming.why().isPresent() && naming.why().get() == Why.TEXT) {
      return Set.of(naming.concept().get());
    }
    Set<String> ordinary = ordinaryMeanings(naming);
    if (!ordinary.isEmpty() || naming.concept().isEmpty()) {
      return ordinary;
    }
    return Set.of(naming.concept().get());
  }

  private Set<String> ordinaryMeanings(Naming naming) {
    return shelf.meanings(List.of(naming.printed())).get(naming.printed());
  }

  private boolean areIncompatible(Set<String> some, Set<String> others) {
    if (some.isEmpty() || others.isEmpty()) {
      return false;
    }
    for (String one : some) {
      for (String other : others) {
        if (thesaurus.areRelatedByHierarchy(one, other)) {
          return false;
        }
      }
    }
    return true;
  }
}
