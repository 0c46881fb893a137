package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.Group;
import merese.model.Naming;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.shelf.NoteSketch.About;
import merese.shelf.NoteSketch.Name;
import merese.shelf.SourcedNote;

/**
 * Puts each note into the first group that fits (R9): counted; says not shown; not this;
 * look-alike; general only; meaning not stated. Of a note that means what is asked for, each naming
 * that does is in the group of its own places.
 *
 * <p>A note on something broader is "general only" even where it uses the very words asked for: it
 * may well be this, so "not this" would deny what nobody denied.
 *
 * @param wanted the concept asked for and all that is narrower (R1)
 * @param broader all that is broader
 * @param lookAlikes what is mistaken for it
 * @param words the words for the concept, by which "not this" is told
 */
public record Classifier(
    Set<String> wanted, Set<String> broader, Set<String> lookAlikes, Words words) {

  /** A naming of a note, in the group that the note goes into. */
  public record Classified(SourcedNote sourced, Naming naming, Group group) {
    public List<Place> places() {
      return sourced.note().placesOf(naming);
    }
  }

  /**
   * A naming of a note that was not read whole, in its group.
   *
   * @param naming its number among those of the note
   */
  record InGroup(int naming, Name name, Group group) {}

  /** The namings that put the note into its group; none where the note is in no group. */
  List<InGroup> classify(About note) {
    List<InGroup> found = new ArrayList<>();
    Group first = null;
    for (int i = 0; i < note.namings().size(); i++) {
      Name name = note.namings().get(i);
      Group group = groupOf(note, name);
      if (group == null || first != null && order(group) > order(first)) {
        continue;
      }
      if (first != null && order(group) < order(first)) {
        found.clear();
      }
      first = group;
      found.add(new InGroup(i, name, group));
    }
    return found;
  }

  /** Of groups of the same order a note may be in several. */
  private static int order(Group group) {
    return Math.max(group.ordinal(), Group.SAYS_NOT_SHOWN.ordinal());
  }

  /** Null where the naming is in no group. */
  private Group groupOf(About note, Name naming) {
    Optional<String> concept = naming.concept();
    if (concept.isEmpty()) {
      return mayBeWanted(note, naming) ? Group.MEANING_NOT_STATED : null;
    } else if (wanted.contains(concept.get())) {
      return byPlaces(naming);
    } else if (!naming.passes(PlaceTest.PRESENT)) {
      return null; // that something else is not shown says nothing of this
    } else if (broader.contains(concept.get())) {
      return Group.GENERAL_ONLY;
    } else if (words.occurIn(naming.printed())) {
      return Group.NOT_THIS;
    }
    return lookAlikes.contains(concept.get()) ? Group.LOOK_ALIKES : null;
  }

  private boolean mayBeWanted(About note, Name naming) {
    for (String concept : note.mayMean().getOrDefault(naming.printed(), List.of())) {
      if (wanted.contains(concept)) {
        return true;
      }
    }
    return false;
  }

  private static Group byPlaces(Name naming) {
    if (naming.passes(PlaceTest.COVERS)) {
      return Group.COUNTED;
    } else if (naming.passes(PlaceTest.PROCESS)) {
      return Group.HOW_IT_IS_MADE;
    }
    return naming.passes(PlaceTest.ABSENCE) ? Group.SAYS_NOT_SHOWN : null;
  }
}
