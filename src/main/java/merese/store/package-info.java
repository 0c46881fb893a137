/**
 * The library on disk: plain JSON that the user owns, reads and edits too.
 *
 * <p>Read {@link merese.store.LibraryFolder} first: it opens, lists, reads, checks, saves and makes
 * a library. {@link merese.store.ChangeSet} changes several of its files all or nothing. {@link
 * merese.store.LibraryJson} is the same JSON as bytes, for what an index stores. What is wrong is a
 * {@link merese.store.Problem}, with its file, line and column, thrown by a {@link
 * merese.store.LibraryException}.
 *
 * <p>Inside: {@code Json} is a tree that knows where each value stood in the file, {@code Codec} is
 * one record's keys in both directions (all keys are in the {@code …Codec} files), {@code
 * JsonPatch} carries a change into the tree that was read so that nothing else in the file is
 * touched, and {@code Saver} puts it on the disk whole or not at all.
 *
 * <p>A question starts a program anew and reads through here, so the reading path has no data
 * binding, no regular expression, no {@code String.format} and no lambda. Of the libraries, only
 * Jackson's core is used, and only in {@code JsonReader} and {@code JsonPrinter}.
 */
package merese.store;
