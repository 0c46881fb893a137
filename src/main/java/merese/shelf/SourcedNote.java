package merese.shelf;

import merese.model.Note;

/** A note and where it is from; {@code order} is its position in its edition, from 0. */
public record SourcedNote(Source source, int order, Note note) {}
