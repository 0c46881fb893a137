package merese.answer.concordance;

import java.util.List;
import java.util.Optional;

/**
 * What the sources call some features.
 *
 * @param terms words, ids of concepts, or facets for all their concepts
 * @param facet what supplies a noun that the terms leave out
 */
public record ConcordanceQuestion(List<String> terms, Optional<String> facet) {
  public ConcordanceQuestion {
    terms = List.copyOf(terms);
  }
}
