package merese.exchange.bibtex;

import java.util.Set;
import merese.exchange.bibtex.BibtexItems.Entry;
import merese.exchange.bibtex.EntryParser.Assigned;

/**
 * Tells a file for biblatex from one for BibTeX: by types and fields that only biblatex knows (The
 * biblatex package 3.18, sections 2.1 and 2.2). Those that styles of BibTeX know too, such as
 * {@code url}, {@code langid} and {@code @patent}, say nothing.
 */
final class FormatSense {
  static final String BIBTEX = "bibtex";
  static final String BIBLATEX = "biblatex";

  private static final Set<String> FIELDS =
      Set.of(
          "afterword",
          "annotator",
          "bookauthor",
          "bookpagination",
          "booksubtitle",
          "booktitleaddon",
          "commentator",
          "date",
          "editora",
          "editorb",
          "editorc",
          "editortype",
          "editoratype",
          "editorbtype",
          "editorctype",
          "entryset",
          "entrysubtype",
          "eprintclass",
          "eprinttype",
          "eventdate",
          "eventtitle",
          "eventtitleaddon",
          "execute",
          "foreword",
          "holder",
          "ids",
          "indexsorttitle",
          "indextitle",
          "introduction",
          "issuesubtitle",
          "issuetitle",
          "journalsubtitle",
          "journaltitle",
          "journaltitleaddon",
          "langidopts",
          "location",
          "mainsubtitle",
          "maintitle",
          "maintitleaddon",
          "nameaddon",
          "origlanguage",
          "origlocation",
          "origpublisher",
          "origtitle",
          "pagetotal",
          "pagination",
          "related",
          "relatedoptions",
          "relatedstring",
          "relatedtype",
          "shortauthor",
          "shorteditor",
          "shortseries",
          "sortname",
          "sorttitle",
          "sortyear",
          "subtitle",
          "titleaddon",
          "venue",
          "xdata",
          "xref");

  private FormatSense() {}

  static boolean isBiblatex(String format) {
    return format.equals(BIBLATEX);
  }

  static boolean isForBiblatexOnly(Entry entry) {
    if (EntryTypes.isOfBiblatexOnly(entry.type())) {
      return true;
    }
    for (Assigned field : entry.values()) {
      boolean names = field.name().equals("author") || field.name().equals("editor");
      if (FIELDS.contains(field.name())
          || names && hasExtendedName(StoredValue.of(field.value()))) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasExtendedName(String names) {
    return names.contains("=") && TextList.ofAnd(names).stream().anyMatch(NameReader::isExtended);
  }
}
