package merese.answer.fewest;

import java.util.List;
import java.util.Optional;

/**
 * Which sources to take down for a number of features.
 *
 * @param terms words for the features, ids of concepts, or facets for all their concepts
 * @param facet the facet that supplies a head noun left out of a term
 * @param pictured whether each feature has to be pictured
 * @param owned whether only sources count of which the user has a copy
 * @param must keys of sources that are taken in any case
 * @param without keys of sources that are not taken
 * @param seconds after which the search ends, proved or not
 */
public record FewestQuestion(
    List<String> terms,
    Optional<String> facet,
    boolean pictured,
    boolean owned,
    List<String> must,
    List<String> without,
    int seconds) {
  /** How long is searched unless something else is asked for. */
  public static final int USUAL_SECONDS = 30;

  public FewestQuestion {
    terms = List.copyOf(terms);
    must = List.copyOf(must);
    without = List.copyOf(without);
  }

  /** A question with nothing narrowed. */
  public static FewestQuestion of(boolean pictured, String... terms) {
    return new FewestQuestion(
        List.of(terms), Optional.empty(), pictured, false, List.of(), List.of(), USUAL_SECONDS);
  }
}
