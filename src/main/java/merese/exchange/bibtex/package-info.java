/**
 * BibTeX and BibLaTeX, in and out.
 *
 * <p>Out: read {@link merese.exchange.bibtex.BibtexWriter} first. {@code EntryType} and {@code
 * BiblatexType} say which entry type a source gets, {@code EntryMaker} and {@code BiblatexMaker}
 * which fields; {@code NoteField} and {@code AnnoteField} make the two that are sentences. Nothing
 * in a library can carry a command into a document, because every text passes {@code LatexText},
 * every name {@code BibtexNames}, every address {@code WebAddress} and every key {@code
 * BibtexKeys}. {@code BibtexNameSplit} is how BibTeX itself takes a name apart.
 *
 * <p>In: read {@link merese.exchange.bibtex.BibtexReader} first. {@code BibtexSplitter} cuts a file
 * into entries, {@code EntryParser} reads one, {@code BibtexItems} puts its strings in, {@code
 * Survey} knows what an entry needs of others, {@code BibtexReading} hands on. What a record means
 * is {@link merese.exchange.bibtex.BibtexMeaning}'s to say; {@code StoredValue} is how a value is
 * kept, {@code LatexReader} reads LaTeX as plain text. {@code bibtex.md} has it all in tables.
 *
 * <p>May use merese.model and merese.exchange.identifier. jbibtex is what the tests hold it
 * against.
 */
package merese.exchange.bibtex;
