package merese.answer.witnesses;

import java.util.List;
import java.util.Optional;

/**
 * Who speaks for themselves on some features.
 *
 * @param terms words or ids of concepts
 * @param facet what supplies a noun that the terms leave out
 */
public record WitnessesQuestion(List<String> terms, Optional<String> facet) {
  public WitnessesQuestion {
    terms = List.copyOf(terms);
  }
}
