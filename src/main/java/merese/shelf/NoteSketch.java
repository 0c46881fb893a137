package merese.shelf;

import java.util.Comparator;
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
 * @param hit its whole, unread
 */
public record NoteSketch(NoteHit hit, About about) {
  static final Comparator<NoteSketch> BY_POSITION = new ByPosition();

  /** The key of its source. */
  public String source() {
    return hit.edition();
  }

  /** Its namings, in the note's order. */
  public List<Name> namings() {
    return about.namings;
  }

  /**
   * What a note is about.
   *
   * @param namings in the note's order
   * @param mayMean as in {@link SourcedNote}
   */
  public record About(List<Name> namings, Map<String, List<String>> mayMean) {}

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
      return passes(places, test);
    }

    /** Whether one of its places passes and is a picture. */
    public boolean isPictured(PlaceTest test) {
      return isPictured(places, test);
    }

    static boolean passes(int places, PlaceTest test) {
      return (places & 1 << 2 * test.ordinal()) != 0;
    }

    static boolean isPictured(int places, PlaceTest test) {
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

  /** In the order of files, editions and notes. */
  private static final class ByPosition implements Comparator<NoteSketch> {
    @Override
    public int compare(NoteSketch a, NoteSketch b) {
      int files = a.hit.file().compareTo(b.hit.file());
      if (files != 0) {
        return files;
      }
      int sources = a.source().compareTo(b.source());
      return sources != 0 ? sources : Integer.compare(a.hit.order(), b.hit.order());
    }
  }
}
