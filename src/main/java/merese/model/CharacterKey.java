package merese.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A key to kinds that look alike: what can be seen or felt of them, and which of it each kind may
 * show. What a kind does not speak of, it leaves open.
 *
 * @param basis what the key is made from, in words; it stands beside what the key says
 * @param characters in the order in which they are best looked at
 * @param kinds concepts of the vocabulary; those that state the same stay apart
 */
public record CharacterKey(String basis, List<KeyCharacter> characters, List<KeyedKind> kinds) {
  /** A key that says nothing. */
  public static final CharacterKey EMPTY = new CharacterKey("?", List.of(), List.of());

  public CharacterKey {
    Require.text(basis, "the basis of a key");
    characters = List.copyOf(characters);
    kinds = List.copyOf(kinds);
    Map<String, KeyCharacter> known = new HashMap<>();
    for (KeyCharacter character : characters) {
      Require.that(
          known.put(character.id(), character) == null,
          "the character \"" + character.id() + "\" stands here twice; keep one of the two");
    }
    Set<String> concepts = new HashSet<>();
    for (KeyedKind kind : kinds) {
      Require.that(
          concepts.add(kind.concept()),
          "the kind \"" + kind.concept() + "\" stands here twice; keep one of the two");
      for (KeyedKind.Allowed allowed : kind.allows()) {
        KeyCharacter character = known.get(allowed.character());
        Require.that(
            character != null,
            "the kind \""
                + kind.concept()
                + "\" speaks of \""
                + allowed.character()
                + "\", which is no character");
        allowed.values().forEach(character::requireStatement);
      }
    }
  }

  /** The character of an id. */
  public Optional<KeyCharacter> character(String id) {
    return characters.stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
