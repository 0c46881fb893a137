/**
 * Bringing in concepts of another vocabulary, and linking those that are there to the Art &amp;
 * Architecture Thesaurus.
 *
 * <p>Read {@link merese.change.concepts.ConceptImport} first: it compares what a file of SKOS holds
 * with the library's vocabulary and says what it would do, as a {@link
 * merese.change.concepts.ConceptResult}; {@code apply} does it. {@code Understanding} chooses what
 * is in the library's language, {@code Matching} says which concepts are the same, {@code Placing}
 * which facet a new one belongs in, {@code Merging} what a known one would gain. {@link
 * merese.change.concepts.AatLinks} proposes links by the same words.
 *
 * <p>May use {@code exchange.skos}, {@code store} and what is below them.
 */
package merese.change.concepts;
