/**
 * Taking notes: of one place, of a source's own list, and of what was looked through.
 *
 * <p>Read {@link merese.change.notes.NoteTaking} first. What somebody typed is a {@link
 * merese.change.notes.TypedNote}; {@link merese.change.notes.Drafts} makes a note of it, and {@link
 * merese.change.notes.TermChoice} says what its term means, or that somebody has to choose. A note
 * is added to the work's file as that stands on the disk at the moment of writing, under the
 * library's lock.
 */
package merese.change.notes;
