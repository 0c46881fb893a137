/**
 * A library together with its index: the one door for reading and writing.
 *
 * <p>Read {@link merese.shelf.Shelf} first. Opening a shelf brings the index up to date with the
 * files; a question then reads the index alone. {@link merese.shelf.UpToDate} says what that took.
 *
 * <p>May use {@code store}, {@code search}, {@code vocabulary} and {@code model}; nothing above it
 * knows files or Lucene.
 */
package merese.shelf;
