/**
 * What alters a library, and the check that it is sound.
 *
 * <p>Read {@link merese.change.LibraryCheck} first: it reads a whole library from disk, without its
 * index, and gathers everything that is wrong in it. {@link merese.change.Merge} and {@link
 * merese.change.Split} say in a preview what they would do, each thing an {@link
 * merese.change.Effect}, and do it all or nothing.
 *
 * <p>Sub-packages change the vocabulary, the user's own pieces, and bring in what others recorded.
 *
 * <p>May use {@code shelf} and what is below it.
 */
package merese.change;
