package merese.answer.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.identify.Identification.Against;
import merese.answer.identify.Identification.Agreement;
import merese.answer.identify.Identification.RuledOut;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyedKind;
import merese.model.KeyedKind.Allowed;
import merese.vocabulary.Thesaurus;

/**
 * Sorts kinds by what was found: those that fit, those of which the key says nothing here, those
 * ruled out. A character rules a kind out only where the key speaks of it and the kind shows
 * nothing of what was found; one of several values found is enough to stay.
 */
final class Sorting {
  /** A kind that stays, with what speaks for it. */
  record Kept(KeyedKind kind, List<Agreement> agreements) {}

  private final CharacterKey key;
  private final Thesaurus thesaurus;
  private final Sight sight;
  private final List<Kept> fits = new ArrayList<>();
  private final List<Kept> open = new ArrayList<>();
  private final List<RuledOut> ruledOut = new ArrayList<>();

  Sorting(CharacterKey key, Thesaurus thesaurus, Sight sight, List<KeyedKind> kinds) {
    this.key = key;
    this.thesaurus = thesaurus;
    this.sight = sight;
    kinds.forEach(this::sort);
    fits.sort(
        Comparator.comparingInt((Kept k) -> -k.agreements().size())
            .thenComparingInt(k -> mixed(k.agreements()))); // stable: the order of the key
  }

  private void sort(KeyedKind kind) {
    List<Agreement> agreements = new ArrayList<>();
    List<Against> against = new ArrayList<>();
    for (KeyCharacter character : key.characters()) {
      Set<String> found = sight.found(character.id());
      Optional<Allowed> allowed = kind.of(character.id());
      if (found.isEmpty() || allowed.isEmpty()) {
        continue;
      }
      List<String> fitting = Statements.of(character, allowed.get(), found, true);
      List<String> not = Statements.of(character, allowed.get(), found, false);
      if (fitting.isEmpty()) {
        against.add(
            new Against(
                character.label(), not, Statements.words(character, allowed.get().values())));
      } else {
        agreements.add(new Agreement(character.label(), fitting, not));
      }
    }
    if (!against.isEmpty()) {
      ruledOut.add(new RuledOut(line(kind), against));
    } else {
      (agreements.isEmpty() ? open : fits).add(new Kept(kind, agreements));
    }
  }

  private static int mixed(List<Agreement> agreements) {
    return (int) agreements.stream().filter(a -> !a.not().isEmpty()).count();
  }

  ConceptLine line(KeyedKind kind) {
    return new ConceptLine(kind.concept(), thesaurus.label(kind.concept()));
  }

  List<Kept> fits() {
    return fits;
  }

  List<Kept> open() {
    return open;
  }

  List<RuledOut> ruledOut() {
    return ruledOut;
  }

  /** The kinds that stay. */
  List<KeyedKind> remaining() {
    List<KeyedKind> remaining = new ArrayList<>();
    fits.forEach(k -> remaining.add(k.kind()));
    open.forEach(k -> remaining.add(k.kind()));
    return remaining;
  }
}
