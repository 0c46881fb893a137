package merese.answer.rights;

import java.util.List;
import java.util.Optional;
import merese.model.Locator;

/**
 * Which pictures somebody would like to show.
 *
 * @param terms the features pictured; none for all pictures of a source
 * @param facet the facet that supplies a noun left out
 * @param source key of the only edition wanted
 * @param at the place in that source
 */
public record RightsQuestion(
    List<String> terms, Optional<String> facet, Optional<String> source, Optional<Locator> at) {
  public RightsQuestion {
    terms = List.copyOf(terms);
    if (terms.isEmpty() && source.isEmpty()) {
      throw new IllegalArgumentException("a question needs a term or a source");
    }
    if (at.isPresent() && source.isEmpty()) {
      throw new IllegalArgumentException("a place is in a source");
    }
  }

  public static RightsQuestion of(String term) {
    return new RightsQuestion(List.of(term), Optional.empty(), Optional.empty(), Optional.empty());
  }

  public static RightsQuestion ofSource(String key, Optional<Locator> at) {
    return new RightsQuestion(List.of(), Optional.empty(), Optional.of(key), at);
  }
}
