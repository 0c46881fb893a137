/**
 * Changes of the vocabulary, and of the user's own labels for what is in it.
 *
 * <p>Read {@link merese.change.vocabulary.ConceptChange} first: it does what a {@link
 * merese.change.vocabulary.ConceptRequest} asks, or says what it would do. {@code WholeVocabulary}
 * is the vocabulary while it is changed; {@code References} is everything of the library that names
 * a concept, and follows where one goes; {@code Soundness} refuses what would break a condition of
 * SKOS. {@link merese.change.vocabulary.Coining} and {@link merese.change.vocabulary.Preferring}
 * write opinions. {@link merese.change.vocabulary.ConceptNames} says which concept a word means.
 *
 * <p>No class here touches a term as printed.
 *
 * <p>May use {@code store}, {@code vocabulary} and what is below them.
 */
package merese.change.vocabulary;
