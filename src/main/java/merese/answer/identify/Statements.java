package merese.answer.identify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import merese.model.Counts;
import merese.model.KeyCharacter;
import merese.model.KeyedKind.Allowed;

/** What statements of the key mean for what was found. */
final class Statements {
  private Statements() {}

  /** Whether a kind may show what was found. */
  static boolean allows(KeyCharacter character, Allowed allowed, String found) {
    if (!character.counted()) {
      return allowed.values().contains(found);
    }
    int count = Integer.parseInt(found);
    return allowed.values().stream().anyMatch(v -> Counts.parse(v).hold(count));
  }

  /** Whether nothing that can be found fits both. */
  static boolean differ(KeyCharacter character, Allowed a, Allowed b) {
    if (a.values().isEmpty() && b.values().isEmpty()) {
      return false;
    }
    for (String of : a.values()) {
      for (String other : b.values()) {
        boolean meet =
            character.counted() ? Counts.parse(of).meet(Counts.parse(other)) : of.equals(other);
        if (meet) {
          return false;
        }
      }
    }
    return true;
  }

  /** What is said of values: their labels, or counts in words. */
  static List<String> words(KeyCharacter character, Collection<String> values) {
    List<String> words = new ArrayList<>();
    for (String value : values) {
      words.add(
          character.counted()
              ? Counts.parse(value).words()
              : character.value(value).orElseThrow().label());
    }
    return words;
  }

  /** The found values that a kind may show, or those that it does not. */
  static List<String> of(
      KeyCharacter character, Allowed allowed, Set<String> found, boolean fitting) {
    List<String> those = new ArrayList<>();
    for (String value : found) {
      if (allows(character, allowed, value) == fitting) {
        those.add(value);
      }
    }
    return words(character, those);
  }
}
