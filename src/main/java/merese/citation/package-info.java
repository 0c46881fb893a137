/**
 * Citations through CSL: notes, short notes and lists of sources in any of the published styles.
 * The only room that uses citeproc-java.
 *
 * <p>Read {@link merese.citation.Citations} first: it cites a {@link merese.citation.Source} in a
 * style that {@link merese.citation.StyleCatalogue} names, as one of the {@link
 * merese.citation.Output} forms. The short form of an answer, "Quenby 1949", needs none of this and
 * is {@link merese.model.ShortReference}.
 *
 * <p>On the way, a work and its edition become a CSL item in {@code CslItem}; a printed locator is
 * read in {@code CslLocator} and nowhere else; the style is rewritten for the situation in {@code
 * Occurrence}; {@code Processor} has it rendered; and {@code CitationFormat} writes the result.
 * Text from a library is made harmless on the way in ({@code PlainText}) and escaped on the way out
 * ({@code Escape}).
 *
 * <p>May use merese.model, citeproc-java and the JDK's XML.
 */
package merese.citation;
