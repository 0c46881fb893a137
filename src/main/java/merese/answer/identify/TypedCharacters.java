package merese.answer.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.identify.Identification.Seen;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyCharacter.Value;
import merese.model.Nearest;
import merese.vocabulary.Folding;
import merese.vocabulary.KeyReading;
import merese.vocabulary.Numbers;

/** Reads "join=felt" and its like; words match as labels do (R7). */
final class TypedCharacters {
  private final CharacterKey key;

  TypedCharacters(CharacterKey key) {
    this.key = key;
  }

  /**
   * Adds what one word says.
   *
   * @throws IdentifyException for an unknown character or value, naming the nearest
   */
  void read(String typed, Sight sight) {
    int equals = typed.indexOf('=');
    KeyCharacter character = character(typed.substring(0, equals).strip());
    String values = typed.substring(equals + 1);
    int at = 0;
    while (at <= values.length()) {
      int comma = values.indexOf(',', at);
      int end = comma < 0 ? values.length() : comma;
      sight.add(character, seen(character, values.substring(at, end).strip()));
      at = end + 1;
    }
  }

  private KeyCharacter character(String typed) {
    String wanted = Folding.key(typed);
    for (KeyCharacter character : key.characters()) {
      if (KeyReading.names(character).contains(wanted)) {
        return character;
      }
    }
    List<String> ids = new ArrayList<>();
    key.characters().forEach(c -> ids.add(c.id()));
    throw new IdentifyException(
        "there is no character \""
            + typed
            + "\""
            + near(typed, ids)
            + "; the characters are "
            + String.join(", ", ids));
  }

  private static Seen seen(KeyCharacter character, String typed) {
    String wanted = Folding.key(typed);
    if (wanted.equals(Folding.key(KeyCharacter.NOT_FOUND))) {
      return typed(Optional.empty(), KeyReading.NOT_FOUND);
    }
    if (character.counted()) {
      OptionalInt count = Numbers.of(typed.toLowerCase(Locale.ROOT));
      if (count.isEmpty()) {
        throw new IdentifyException(
            character.id()
                + " is a number, not \""
                + typed
                + "\"; write it as in "
                + character.id()
                + "=3, or "
                + KeyCharacter.NOT_FOUND);
      }
      String number = Integer.toString(count.getAsInt());
      return typed(Optional.of(number), number);
    }
    for (Value value : character.values()) {
      if (KeyReading.names(value).contains(wanted)) {
        return typed(Optional.of(value.id()), value.label());
      }
    }
    List<String> ids = new ArrayList<>(character.valueIds());
    ids.add(KeyCharacter.NOT_FOUND);
    throw new IdentifyException(
        "\""
            + typed
            + "\" is no value of "
            + character.id()
            + near(typed, ids)
            + "; write one of "
            + String.join(", ", ids));
  }

  private static Seen typed(Optional<String> value, String said) {
    return new Seen(
        value, said, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static String near(String typed, List<String> ids) {
    List<String> near = Nearest.to(typed, ids, 1);
    return near.isEmpty() ? "" : "; did you mean \"" + near.get(0) + "\"?";
  }
}
