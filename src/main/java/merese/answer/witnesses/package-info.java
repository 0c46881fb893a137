/**
 * Who repeats whom, and how many sources are left that speak for themselves.
 *
 * <p>Read {@link merese.answer.witnesses.Independence} first: which sources are one witness. {@link
 * merese.answer.witnesses.Witnessing} asks it of one feature and adds pictures and citations.
 */
package merese.answer.witnesses;
