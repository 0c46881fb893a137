/**
 * The questions that a library answers, each with a record that holds the whole answer.
 *
 * <p>Read {@link merese.answer.Covers} first: which sources cover or picture a feature, with the
 * groups that must never be mistaken for coverage. An answer decides everything that is said; the
 * command line and the web page only lay it out.
 *
 * <p>{@link merese.answer.Find} is another kind of question: where words stand, whatever they mean.
 *
 * <p>May use {@code shelf} and what is below it. Rules R1 to R9, named where they are kept, are the
 * project's own: what counts as coverage (R1 narrower, R2 pictures, R3 absence), in which order
 * (R4, R5), how words match (R7) and in which group a note goes (R9).
 */
package merese.answer;
