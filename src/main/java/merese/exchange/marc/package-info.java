/**
 * MARC 21 in and out: ISO 2709 and MARCXML.
 *
 * <p>Read {@link merese.exchange.marc.MarcMeaning} first: what the fields of a record say in the
 * library's terms. {@link merese.exchange.marc.MarcReader} and {@link
 * merese.exchange.marc.MarcXmlReader} make the same {@code MarcField}s of the two forms, so that a
 * record is the same in either; {@link merese.exchange.marc.MarcXmlWriter} writes sources, and
 * gives back the fields of a received record as they came. marc.md beside this file lists the
 * fields.
 *
 * <p>May use merese.model, merese.exchange and its identifiers; marc4j's tables of MARC-8 and the
 * Java library's XML are used only here.
 */
package merese.exchange.marc;
