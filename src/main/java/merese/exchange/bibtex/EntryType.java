package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.SourceKind;

/**
 * The entry types of BibTeX (O. Patashnik, BibTeXing, 1988, section 3.1) for the kinds of source
 * that the trade uses. A type asks for certain fields; where a source lacks one, it falls back to
 * booklet, "a work that is printed and bound, but without a named publisher", or where nobody is
 * named to misc, which asks for nothing.
 */
enum EntryType {
  ARTICLE,
  BOOK,
  BOOKLET,
  INCOLLECTION,
  MASTERSTHESIS,
  MISC,
  PHDTHESIS,
  UNPUBLISHED;

  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Whether the field is one of the type's, to BibTeX as to the data model of biblatex.
   *
   * @param written whether there is an author; a book has one or the other
   */
  boolean takesEditor(boolean written) {
    return switch (this) {
      case BOOK -> !written;
      case UNPUBLISHED, PHDTHESIS, MASTERSTHESIS -> false;
      default -> true;
    };
  }

  boolean takesTranslator() {
    return this == BOOK || this == INCOLLECTION || this == ARTICLE;
  }

  static EntryType of(Outgoing source, Makers makers) {
    Edition edition = source.edition();
    boolean dated = edition.imprint().year().isPresent();
    boolean written = makers.hasAuthors();
    boolean published =
        edition.imprint().publisher().filter(p -> !LatexText.of(p).isEmpty()).isPresent();
    if (source.part().isPresent()) {
      return written && dated && published ? INCOLLECTION : MISC;
    }
    SourceKind kind = source.work().kind();
    return switch (kind) {
      case JOURNAL_ARTICLE, NEWSLETTER ->
          edition.container().isPresent() && written && dated ? ARTICLE : MISC;
      case MONOGRAPH, EXHIBITION_CATALOGUE, MUSEUM_CATALOGUE, TRADE_DIRECTORY ->
          edition.container().isPresent()
              ? written && dated && published ? INCOLLECTION : MISC
              : makers.hasAny() && dated && published ? BOOK : booklet(makers);
      case MANUSCRIPT -> written && dated ? UNPUBLISHED : MISC;
      case TRADE_LIST, LEAFLET -> booklet(makers);
      case THESIS -> written && dated ? thesis(edition.archive()) : MISC;
      case SALE_CATALOGUE, PATENT, WEB_PAGE, VIDEO, STATEMENT -> MISC;
    };
  }

  private static EntryType booklet(Makers makers) {
    return makers.hasAny() ? BOOKLET : MISC;
  }

  private static EntryType thesis(Optional<Edition.Archive> university) {
    String degree = university.flatMap(Edition.Archive::degree).orElse("").strip();
    return university.isEmpty() ? MISC : degree.startsWith("M") ? MASTERSTHESIS : PHDTHESIS;
  }
}
