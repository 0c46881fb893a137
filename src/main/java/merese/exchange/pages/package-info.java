/**
 * The text of books themselves, page by page: from PDF, plain text with form feeds, hOCR and
 * folders of page texts. Read {@link merese.exchange.pages.PageReader}.
 *
 * <p>PDF and hOCR are read in a process of their own ({@link merese.exchange.pages.Extraction}),
 * which has so much memory and so much time and no more, whatever is in the file. PDFBox is used
 * here alone, and so is the HTML parser.
 */
package merese.exchange.pages;
