/**
 * Records of other formats in and out; a package for each format.
 *
 * <p>Read {@link merese.exchange.RecordReader} and {@link merese.exchange.RecordWriter} first. A
 * reader hands on each source as an {@link merese.exchange.Incoming}: what was understood of it,
 * and with it the record as it came ({@link merese.model.ReceivedRecord}). A writer of the same
 * format gives back each field as it came, unless what it was read as has been changed since:
 * {@link merese.exchange.Aspect} says what a description is compared by.
 *
 * <p>May use merese.model, merese.vocabulary and merese.time; CSL items come from merese.citation.
 */
package merese.exchange;
