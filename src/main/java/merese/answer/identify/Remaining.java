package merese.answer.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.HowToTell;
import merese.answer.identify.Identification.NotLookedAt;
import merese.answer.identify.Identification.Side;
import merese.answer.identify.Identification.ValueLine;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyedKind;
import merese.model.KeyedKind.Allowed;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/** What is left to look at among the kinds that stay. */
final class Remaining {
  private final CharacterKey key;
  private final Thesaurus thesaurus;
  private final List<KeyedKind> kinds;

  Remaining(CharacterKey key, Thesaurus thesaurus, List<KeyedKind> kinds) {
    this.key = key;
    this.thesaurus = thesaurus;
    this.kinds = kinds;
  }

  /** Those that tell most of the kinds apart first, of equals those that tell more pairs. */
  List<NotLookedAt> notLookedAt(Sight sight) {
    List<NotLookedAt> left = new ArrayList<>();
    for (KeyCharacter character : key.characters()) {
      if (!sight.has(character)) {
        left.add(line(character));
      }
    }
    left.sort(
        Comparator.comparingInt((NotLookedAt n) -> -n.tellsApart())
            .thenComparingInt(n -> -n.pairs())); // stable: the key's order
    return left;
  }

  private NotLookedAt line(KeyCharacter character) {
    Map<KeyedKind, Allowed> speaking = new LinkedHashMap<>();
    kinds.forEach(k -> k.of(character.id()).ifPresent(a -> speaking.put(k, a)));
    List<KeyedKind> all = List.copyOf(speaking.keySet());
    Set<KeyedKind> apart = new LinkedHashSet<>();
    int pairs = 0;
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        if (Statements.differ(character, speaking.get(all.get(i)), speaking.get(all.get(j)))) {
          apart.add(all.get(i));
          apart.add(all.get(j));
          pairs++;
        }
      }
    }
    return new NotLookedAt(
        character.id(),
        character.label(),
        character.question(),
        character.look(),
        senses(character),
        values(character),
        apart.size(),
        pairs,
        pairs == 0 ? List.of() : sides(character, speaking));
  }

  private List<Side> sides(KeyCharacter character, Map<KeyedKind, Allowed> speaking) {
    Map<List<String>, List<ConceptLine>> byValues = new LinkedHashMap<>();
    speaking.forEach(
        (kind, allowed) ->
            byValues
                .computeIfAbsent(
                    Statements.words(character, allowed.values()), v -> new ArrayList<>())
                .add(new ConceptLine(kind.concept(), thesaurus.label(kind.concept()))));
    List<Side> sides = new ArrayList<>();
    byValues.forEach((values, of) -> sides.add(new Side(values, of)));
    return sides;
  }

  /** "seen", "felt" or "seen or felt". */
  static String senses(KeyCharacter character) {
    List<String> codes = new ArrayList<>();
    character.senses().forEach(s -> codes.add(s.code()));
    return String.join(" or ", codes);
  }

  static List<ValueLine> values(KeyCharacter character) {
    List<ValueLine> values = new ArrayList<>();
    character.values().forEach(v -> values.add(new ValueLine(v.id(), v.label())));
    return values;
  }

  /** The vocabulary's tests between two kinds that stay; each pair once, with a test if any has. */
  List<HowToTell> tests() {
    Set<String> ids = new LinkedHashSet<>();
    kinds.forEach(k -> ids.add(k.concept()));
    Map<Set<String>, HowToTell> byPair = new LinkedHashMap<>();
    for (String id : ids) {
      for (LookAlikePair pair : thesaurus.lookAlikes(id)) {
        if (pair.here().id().equals(id) && ids.contains(pair.other().id())) {
          Set<String> both = Set.of(id, pair.other().id());
          HowToTell known = byPair.get(both);
          if (known == null || known.test().isEmpty() && pair.test().isPresent()) {
            byPair.put(
                both,
                new HowToTell(
                    line(id), line(pair.other().id()), pair.test(), line(pair.statedBy().id())));
          }
        }
      }
    }
    return List.copyOf(byPair.values());
  }

  private ConceptLine line(String id) {
    return new ConceptLine(id, thesaurus.label(id));
  }
}
