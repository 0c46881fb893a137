/**
 * Features one after another, to be shown to people: each with its names, its pictures and what
 * tells it from its look-alikes.
 *
 * <p>Read {@link merese.answer.showing.Showings}.
 */
package merese.answer.showing;
