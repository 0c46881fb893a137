package merese.answer.pull;

import java.util.List;
import java.util.Optional;
import merese.answer.Script;

/**
 * What books and pieces are to be taken out for.
 *
 * @param terms features, each a word or words or a concept's id; none with a script
 * @param facet the facet that supplies a head noun left out of a term
 * @param script what is to be shown in which order; empty with terms
 */
public record PullQuestion(List<String> terms, Optional<String> facet, Optional<Script> script) {
  public PullQuestion {
    terms = List.copyOf(terms);
    if (terms.isEmpty() == script.isEmpty()) {
      throw new IllegalArgumentException("either terms or a script");
    }
  }
}
