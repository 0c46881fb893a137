package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.CaptionConflict;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.vocabulary.Thesaurus;

/**
 * Holds captions against what the text of the same source says of the same piece.
 *
 * <p>A wording means the concept that the note gives it from the text; else what the vocabulary
 * knows it for; else what the user reads it as. Two wordings disagree where no meaning of one is
 * the same as, broader or narrower than a meaning of the other.
 */
final class Captions {
  private final Thesaurus thesaurus;

  Captions(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  private record Wording(Note note, Naming naming, Place place) {}

  /** The disagreements among the notes of one source. */
  List<CaptionConflict> conflicts(Collection<Note> notes) {
    List<Wording> captions = wordings(notes, Medium.CAPTION);
    List<Wording> texts = wordings(notes, Medium.TEXT);
    Set<CaptionConflict> conflicts = new LinkedHashSet<>();
    for (Wording caption : captions) {
      List<Wording> against =
          texts.stream()
              .filter(t -> t.place().piece().isPresent())
              .filter(t -> t.place().piece().equals(caption.place().piece()))
              .filter(t -> disagree(caption, t))
              .toList();
      for (Wording text : against) {
        conflicts.add(
            new CaptionConflict(
                caption.naming().printed(),
                caption.place().locator(),
                Optional.of(text.naming().printed()),
                Optional.of(text.place().locator())));
      }
      if (against.isEmpty() && contradictsReading(caption)) {
        conflicts.add(
            new CaptionConflict(
                caption.naming().printed(),
                caption.place().locator(),
                Optional.empty(),
                Optional.empty()));
      }
    }
    return List.copyOf(conflicts);
  }

  private static List<Wording> wordings(Collection<Note> notes, Medium medium) {
    List<Wording> found = new ArrayList<>();
    for (Note note : notes) {
      for (Naming naming : note.namings()) {
        for (Place place : note.placesOf(naming)) {
          if (place.medium() == medium && !naming.printed().isEmpty()) {
            found.add(new Wording(note, naming, place));
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

  private boolean contradictsReading(Wording caption) {
    Naming naming = caption.naming();
    return naming.why().isPresent()
        && naming.why().get() != Why.TEXT
        && areIncompatible(ordinaryMeanings(naming), Set.of(naming.concept().get()));
  }

  private Set<String> meanings(Naming naming) {
    if (naming.why().isPresent() && naming.why().get() == Why.TEXT) {
      return Set.of(naming.concept().get());
    }
    Set<String> ordinary = ordinaryMeanings(naming);
    return ordinary.isEmpty() ? naming.concept().map(Set::of).orElse(Set.of()) : ordinary;
  }

  private Set<String> ordinaryMeanings(Naming naming) {
    return thesaurus.meaningsOf(naming.printed());
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
