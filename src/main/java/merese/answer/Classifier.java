package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import merese.answer.Coverage.Group;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Stance;
import merese.shelf.SourcedNote;

/**
 * Puts each note into the first group that fits (R9): counted; says not shown; not this;
 * look-alike; general only; meaning not stated.
 *
 * <p>A note on something broader is "general only" even where it uses the very words asked for: it
 * may well be this, so "not this" would deny what nobody denied.
 *
 * @param wanted the concept asked for and all that is narrower (R1)
 * @param broader all that is broader
 * @param lookAlikes what is mistaken for it
 * @param usesTheWords whether a printed term holds one of the words for the concept
 * @param mayMean whether an unassigned printed term may mean it
 */
record Classifier(
    Set<String> wanted,
    Set<String> broader,
    Set<String> lookAlikes,
    Predicate<String> usesTheWords,
    Predicate<String> mayMean) {

  /** A naming of a note, in the group that the note goes into. */
  record Classified(SourcedNote sourced, Naming naming, Group group) {
    List<Place> places() {
      return sourced.note().placesOf(naming);
    }
  }

  /** The namings that put the note into its group; none where the note is in no group. */
  List<Classified> classify(SourcedNote sourced) {
    List<Classified> all = new ArrayList<>();
    for (Naming naming : sourced.note().namings()) {
      groupOf(sourced.note(), naming)
          .ifPresent(group -> all.add(new Classified(sourced, naming, group)));
    }
    Optional<Group> first = all.stream().map(Classified::group).min(Group::compareTo);
    return all.stream().filter(c -> c.group() == first.orElseThrow()).toList();
  }

  private Optional<Group> groupOf(Note note, Naming naming) {
    if (naming.concept().isEmpty()) {
      return when(mayMean.test(naming.printed()), Group.MEANING_NOT_STATED);
    }
    String concept = naming.concept().get();
    if (wanted.contains(concept)) {
      return byPlaces(note.placesOf(naming));
    } else if (broader.contains(concept)) {
      return Optional.of(Group.GENERAL_ONLY);
    } else if (usesTheWords.test(naming.printed())) {
      return Optional.of(Group.NOT_THIS);
    }
    return when(lookAlikes.contains(concept), Group.LOOK_ALIKES);
  }

  private static Optional<Group> byPlaces(List<Place> places) {
    if (places.stream().anyMatch(Classifier::covers)) {
      return Optional.of(Group.COUNTED);
    } else if (places.stream().anyMatch(Place::showsProcess)) {
      return Optional.of(Group.HOW_IT_IS_MADE);
    }
    return when(places.stream().anyMatch(Classifier::isAbsence), Group.SAYS_NOT_SHOWN);
  }

  private static Optional<Group> when(boolean holds, Group group) {
    return holds ? Optional.of(group) : Optional.empty();
  }

  /** Whether a place is coverage: neither a denial (R3) nor a picture of how it is made. */
  static boolean covers(Place place) {
    return !isAbsence(place) && !place.showsProcess();
  }

  static boolean isAbsence(Place place) {
    return place.stance() == Stance.SAYS_ABSENT;
  }
}
