package merese.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Measures of a ranked list against graded judgements, as trec_eval defines them: what is not
 * judged, or judged below 0, is not relevant; the gain of a hit is its grade and its discount the
 * binary logarithm of its rank and one.
 */
public final class RankingMeasures {
  private RankingMeasures() {}

  /** Normalised discounted cumulated gain of the first {@code cut} hits. */
  public static double ndcg(List<String> ranked, Map<String, Integer> grades, int cut) {
    List<Integer> best = new ArrayList<>();
    grades.values().stream()
        .filter(g -> g > 0)
        .sorted(Comparator.reverseOrder())
        .forEach(best::add);
    List<Integer> got = ranked.stream().map(hit -> grade(grades, hit)).toList();
    double ideal = gain(best, cut);
    return ideal == 0 ? 0 : gain(got, cut) / ideal;
  }

  private static double gain(List<Integer> grades, int cut) {
    double gain = 0;
    for (int i = 0; i < Math.min(cut, grades.size()); i++) {
      gain += grades.get(i) * Math.log(2) / Math.log(i + 2);
    }
    return gain;
  }

  /** The mean of the precisions at each relevant hit, over all that are relevant. */
  public static double averagePrecision(List<String> ranked, Map<String, Integer> grades) {
    long relevant = grades.values().stream().filter(g -> g > 0).count();
    double sum = 0;
    int found = 0;
    for (int i = 0; i < ranked.size(); i++) {
      if (grade(grades, ranked.get(i)) > 0) {
        sum += (double) ++found / (i + 1);
      }
    }
    return relevant == 0 ? 0 : sum / relevant;
  }

  public static double precision(List<String> ranked, Map<String, Integer> grades, int cut) {
    return (double) ranked.stream().limit(cut).filter(h -> grade(grades, h) > 0).count() / cut;
  }

  private static int grade(Map<String, Integer> grades, String hit) {
    return Math.max(0, grades.getOrDefault(hit, 0));
  }
}
