package merese.change.notes;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.exchange.picture.PictureCopy;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.ChangeSet;
import merese.store.Stored;

/**
 * Takes notes. Each is added to its work's file as that is at the moment of writing, so that two
 * who note in one source at once both keep what they wrote; what is returned has been written.
 */
public final class NoteTaking {
  private final WritingShelf shelf;
  private final Clock clock;

  public NoteTaking(WritingShelf shelf, Clock clock) {
    this.shelf = shelf;
    this.clock = clock;
  }

  /**
   * Notes that were taken.
   *
   * @param change what the history calls the change
   */
  public record Taken(SourceAddress source, List<Note> notes, OptionalInt change) {
    public Taken {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Takes one note.
   *
   * @param again whether it is wanted though one like it is there
   * @throws ChangeRefusedException where the source has no such part, or the library no such piece
   * @throws NotedAlreadyException where the note is there and is not wanted again
   * @throws merese.store.LibraryException where nothing could be written
   */
  public Taken note(SourceAddress source, TypedNote typed, boolean again) {
    return note(source, typed, Optional.empty(), again);
  }

  /**
   * The same with a photograph of the place, which is kept in the library: one change, so that both
   * are taken back together.
   */
  public Taken note(
      SourceAddress source, TypedNote typed, Optional<PictureCopy> photo, boolean again) {
    return write(source, List.of(Drafts.note(typed, LocalDate.now(clock))), photo, again);
  }

  /** Takes a note of each heading of a source's own list, all or none. */
  public Taken list(SourceAddress source, List<TypedNote> headings, boolean again) {
    List<Note> drafts = new ArrayList<>();
    for (TypedNote heading : headings) {
      drafts.add(Drafts.note(heading, LocalDate.now(clock)));
    }
    return write(source, drafts, Optional.empty(), again);
  }

  private Taken write(
      SourceAddress source, List<Note> drafts, Optional<PictureCopy> photo, boolean again) {
    try (ChangeSet change = shelf.folder().change(words(source, drafts))) {
      Stored<Work> stored = shelf.read(source);
      Edition edition = edition(stored.value(), source);
      List<Note> notes = new ArrayList<>(edition.notes());
      List<Note> taken = new ArrayList<>();
      Set<String> ids = new HashSet<>();
      notes.forEach(note -> ids.add(note.id()));
      int number = notes.size();
      for (Note draft : drafts) {
        require(edition, draft);
        if (!again) {
          requireOnce(taken, draft);
          requireNew(source, notes, draft);
        }
        do {
          number++;
        } while (!ids.add("n" + number));
        Note note = Drafts.withId(draft, "n" + number);
        if (photo.isPresent()) {
          note = Photographs.added(change, source.key(), note, photo.get());
        }
        notes.add(note);
        taken.add(note);
      }
      Work work = stored.value().withEdition(edition.withNotes(notes));
      change.save(stored, work);
      change.commit();
      shelf.reread(source.file());
      return new Taken(source, taken, change.number());
    }
  }

  static Edition edition(Work work, SourceAddress source) {
    for (Edition edition : work.editions()) {
      if (edition.key().equals(source.key())) {
        return edition;
      }
    }
    throw new ChangeRefusedException(
        source.file() + " no longer has the edition " + source.key() + "; nothing was written");
  }

  private static String words(SourceAddress source, List<Note> drafts) {
    Note first = drafts.get(0);
    String printed = first.namings().get(0).printed();
    String at = first.places().get(0).locator().printed() + " in " + source.key();
    if (drafts.size() > 1) {
      return "list of " + drafts.size() + " at " + at;
    }
    return (printed.isEmpty() ? "note" : "note “" + printed + "”") + " at " + at;
  }

  private void require(Edition edition, Note draft) {
    if (draft.part().isPresent()) {
      List<String> ids = edition.parts().stream().map(Edition.Part::id).toList();
      if (!ids.contains(draft.part().get())) {
        throw new ChangeRefusedException(
            edition.key()
                + " has no part \""
                + draft.part().get()
                + "\""
                + (ids.isEmpty() ? "" : "; its parts are " + String.join(", ", ids)));
      }
    }
    Optional<String> piece = draft.object().map(Note.ObjectLink::ref);
    if (piece.isPresent() && shelf.folder().findObject(piece.get()).isEmpty()) {
      throw new ChangeRefusedException(
          "the library has no piece \"" + piece.get() + "\"; merese object add makes one");
    }
    for (Place place : draft.places()) {
      if (place.corrects().isPresent()) {
        String key = place.corrects().get().edition();
        if (shelf.find(key).stream().noneMatch(s -> s.key().equals(key))) {
          throw new ChangeRefusedException(
              "no source has the key \"" + key + "\", which is said to be corrected");
        }
      }
    }
  }

  private static void requireOnce(List<Note> taken, Note draft) {
    if (taken.stream().anyMatch(note -> isTheSame(note, draft))) {
      throw new ChangeRefusedException(
          "the heading “"
              + String.join(" or ", draft.namings().stream().map(Naming::printed).toList())
              + "” stands twice in the list; nothing was written. Leave one of the two out");
    }
  }

  /** Return pressed twice makes one note. */
  private static void requireNew(SourceAddress source, List<Note> notes, Note draft) {
    for (Note note : notes) {
      if (isTheSame(note, draft)) {
        throw new NotedAlreadyException(source.key(), note.id());
      }
    }
  }

  private static boolean isTheSame(Note note, Note draft) {
    return mayBeTheSame(note, draft)
        && note.namings().equals(draft.namings())
        && Photographs.without(note.places()).equals(draft.places())
        && note.claims().equals(draft.claims())
        && note.quotation().equals(draft.quotation())
        && note.reading().equals(draft.reading());
  }

  /** Most notes differ in this, and the first comparison of records costs a process its start. */
  private static boolean mayBeTheSame(Note note, Note draft) {
    return note.namings().get(0).printed().equals(draft.namings().get(0).printed())
        && firstLocator(note).equals(firstLocator(draft));
  }

  private static String firstLocator(Note note) {
    return note.places().get(0).locator().printed();
  }
}
