/**
 * CSL-JSON, the items that citation processors are given (CSL 1.0.2, csl-data.json; the list of
 * variables here is from memory).
 *
 * <p>Read {@link merese.exchange.csl.CslJsonReader} first, then {@code CslMeaning}: what an item
 * says in the library's terms, a function of the received record alone. A received record has the
 * item's variables as fields in their order. A text stands as it is and everything else as JSON
 * without spaces ({@code FieldText}), so that what goes out is the same JSON: {@code page = 12-14},
 * {@code volume = 10}, {@code volume = "10"}, {@code issued = {"date-parts":[[1949]]}}.
 *
 * <p>{@link merese.exchange.csl.CslJsonWriter} gives each variable back as it came, unless what it
 * fed has been changed ({@code ItemUpdate}, {@code Variables}). {@code ItemMaker} makes an item
 * from the library, by way of the item that merese.citation cites with. What its variables cannot
 * say stands in {@code custom} under a name of our own ({@code CslCustom}).
 *
 * <p>May use merese.model, merese.citation and jackson-core.
 */
package merese.exchange.csl;
