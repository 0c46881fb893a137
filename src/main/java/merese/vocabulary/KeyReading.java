package merese.vocabulary;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyCharacter.Value;
import merese.model.OwnObject.Observation;

/**
 * What the key to look-alikes makes of something that a user has recorded of a piece, in words of
 * their own. A value is taken only where the recorded words begin with it ("sharp enough to mark a
 * nail"), where the character recorded is itself a value ("hollow", of the bore), or where finding
 * it at all is one ("overlap", felt). All else, and whatever begins with a "no" or "not" that the
 * key does not know, stays unread.
 *
 * @param character the key's; null where it has none of the kind
 * @param value its id, or a count; empty where nothing was found, or nothing could be read
 * @param label what an answer calls the value
 * @param unread why it could not be read; empty where it was
 */
public record KeyReading(
    KeyCharacter character, Optional<String> value, String label, Optional<String> unread) {
  private static final Set<String> DENIALS = Set.of("no", "not", "none", "without", "never");

  /** After a number these words make another one of it. */
  private static final Set<String> NOT_ALONE = Set.of("and", "or", "to", "half");

  /** What is said of what was looked for in vain. */
  public static final String NOT_FOUND = "looked for, not found";

  public static KeyReading of(CharacterKey key, Observation observation) {
    List<String> called = Folding.words(observation.character());
    KeyCharacter character = character(key, called);
    if (character == null) {
      return unread(null, "the key has no such character");
    } else if (!observation.found()) {
      return new KeyReading(character, Optional.empty(), NOT_FOUND, Optional.empty());
    } else if (character.counted()) {
      return count(character, observation);
    }
    Value value = value(character, called, observation);
    return value == null
        ? unread(character, "the key has no value of " + character.label() + " that begins so")
        : new KeyReading(character, Optional.of(value.id()), value.label(), Optional.empty());
  }

  private static KeyReading unread(KeyCharacter character, String why) {
    return new KeyReading(character, Optional.empty(), "", Optional.of(why));
  }

  /** The character with the longest name in what was recorded; of several the key's first. */
  private static KeyCharacter character(CharacterKey key, List<String> called) {
    KeyCharacter best = null;
    int longest = 0;
    for (KeyCharacter character : key.characters()) {
      for (String name : names(character)) {
        List<String> words = Folding.words(name);
        if (words.size() > longest && Thesaurus.occurs(words, called)) {
          best = character;
          longest = words.size();
        }
      }
    }
    return best;
  }

  private static KeyReading count(KeyCharacter character, Observation observation) {
    List<String> said = Folding.words(observation.value().orElse(""));
    OptionalInt count = said.isEmpty() ? OptionalInt.empty() : Numbers.of(said.get(0));
    if (count.isEmpty() || said.size() > 1 && NOT_ALONE.contains(said.get(1))) {
      return unread(character, "it does not begin with one number");
    }
    String number = Integer.toString(count.getAsInt());
    return new KeyReading(character, Optional.of(number), number, Optional.empty());
  }

  /** Null where the key cannot tell which. */
  private static Value value(KeyCharacter character, List<String> called, Observation observation) {
    List<String> said = Folding.words(observation.value().orElse(""));
    Value best = null;
    int longest = 0;
    for (Value value : character.values()) {
      for (String name : names(value)) {
        List<String> words = Folding.words(name);
        if (words.size() > longest
            && words.size() <= said.size()
            && said.subList(0, words.size()).equals(words)) {
          best = value;
          longest = words.size();
        }
      }
    }
    if (best != null || !said.isEmpty() && DENIALS.contains(said.get(0))) {
      return best;
    }
    for (Value value : character.values()) {
      if (isCalled(character, value, called)) {
        return value;
      }
    }
    for (Value value : character.values()) {
      if (value.sense().isPresent() && value.sense().get() == observation.sense()) {
        return value;
      }
    }
    return null;
  }

  /** Whether the character was recorded by a name that is a value too. */
  private static boolean isCalled(KeyCharacter character, Value value, List<String> called) {
    for (String name : names(value)) {
      if (names(character).contains(name) && Thesaurus.occurs(Folding.words(name), called)) {
        return true;
      }
    }
    return false;
  }

  /** All that a character is called, folded. */
  public static Set<String> names(KeyCharacter character) {
    Set<String> names = new LinkedHashSet<>();
    names.add(Folding.key(character.id()));
    names.add(Folding.key(character.label()));
    for (String other : character.alsoCalled()) {
      names.add(Folding.key(other));
    }
    return names;
  }

  /** All that a value is called, folded. */
  public static Set<String> names(Value value) {
    Set<String> names = new LinkedHashSet<>();
    names.add(Folding.key(value.id()));
    names.add(Folding.key(value.label()));
    for (String other : value.words()) {
      names.add(Folding.key(other));
    }
    return names;
  }
}
