package merese.answer.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.identify.Identification.Seen;
import merese.answer.identify.Identification.Unread;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyCharacter.Value;
import merese.model.OwnObject.Observation;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * Reads what a user has recorded of a piece, in words of their own. A value is taken only where the
 * recorded words begin with it ("sharp enough to mark a nail"), where the character recorded is
 * itself a value ("hollow", of the bore), or where finding it at all is one ("overlap", felt). All
 * else, and whatever begins with a "no" or "not" that the key does not know, stays unread and is
 * said to be.
 */
final class PieceReading {
  private static final Set<String> DENIALS = Set.of("no", "not", "none", "without", "never");

  /** After a number these words make another one of it. */
  private static final Set<String> NOT_ALONE = Set.of("and", "or", "to", "half");

  private final CharacterKey key;
  private final List<Unread> unread = new ArrayList<>();

  PieceReading(CharacterKey key) {
    this.key = key;
  }

  List<Unread> unread() {
    return unread;
  }

  void read(Observation observation, Sight sight) {
    List<String> called = Folding.words(observation.character());
    KeyCharacter character = character(called);
    if (character == null) {
      unread.add(new Unread(observation, "the key has no such character"));
    } else if (!observation.found()) {
      sight.add(character, seen(observation, Optional.empty(), TypedCharacters.NOT_FOUND));
    } else if (character.counted()) {
      count(observation, character, sight);
    } else {
      Value value = value(character, called, observation);
      if (value == null) {
        unread.add(
            new Unread(
                observation, "the key has no value of " + character.label() + " that begins so"));
      } else {
        sight.add(character, seen(observation, Optional.of(value.id()), value.label()));
      }
    }
  }

  /** The character with the longest name in what was recorded; of several the key's first. */
  private KeyCharacter character(List<String> called) {
    KeyCharacter best = null;
    int longest = 0;
    for (KeyCharacter character : key.characters()) {
      for (String name : TypedCharacters.names(character)) {
        List<String> words = Folding.words(name);
        if (words.size() > longest && Thesaurus.occurs(words, called)) {
          best = character;
          longest = words.size();
        }
      }
    }
    return best;
  }

  private void count(Observation observation, KeyCharacter character, Sight sight) {
    List<String> said = Folding.words(observation.value().orElse(""));
    OptionalInt count = said.isEmpty() ? OptionalInt.empty() : Numbers.of(said.get(0));
    if (count.isEmpty() || said.size() > 1 && NOT_ALONE.contains(said.get(1))) {
      unread.add(new Unread(observation, "it does not begin with one number"));
    } else {
      String number = Integer.toString(count.getAsInt());
      sight.add(character, seen(observation, Optional.of(number), number));
    }
  }

  /** Null where the key cannot tell which. */
  private static Value value(KeyCharacter character, List<String> called, Observation observation) {
    List<String> said = Folding.words(observation.value().orElse(""));
    Value best = null;
    int longest = 0;
    for (Value value : character.values()) {
      for (String name : TypedCharacters.names(value)) {
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
    for (String name : TypedCharacters.names(value)) {
      if (TypedCharacters.names(character).contains(name)
          && Thesaurus.occurs(Folding.words(name), called)) {
        return true;
      }
    }
    return false;
  }

  private static Seen seen(Observation observation, Optional<String> value, String said) {
    return new Seen(
        value,
        said,
        Optional.of(observation.part()),
        Optional.of(observation.sense()),
        Optional.of(observation.words()),
        observation.photo());
  }
}
