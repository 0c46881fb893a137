package merese.desk.note;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.NoteWords;
import merese.change.notes.Sitting;
import merese.change.notes.Sitting.NotedThere;
import merese.change.notes.TermChoice.Choice;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/**
 * What is noted of a source.
 *
 * @param at the page that lies open, as printed; "" where none does
 * @param noted what is noted of that page, in the order of its places
 * @param last the notes of the source that were taken last, the newest first
 * @param notes how many there are of the source
 */
public record NotedHere(
    SourceAddress source, String at, List<Line> noted, List<Line> last, int notes) {
  private static final int MOST_LAST = 6;

  public NotedHere {
    noted = List.copyOf(noted);
    last = List.copyOf(last);
  }

  /**
   * A note in a few lines.
   *
   * @param words with its places, terms and claims
   * @param photos the user's own, as paths below the folder of pictures
   * @param remarks what may be worth a second look
   */
  public record Line(
      String id,
      String words,
      Optional<String> quotation,
      Optional<String> reading,
      List<String> photos,
      Optional<String> by,
      Optional<LocalDate> on,
      List<String> remarks) {
    public Line {
      photos = List.copyOf(photos);
      remarks = List.copyOf(remarks);
    }
  }

  static NotedHere of(WritingShelf shelf, Sitting sitting) {
    List<Line> noted = new ArrayList<>();
    Edition edition = sitting.edition();
    Optional<Locator> page = sitting.page();
    if (page.isPresent()) {
      for (NotedThere each : sitting.noted(page.get())) {
        noted.add(line(shelf, edition, each.note(), each.places(), true));
      }
    }
    List<Note> all = edition.notes();
    List<Line> last = new ArrayList<>();
    for (int i = all.size() - 1; i >= 0 && last.size() < MOST_LAST; i--) {
      last.add(line(shelf, edition, all.get(i), all.get(i).places(), false));
    }
    String at = page.map(Locator::printed).orElse("");
    return new NotedHere(sitting.source(), at, noted, last, all.size());
  }

  /** The note of an id; empty where it was taken back. */
  static Optional<Line> line(WritingShelf shelf, Sitting sitting, String id) {
    Edition edition = sitting.edition();
    for (Note note : edition.notes()) {
      if (note.id().equals(id)) {
        return Optional.of(line(shelf, edition, note, note.places(), true));
      }
    }
    return Optional.empty();
  }

  /**
   * @param remarked whether to say what may be worth a second look
   */
  private static Line line(
      WritingShelf shelf, Edition edition, Note note, List<Place> places, boolean remarked) {
    NoteWords words = new NoteWords(shelf);
    List<String> photos = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    if (remarked) {
      for (Naming naming : note.namings()) {
        words.typedId(naming, Optional.empty()).map(NotedHere::typedId).ifPresent(remarks::add);
        words.open(naming, Optional.empty()).ifPresent(remarks::add);
      }
      remarks.addAll(NoteWords.outside(edition, places));
    }
    for (Place place : places) {
      place.photo().ifPresent(photos::add);
      if (remarked && NoteWords.mayBePicture(place)) {
        remarks.add(
            place.locator().printed()
                + " is noted as text; a picture there counts once it is noted as a photograph or a"
                + " drawing.");
      }
    }
    return new Line(
        note.id(),
        words.words(note, places),
        note.quotation(),
        note.reading(),
        photos,
        note.checked().map(Note.Checked::by),
        note.checked().flatMap(Note.Checked::on),
        remarks);
  }

  private static String typedId(Choice concept) {
    return "“"
        + concept.concept()
        + "” is the id of "
        + concept.label()
        + "; as the Concept, under More, it gives a term that meaning.";
  }
}
