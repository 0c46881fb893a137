package merese.answer;

import java.util.List;

/**
 * The sources to cite for one or several features.
 *
 * @param features in the order wanted
 * @param consulted whether sources that were looked through without result are named too
 */
public record ReadingListQuestion(
    List<CoverageQuestion> features, Arrangement arrangement, boolean consulted) {
  /** How the sources are put together. */
  public enum Arrangement {
    /** Under each feature, its sources. */
    BY_FEATURE,
    /** Each source once, with its places for all features. */
    BY_SOURCE
  }

  public ReadingListQuestion {
    features = List.copyOf(features);
    if (features.isEmpty()) {
      throw new IllegalArgumentException("a reading list needs at least one feature");
    }
  }
}
