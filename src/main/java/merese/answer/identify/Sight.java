package merese.answer.identify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.identify.Identification.Observed;
import merese.answer.identify.Identification.Seen;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;

/** All that was observed, by character: several values of one are all kept. */
final class Sight {
  private final CharacterKey key;
  private final Map<String, List<Seen>> byCharacter = new LinkedHashMap<>();
  private final Set<String> parts = new LinkedHashSet<>();

  Sight(CharacterKey key) {
    this.key = key;
  }

  void add(KeyCharacter character, Seen seen) {
    seen.part().ifPresent(parts::add);
    byCharacter.computeIfAbsent(character.id(), c -> new ArrayList<>()).add(seen);
  }

  /** Whether a character was looked for, found or not. */
  boolean has(KeyCharacter character) {
    return byCharacter.containsKey(character.id());
  }

  /** What was found of a character: ids of values, or counts; none where nothing was found. */
  Set<String> found(String character) {
    Set<String> found = new LinkedHashSet<>();
    for (Seen seen : byCharacter.getOrDefault(character, List.of())) {
      seen.value().ifPresent(found::add);
    }
    return found;
  }

  /** Whether anything was found at all. */
  boolean isTelling() {
    return byCharacter.keySet().stream().anyMatch(c -> !found(c).isEmpty());
  }

  /** In the key's order. */
  List<Observed> observed() {
    List<Observed> observed = new ArrayList<>();
    for (KeyCharacter character : key.characters()) {
      if (has(character)) {
        observed.add(
            new Observed(
                character.id(),
                character.label(),
                found(character.id()).size() > 1,
                List.copyOf(byCharacter.get(character.id()))));
      }
    }
    return observed;
  }

  /** What each part says alone, in the order in which the parts were observed. */
  Map<String, Sight> byPart() {
    Map<String, Sight> byPart = new LinkedHashMap<>();
    parts.forEach(part -> byPart.put(part, new Sight(key)));
    byCharacter.forEach(
        (character, all) -> {
          for (Seen seen : all) {
            seen.part()
                .ifPresent(p -> byPart.get(p).add(key.character(character).orElseThrow(), seen));
          }
        });
    return byPart;
  }
}
