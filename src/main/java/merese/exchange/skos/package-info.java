/**
 * Vocabularies: SKOS in and out, and terms of the Art &amp; Architecture Thesaurus.
 *
 * <p>Read {@link merese.exchange.skos.SkosReader} and {@link merese.exchange.skos.SkosWriter}
 * first. A file becomes a {@link merese.exchange.skos.SkosReading}, which knows no library; what of
 * it a library takes is decided in merese.change. {@code RdfFile} is the only class that touches
 * Apache Jena; {@code ReadingMaker} makes concepts of its statements and judges them by {@link
 * merese.vocabulary.SkosIntegrity}; {@code OwnNotes} is both directions of what we say in notes.
 *
 * <p>Jena takes a second to start, so nothing here may be named by a class that another command
 * loads. May use merese.model, merese.vocabulary, Apache Jena and Jackson's core.
 */
package merese.exchange.skos;
