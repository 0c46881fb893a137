package merese.exchange.bibtex;

import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;

/**
 * What becomes one entry: an edition or, where a part is given, an entry, chapter or essay in it.
 *
 * @param notes what was noted from it; a part takes those that name it
 */
public record BibtexSource(
    Work work, Edition edition, Optional<Edition.Part> part, List<Note> notes) {
  public BibtexSource {
    notes = List.copyOf(notes);
  }

  /** The edition's key, with the part's id after "#" where there is one. */
  public String id() {
    return id(edition, part);
  }

  static String id(Edition edition, Optional<Edition.Part> part) {
    return part.map(p -> edition.key() + "#" + p.id()).orElse(edition.key());
  }

  List<Note> ownNotes() {
    return part.isEmpty()
        ? notes
        : notes.stream().filter(n -> n.part().equals(part.map(Edition.Part::id))).toList();
  }
}
