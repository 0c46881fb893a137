/**
 * Who prints a word first, in this library: by edition, never "first ever". Read {@link
 * merese.answer.first.FirstUses} first.
 *
 * <p>May use {@code answer}, {@code shelf} and what is below them; no other room of {@code answer}.
 */
package merese.answer.first;
