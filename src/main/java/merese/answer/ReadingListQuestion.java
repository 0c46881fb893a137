package merese.answer;

import java.util.List;
import java.util.Optional;

/**
 * The sources to cite for one or several features.
 *
 * @param features in the order wanted; there may be none where there is a script
 * @param script what gives the order, and sources of its own
 * @param consulted whether sources that were looked through without result are named too
 */
public record ReadingListQuestion(
    List<CoverageQuestion> features,
    Arrangement arrangement,
    boolean consulted,
    Optional<Script> script) {
  /** How the sources are put together. */
  public enum Arrangement {
    /** Under each feature, its sources. */
    BY_FEATURE,
    /** Each source once, with its places for all features. */
    BY_SOURCE
  }

  public ReadingListQuestion {
    features = List.copyOf(features);
    if (features.isEmpty() && script.isEmpty()) {
      throw new IllegalArgumentException("a reading list needs at least one feature");
    }
  }
}
