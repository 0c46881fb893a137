package merese.change.concepts;

import java.util.Map;
import java.util.Optional;
import merese.exchange.skos.SkosAddresses;

/**
 * What the user has said about an import of concepts.
 *
 * @param language of the labels to take, a language tag; without it the library's. A tag takes in
 *     its regional varieties, and texts without a tag
 * @param addresses those of the library's own concepts
 * @param facet for new concepts that nothing else places; made where there is none of that name
 * @param replace where the file says otherwise than the library, take its word
 * @param answers to questions: a concept of the file (its address, notation or preferred label) is
 *     a concept of the library (its id) or {@value #NEW}; a word that would have two meanings is to
 *     be taken ({@value #TAKE})
 */
public record ConceptOptions(
    Optional<String> language,
    SkosAddresses addresses,
    Optional<String> facet,
    boolean replace,
    Map<String, String> answers) {
  /** The answer that makes a concept of its own. */
  public static final String NEW = "new";

  /** The answer that gives a word a second meaning. */
  public static final String TAKE = "take";

  public ConceptOptions {
    answers = Map.copyOf(answers);
  }

  public static ConceptOptions usual() {
    return new ConceptOptions(
        Optional.empty(), SkosAddresses.usual(), Optional.empty(), false, Map.of());
  }
}
