package merese.answer.concordance;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Krippendorff's alpha for nominal data, where values may be missing: 1 less the disagreement that
 * is observed over the one expected by chance.
 *
 * <p>Klaus Krippendorff, "Computing Krippendorff's Alpha-Reliability" (2011), section C. A value
 * that is alone on its unit cannot be paired and is left out. Sums run in a fixed order, so that
 * the same data give the same number to the last digit.
 */
final class Alpha {
  private final Map<String, Map<String, Integer>> units = new TreeMap<>();
  private final Map<String, Integer> totals = new TreeMap<>();
  private int values;

  /** Of units, each with the values that its observers gave. */
  static Alpha of(Map<String, ? extends Collection<String>> byUnit) {
    Alpha alpha = new Alpha();
    byUnit.forEach(
        (unit, given) -> {
          if (given.size() > 1) {
            Map<String, Integer> counts = new HashMap<>();
            given.forEach(v -> counts.merge(v, 1, Integer::sum));
            alpha.units.put(unit, counts);
            given.forEach(v -> alpha.totals.merge(v, 1, Integer::sum));
            alpha.values += given.size();
          }
        });
    return alpha;
  }

  /** How many units have two values or more. */
  int units() {
    return units.size();
  }

  /** How many values can be paired with another of their unit. */
  int values() {
    return values;
  }

  /** How many different values can be paired. */
  int kinds() {
    return totals.size();
  }

  /** Empty where nothing can be paired, or all values are the same, so that none could differ. */
  OptionalDouble value() {
    double observed = 0;
    for (Map<String, Integer> counts : units.values()) {
      observed += disagreement(counts.values());
    }
    return value(observed, totals.values());
  }

  /**
   * The same without one observer.
   *
   * @param given for each unit the value that the observer gave; each is among the values
   * @return empty also where fewer than two units could still be paired
   */
  OptionalDouble valueWithout(Map<String, String> given) {
    double observed = 0;
    int left = units.size();
    Map<String, Integer> rest = new TreeMap<>(totals);
    for (Map.Entry<String, Map<String, Integer>> unit : units.entrySet()) {
      String value = given.get(unit.getKey());
      if (value == null) {
        observed += disagreement(unit.getValue().values());
        continue;
      }
      Map<String, Integer> counts = new HashMap<>(unit.getValue());
      takeOne(counts, value);
      takeOne(rest, value);
      if (sum(counts.values()) > 1) {
        observed += disagreement(counts.values());
      } else {
        left--;
        counts.keySet().forEach(v -> takeOne(rest, v));
      }
    }
    return left < 2 ? OptionalDouble.empty() : value(observed, rest.values());
  }

  private static void takeOne(Map<String, Integer> counts, String value) {
    counts.computeIfPresent(value, (v, n) -> n == 1 ? null : n - 1);
  }

  private static OptionalDouble value(double observed, Collection<Integer> totals) {
    return totals.size() < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(1 - observed / disagreement(totals));
  }

  /** How many ordered pairs of values differ, over how many others each value has. */
  private static double disagreement(Collection<Integer> counts) {
    long sum = sum(counts);
    long same = 0;
    for (int count : counts) {
      same += (long) count * count;
    }
    return (double) (sum * sum - same) / (sum - 1);
  }

  private static long sum(Collection<Integer> counts) {
    long sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }
}
