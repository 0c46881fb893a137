package merese.answer.concordance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import merese.answer.concordance.Concordance.Agreement;
import merese.answer.concordance.Concordance.Degree;
import merese.answer.concordance.Concordance.Lack;
import merese.answer.concordance.Concordance.Range;
import merese.answer.witnesses.Independence;
import merese.answer.witnesses.Independence.Witness;

/**
 * Measures how far sources agree on words: observers are the witnesses, units the concepts, values
 * the words (R7). Of a witness of several sources or notes, the first note of the source that
 * speaks for it counts; another source of it is heard only where that one has no word.
 *
 * <p>The bounds 0.8 and 0.667 are Krippendorff's, Content Analysis, on reliability (from memory).
 */
final class Agreeing {
  private static final double RELIABLE = 0.8;
  private static final double TENTATIVE = 0.667;

  private Agreeing() {}

  /**
   * @param uses in order
   */
  static Agreement of(List<Use> uses, WordKeys keys, Independence independence) {
    Map<Witness, Map<String, String>> byWitness = new LinkedHashMap<>();
    independence.witnesses().forEach(w -> byWitness.put(w, new HashMap<>()));
    for (boolean first : new boolean[] {true, false}) {
      for (Use use : uses) {
        Witness witness = independence.of(use.source());
        if (use.counts() && use.source().equals(witness.first()) == first) {
          byWitness.get(witness).putIfAbsent(use.concept(), keys.of(use.naming().printed()));
        }
      }
    }
    return of(byWitness.values());
  }

  /**
   * @param observers for each the value that it gives each unit
   */
  static Agreement of(Collection<Map<String, String>> observers) {
    Map<String, Collection<String>> byUnit = new TreeMap<>();
    for (Map<String, String> given : observers) {
      given.forEach((u, v) -> byUnit.computeIfAbsent(u, k -> new ArrayList<>()).add(v));
    }
    Alpha alpha = Alpha.of(byUnit);
    long naming = observers.stream().filter(o -> !o.isEmpty()).count();
    int paired =
        (int)
            observers.stream()
                .filter(o -> o.keySet().stream().anyMatch(u -> byUnit.get(u).size() > 1))
                .count();
    Optional<Lack> lack = lack(alpha, naming);
    OptionalDouble value = lack.isEmpty() ? alpha.value() : OptionalDouble.empty();
    return new Agreement(
        value,
        lack,
        value.isPresent() ? Optional.of(degree(value.getAsDouble())) : Optional.empty(),
        value.isPresent() ? range(alpha, observers) : Optional.empty(),
        paired,
        alpha.units(),
        alpha.values());
  }

  private static Optional<Lack> lack(Alpha alpha, long naming) {
    if (naming == 0) {
      return Optional.of(Lack.NO_WORDS);
    } else if (naming == 1) {
      return Optional.of(Lack.ONE_WORK);
    } else if (alpha.units() == 0) {
      return Optional.of(Lack.NO_PAIRS);
    } else if (alpha.kinds() == 1) {
      return Optional.of(Lack.ONE_WORD);
    }
    return alpha.units() == 1 ? Optional.of(Lack.ONE_CONCEPT) : Optional.empty();
  }

  private static Degree degree(double alpha) {
    if (alpha >= RELIABLE) {
      return Degree.RELIABLE;
    } else if (alpha >= TENTATIVE) {
      return Degree.TENTATIVE;
    }
    return alpha > 0 ? Degree.LOW : Degree.NONE;
  }

  /** Between which values it lies when any one work is left out. */
  private static Optional<Range> range(Alpha alpha, Collection<Map<String, String>> observers) {
    double least = Double.MAX_VALUE;
    double greatest = -Double.MAX_VALUE;
    for (Map<String, String> observer : observers) {
      OptionalDouble without = alpha.valueWithout(observer);
      if (without.isEmpty()) {
        return Optional.empty();
      }
      least = Math.min(least, without.getAsDouble());
      greatest = Math.max(greatest, without.getAsDouble());
    }
    return Optional.of(new Range(least, greatest));
  }
}
