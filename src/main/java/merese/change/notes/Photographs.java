package merese.change.notes;

import java.util.ArrayList;
import java.util.List;
import merese.exchange.picture.PictureCopy;
import merese.model.Note;
import merese.model.Place;
import merese.store.ChangeSet;
import merese.vocabulary.Folding;

/** The user's photographs of places, each kept under a name made of its source and its place. */
final class Photographs {
  private static final int LONGEST = 80;

  private Photographs() {}

  /** The note with the photograph at its first picture, or at its first place where it has none. */
  static Note added(ChangeSet change, String key, Note note, PictureCopy photo) {
    List<Place> places = new ArrayList<>(note.places());
    int at = 0;
    for (int i = places.size() - 1; i >= 0; i--) {
      at = places.get(i).medium().isPicture() ? i : at;
    }
    Place place = places.get(at);
    String folder = name(key);
    String words = String.join("-", Folding.words(place.locator().printed()));
    String file = change.addPicture(folder, name(key + "-" + words), photo.ending(), photo.bytes());
    places.set(at, place.withPhoto(file));
    return note.withPlaces(places);
  }

  /** What every system takes for a name. */
  private static String name(String text) {
    StringBuilder name = new StringBuilder();
    for (int i = 0; i < text.length() && name.length() < LONGEST; i++) {
      char c = text.charAt(i);
      boolean plain =
          c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
      boolean hyphen = name.length() == 0 || name.charAt(name.length() - 1) == '-';
      if (plain) {
        name.append(c);
      } else if (!hyphen) {
        name.append('-');
      }
    }
    int end = name.length();
    return end == 0 ? "picture" : name.substring(0, name.charAt(end - 1) == '-' ? end - 1 : end);
  }

  /** The places as they were typed. */
  static List<Place> without(List<Place> places) {
    List<Place> bare = new ArrayList<>();
    for (Place place : places) {
      bare.add(
          new Place(
              place.locator(),
              place.stance(),
              place.medium(),
              place.shows(),
              place.naming(),
              place.picture(),
              place.piece(),
              place.corrects()));
    }
    return bare;
  }
}
