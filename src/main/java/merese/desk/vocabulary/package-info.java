/**
 * The pages of the vocabulary and of the user's own pieces.
 *
 * <p>Read {@link merese.desk.vocabulary.ConceptPage} first. What a form asks is put into words of
 * the room {@code change} by {@code ConceptForms} and {@code PieceForms}; what it rewrites in many
 * places is shown before it is done.
 */
package merese.desk.vocabulary;
