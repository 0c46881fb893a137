/**
 * Spreadsheets as CSV (RFC 4180): a header row, then a source a row.
 *
 * <p>Read {@link merese.exchange.csv.CsvReader} first. {@code HeaderRow} says which column of a
 * table is which of ours ({@code Column}), by its header or by a {@link
 * merese.exchange.csv.CsvMapping}; {@code CsvMeaning} is what a row says in the library's terms, a
 * function of the received record alone. A received record has the filled cells as fields: under
 * the names of our columns where they have a home, so that the record means the same without the
 * file it came from, and under their own headers elsewhere. {@link merese.exchange.csv.CsvWriter}
 * writes tables.
 *
 * <p>May use merese.model and commons-csv.
 */
package merese.exchange.csv;
