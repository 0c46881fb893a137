package merese.answer.quote;

import java.util.List;
import java.util.Optional;

/**
 * What is to be quoted.
 *
 * @param terms each one feature; none for whatever the sources are quoted on
 * @param facet the facet that supplies a noun left out
 * @param sources keys of editions, each with a part's id after "#" where just that is wanted; none
 *     for all
 * @param words only quotations in which these stand one after another, spelt however (R7)
 */
public record QuoteQuestion(
    List<String> terms, Optional<String> facet, List<String> sources, Optional<String> words) {
  public QuoteQuestion {
    terms = List.copyOf(terms);
    sources = List.copyOf(sources);
    if (terms.isEmpty() && sources.isEmpty()) {
      throw new IllegalArgumentException("a question needs a term or a source");
    }
  }

  public static QuoteQuestion of(String term) {
    return new QuoteQuestion(List.of(term), Optional.empty(), List.of(), Optional.empty());
  }

  public static QuoteQuestion ofSource(String key) {
    return new QuoteQuestion(List.of(), Optional.empty(), List.of(key), Optional.empty());
  }
}
