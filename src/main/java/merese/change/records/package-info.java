/**
 * Bringing in sources that other programs describe.
 *
 * <p>Read {@link merese.change.records.SourceImport} first: it takes the records of a file one by
 * one, decides for each what it is to this library ({@link merese.change.records.Item}), and does
 * it or only says what it would do. {@code KnownSources} finds what a record may be the same as,
 * {@code Comparison} says what it would add to a source that is there.
 *
 * <p>May use {@code exchange}, {@code store} and what is below them.
 */
package merese.change.records;
