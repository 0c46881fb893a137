package merese.answer.claims;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * Places with the words that are used for what is from there, and which lie in which (common
 * knowledge). A place that is not here is known by its own name alone.
 */
final class PlaceNames {
  private record Known(String name, String in, List<String> words) {}

  private static final List<Known> ALL =
      List.of(
          new Known("British Isles", "", List.of("British Isles", "British")),
          new Known("Great Britain", "British Isles", List.of("Great Britain", "Britain")),
          new Known("Ireland", "British Isles", List.of("Ireland", "Irish")),
          new Known("England", "Great Britain", List.of("England", "English")),
          new Known(
              "Scotland", "Great Britain", List.of("Scotland", "Scottish", "Scotch", "Scots")),
          new Known("Wales", "Great Britain", List.of("Wales", "Welsh")),
          new Known("Cork", "Ireland", List.of("Cork")),
          new Known("Dublin", "Ireland", List.of("Dublin")),
          new Known("Belfast", "Ireland", List.of("Belfast")),
          new Known("Waterford", "Ireland", List.of("Waterford")),
          new Known("London", "England", List.of("London")),
          new Known("Bristol", "England", List.of("Bristol")),
          new Known("Newcastle", "England", List.of("Newcastle")),
          new Known("Midlands", "England", List.of("Midlands")),
          new Known("Glasgow", "Scotland", List.of("Glasgow")),
          new Known("Edinburgh", "Scotland", List.of("Edinburgh")),
          new Known("Low Countries", "", List.of("Low Countries")),
          new Known("Netherlands", "Low Countries", List.of("Netherlands", "Dutch", "Holland")),
          new Known("Belgium", "Low Countries", List.of("Belgium", "Belgian", "Flemish")),
          new Known("Liège", "Belgium", List.of("Liège")),
          new Known("France", "", List.of("France", "French")),
          new Known("Germany", "", List.of("Germany", "German")),
          new Known("Bohemia", "", List.of("Bohemia", "Bohemian")),
          new Known("Venice", "Italy", List.of("Venice", "Venetian")),
          new Known("Italy", "", List.of("Italy", "Italian")),
          new Known("Spain", "", List.of("Spain", "Spanish")),
          new Known("Norway", "Scandinavia", List.of("Norway", "Norwegian")),
          new Known("Sweden", "Scandinavia", List.of("Sweden", "Swedish")),
          new Known("Denmark", "Scandinavia", List.of("Denmark", "Danish")),
          new Known("Scandinavia", "", List.of("Scandinavia", "Scandinavian")),
          new Known("United States", "", List.of("United States", "America", "American")));

  private static final Map<String, Known> BY_KEY = byKey();

  private PlaceNames() {}

  private static Map<String, Known> byKey() {
    Map<String, Known> known = new HashMap<>();
    for (Known place : ALL) {
      known.put(Folding.key(place.name()), place);
      for (String word : place.words()) {
        known.put(Folding.key(word), place);
      }
    }
    return known;
  }

  /** The name of a place that is called so; its own where it is not known. */
  static String of(String called) {
    Known known = BY_KEY.get(Folding.key(called));
    return known == null ? called.strip() : known.name();
  }

  /**
   * The places that stand in words, and the one looked for, by the order in which they are known.
   */
  static Set<String> in(String words, List<String> alsoLookedFor) {
    List<String> folded = Folding.words(words);
    Set<String> found = new LinkedHashSet<>();
    for (Known place : ALL) {
      for (String word : place.words()) {
        if (Thesaurus.occurs(Folding.words(word), folded)) {
          found.add(place.name());
        }
      }
    }
    for (String other : alsoLookedFor) {
      if (!other.isBlank() && Thesaurus.occurs(Folding.words(other), folded)) {
        found.add(of(other));
      }
    }
    return found;
  }

  /** Whether a place is another, or lies in it. */
  static boolean liesIn(String place, String wider) {
    String at = place;
    while (!at.isEmpty()) {
      if (Folding.key(at).equals(Folding.key(wider))) {
        return true;
      }
      Known known = BY_KEY.get(Folding.key(at));
      at = known == null ? "" : known.in();
    }
    return false;
  }

  /** Those that no other of them lies in. */
  static List<String> withoutWider(Set<String> places) {
    List<String> narrow = new ArrayList<>();
    for (String place : places) {
      boolean holdsAnother = false;
      for (String other : places) {
        holdsAnother |= !other.equals(place) && liesIn(other, place);
      }
      if (!holdsAnother) {
        narrow.add(place);
      }
    }
    return narrow;
  }
}
