/**
 * What a library of sources holds: works, editions, copies and the notes taken from them, the
 * vocabulary that says what a printed word means, and the user's own pieces.
 *
 * <p>Read {@link merese.model.Note} first: everything else says where a note stands ({@link
 * merese.model.Edition}), what it means ({@link merese.model.Concept}) or how far it may be
 * believed ({@link merese.model.Claim}, {@link merese.model.Check}).
 *
 * <p>Everything here is an immutable value. There is no input or output and no type of a library.
 */
package merese.model;
