package merese.change.records;

import merese.exchange.Aspect;

/**
 * A part of a source that a record has otherwise.
 *
 * @param ours what the library says; "" where it says nothing
 * @param theirs what the record says
 * @param taken whether the library is to say what the record says
 */
public record Difference(Aspect part, String ours, String theirs, boolean taken) {}
