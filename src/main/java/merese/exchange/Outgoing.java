package merese.exchange;

import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;

/**
 * What becomes one record of another format: an edition or, where a part is given, an entry,
 * chapter or essay in it.
 *
 * @param notes what was noted from it; a part takes those that name it
 */
public record Outgoing(Work work, Edition edition, Optional<Edition.Part> part, List<Note> notes) {
  public Outgoing {
    if (edition.imprint().title().isPresent()) { // it goes out under its own title
      work = work.withOnly(edition);
      edition = work.editions().get(0);
    }
    notes = List.copyOf(notes);
  }

  /** The edition's key, with the part's id after "#" where there is one. */
  public String id() {
    return id(edition, part);
  }

  static String id(Edition edition, Optional<Edition.Part> part) {
    return part.map(p -> edition.key() + "#" + p.id()).orElse(edition.key());
  }

  /** What was noted from it; for a part, from the part. */
  public List<Note> ownNotes() {
    return part.isEmpty()
        ? notes
        : notes.stream().filter(n -> n.part().equals(part.map(Edition.Part::id))).toList();
  }
}
