package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.model.WorkLink;

/** Works without what refers to things that go, and what that was, in words. */
final class Clearing {
  private final Set<String> works;
  private final Set<String> editions;
  private final Set<String> objects;
  private final List<String> cleared = new ArrayList<>();

  /**
   * @param works ids that go
   * @param editions keys that go
   * @param objects references that go
   */
  Clearing(Set<String> works, Set<String> editions, Set<String> objects) {
    this.works = works;
    this.editions = editions;
    this.objects = objects;
  }

  /** What was cleared so far. */
  List<String> cleared() {
    return cleared;
  }

  Work of(Work work) {
    List<WorkLink> links = new ArrayList<>();
    for (WorkLink link : work.links()) {
      if (works.contains(link.to())) {
        cleared.add("link: " + WorkJoin.words(work.id(), link));
      } else {
        links.add(link);
      }
    }
    List<Edition> all = new ArrayList<>();
    for (Edition edition : work.editions()) {
      all.add(withNotes(withLineage(edition)));
    }
    return work.withLinks(links).withEditions(all);
  }

  private Edition withLineage(Edition edition) {
    Optional<Lineage> lineage = edition.lineage();
    Optional<String> parent = lineage.flatMap(Lineage::parent).filter(editions::contains);
    if (parent.isEmpty()) {
      return edition;
    }
    Lineage old = lineage.get();
    cleared.add("lineage: " + edition.key() + ", " + old.form().code() + " of " + parent.get());
    return edition.withLineage(
        new Lineage(
            old.form(), Optional.empty(), old.originalYear(), old.newMatter(), old.plates()));
  }

  private Edition withNotes(Edition edition) {
    List<Note> notes = new ArrayList<>();
    for (Note note : edition.notes()) {
      notes.add(withObject(edition, withPlaces(edition, note)));
    }
    return notes.equals(edition.notes()) ? edition : edition.withNotes(notes);
  }

  private Note withPlaces(Edition edition, Note note) {
    List<Place> places = new ArrayList<>();
    for (Place place : note.places()) {
      Optional<Place.Corrected> corrects =
          place.corrects().filter(c -> editions.contains(c.edition()));
      corrects.ifPresent(
          c ->
              cleared.add(
                  "correction: "
                      + edition.key()
                      + ", "
                      + note.id()
                      + " of "
                      + c.edition()
                      + c.locator().map(l -> ", " + l).orElse("")));
      places.add(corrects.isPresent() ? place.withCorrects(Optional.empty()) : place);
    }
    return places.equals(note.places()) ? note : note.withPlaces(places);
  }

  private Note withObject(Edition edition, Note note) {
    Optional<Note.ObjectLink> link = note.object().filter(o -> objects.contains(o.ref()));
    if (link.isEmpty()) {
      return note;
    }
    cleared.add(
        "piece: "
            + edition.key()
            + ", "
            + note.id()
            + " ("
            + link.get().sameness().code()
            + link.get().evidence().map(e -> ": " + e).orElse("")
            + ")");
    return note.withObject(Optional.empty());
  }
}
