/**
 * The vocabulary as something to read: all concepts in their order, and all that is known of one.
 *
 * <p>Read {@link merese.answer.vocabulary.ConceptTree} first.
 *
 * <p>May use {@code answer}, {@code shelf} and what is below them; no other room of {@code answer}.
 */
package merese.answer.vocabulary;
