/**
 * BibTeX. The only room that uses jbibtex.
 *
 * <p>Read {@link merese.exchange.bibtex.BibtexExport} first: it writes sources, each a {@link
 * merese.exchange.Outgoing}, as one .bib file. {@code EntryType} says which entry type a source
 * gets, {@code EntryMaker} which fields; {@code NoteField} and {@code AnnoteField} make the two
 * that are sentences.
 *
 * <p>Nothing in a library can carry a command into a document, because every text passes {@code
 * LatexText}, every name {@code BibtexNames}, every address {@code WebAddress} and every key {@code
 * BibtexKeys}. {@code BibtexNameSplit} is how BibTeX itself takes a name apart.
 *
 * <p>May use merese.model and jbibtex.
 */
package merese.exchange.bibtex;
