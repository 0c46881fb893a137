/**
 * Where a piece of the user's own is published, what is like it, and how it may be described.
 *
 * <p>Read {@link merese.answer.literature.Referring} first. "Lit." is of the very piece and needs
 * evidence; "Cf." is of another. An attribution is given with whoever made it, never as a fact.
 */
package merese.answer.literature;
