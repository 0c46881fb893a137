package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Outgoing;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * The entry types of biblatex for the kinds of source that the trade uses, each with the fields
 * that its default data model gives it (blx-dm.def, version 3.17) and that we may write there.
 * Those of every type, such as {@code keywords} or {@code url}, are not listed.
 */
enum BiblatexType {
  ARTICLE("editor editora translator series journaltitle volume number issue pages issn"),
  BOOK(
      "editor editora translator edition maintitle volume volumes series number publisher"
          + " location isbn pages"),
  MVBOOK("editor editora translator edition volumes series number publisher location isbn"),
  COLLECTION("editor editora translator edition volumes series number publisher location isbn"),
  MVCOLLECTION("editor editora translator edition volumes publisher location isbn"),
  INBOOK(
      "editor editora translator bookauthor booktitle booksubtitle edition volume volumes series"
          + " number publisher location isbn pages"),
  INCOLLECTION(
      "editor editora translator booktitle booksubtitle edition volume volumes series number"
          + " publisher location isbn pages"),
  BOOKLET("editor howpublished location pages type"),
  MISC("editor howpublished location organization type"),
  ONLINE("editor organization"),
  PATENT("location number type"),
  THESIS("institution location type pages"),
  UNPUBLISHED("howpublished location type"),
  /** The data model gives it no fields at all; the standard styles print it as misc. */
  VIDEO("editor howpublished location organization type");

  private final Set<String> fields;

  BiblatexType(String fields) {
    this.fields = Set.of(fields.split(" "));
  }

  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean takes(String field) {
    return fields.contains(field);
  }

  static BiblatexType of(Outgoing source) {
    Work work = source.work();
    Edition edition = source.edition();
    boolean written = !work.withRole(Role.AUTHOR).isEmpty();
    boolean edited = !work.withRole(Role.EDITOR).isEmpty();
    boolean organised = !work.withRole(Role.ORGANISER).isEmpty();
    if (source.part().isPresent()) {
      return !written && (edited || organised) ? INCOLLECTION : INBOOK;
    }
    boolean inside = edition.container().isPresent();
    return switch (work.kind()) {
      case JOURNAL_ARTICLE -> inside ? ARTICLE : MISC;
      case NEWSLETTER -> inside ? ARTICLE : BOOKLET;
      case MONOGRAPH, EXHIBITION_CATALOGUE, MUSEUM_CATALOGUE, TRADE_DIRECTORY ->
          inside ? edited ? INCOLLECTION : INBOOK : book(source, written, edited || organised);
      case SALE_CATALOGUE -> inside ? INBOOK : BOOK;
      case MANUSCRIPT, STATEMENT -> UNPUBLISHED;
      case TRADE_LIST, LEAFLET -> BOOKLET;
      case THESIS -> THESIS;
      case PATENT -> PATENT;
      case WEB_PAGE ->
          edition.online().flatMap(o -> WebAddress.of(o.url())).isPresent() ? ONLINE : MISC;
      case VIDEO -> VIDEO;
    };
  }

  private static BiblatexType book(Outgoing source, boolean written, boolean edited) {
    boolean several = source.edition().imprint().volumes().orElse(1) > 1;
    boolean collected = !written && edited;
    return collected ? several ? MVCOLLECTION : COLLECTION : several ? MVBOOK : BOOK;
  }

  /** Who a catalogue, list or manuscript is filed under where nobody is named. */
  static Optional<String> firm(Edition edition) {
    return edition.archive().flatMap(Edition.Archive::firm).filter(f -> !f.isBlank());
  }

  static boolean isSale(Work work) {
    return work.kind() == SourceKind.SALE_CATALOGUE;
  }
}
