/**
 * Which edition of a work has which plate, under what number, and what may be cited from the copy
 * that is owned. Read {@link merese.answer.editions.Editions} first.
 *
 * <p>May use {@code answer}, {@code shelf} and what is below them; no other room of {@code answer}.
 */
package merese.answer.editions;
