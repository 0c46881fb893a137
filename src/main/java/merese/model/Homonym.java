package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * A word that must ask, never guess, which concept is meant. It is consulted before labels and adds
 * to what they show; one with a single concept still asks.
 *
 * @param remark a meaning outside the vocabulary, such as "or a true barrel"
 */
public record Homonym(String word, List<String> concepts, Optional<String> remark) {
  public Homonym {
    Require.text(word, "a homonym");
    concepts = List.copyOf(concepts);
    Require.that(!concepts.isEmpty(), "a homonym needs at least one concept");
  }
}
