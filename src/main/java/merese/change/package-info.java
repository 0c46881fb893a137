/**
 * What alters a library, and the check that it is sound.
 *
 * <p>Read {@link merese.change.LibraryCheck} first: it reads a whole library from disk, without its
 * index, and gathers everything that is wrong in it.
 *
 * <p>May use {@code shelf} and what is below it.
 */
package merese.change;
