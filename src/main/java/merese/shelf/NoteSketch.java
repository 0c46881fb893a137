package merese.shelf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.search.Hits.NoteHit;

/**
 * What of a note says what it is about, read without the rest of it. A question that counts many
 * notes and shows few reads these, and {@link Shelf#note(NoteSketch)} for those it shows.
 *
 * @param document its number, which tells it from others while a shelf is open
 * @param namings in the note's order
 * @param mayMean as in {@link SourcedNote}
 */
public record NoteSketch(
    NoteHit hit, int document, List<Name> namings, Map<String, List<String>> mayMean) {
  /** The key of its source. */
  public String source() {
    return hit.edition();
  }

  /** The path of its work's file, which is one for each work. */
  public String file() {
    return hit.file();
  }

  /** Where its source stands by year, author and key (R4), by its bytes, unsigned. */
  public byte[] standing() {
    return hit.owner().standing();
  }

  /**
   * What a naming says, and in what places.
   *
   * @param places a bit for each test that one of its places passes, and one for each that a
   *     picture among them passes
   */
  public record Name(
      String printed, Optional<String> concept, Optional<Naming.Why> why, int places) {
    /** Whether one of its places passes. */
    public boolean passes(PlaceTest test) {
      return (places & 1 << 2 * test.ordinal()) != 0;
    }

    /** Whether one of its places passes and is a picture. */
    public boolean isPictured(PlaceTest test) {
      return (places & 2 << 2 * test.ordinal()) != 0;
    }

    static int places(Note note, Naming naming) {
      int bits = 0;
      for (Place place : note.placesOf(naming)) {
        for (PlaceTest test : PlaceTest.ALL) {
          if (test.holds(place)) {
            bits |= (place.medium().isPicture() ? 3 : 1) << 2 * test.ordinal();
          }
        }
      }
      return bits;
    }
  }
}
