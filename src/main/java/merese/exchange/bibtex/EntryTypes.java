package merese.exchange.bibtex;

import java.util.Set;

/**
 * The types of entry that are known: those of BibTeX (O. Patashnik, BibTeXing, 1988, section 3.1)
 * and those of biblatex (The biblatex package 3.18, section 2.1), some of which styles of BibTeX
 * have too.
 */
final class EntryTypes {
  private static final Set<String> OF_BIBTEX =
      Set.of(
          "article",
          "book",
          "booklet",
          "conference",
          "inbook",
          "incollection",
          "inproceedings",
          "manual",
          "mastersthesis",
          "misc",
          "phdthesis",
          "proceedings",
          "techreport",
          "unpublished");

  private static final Set<String> OF_BOTH =
      Set.of("electronic", "patent", "periodical", "software", "standard", "www");

  private static final Set<String> OF_BIBLATEX =
      Set.of(
          "artwork",
          "audio",
          "bibnote",
          "bookinbook",
          "collection",
          "commentary",
          "dataset",
          "image",
          "inreference",
          "jurisdiction",
          "legal",
          "legislation",
          "letter",
          "movie",
          "music",
          "mvbook",
          "mvcollection",
          "mvproceedings",
          "mvreference",
          "online",
          "performance",
          "reference",
          "report",
          "review",
          "set",
          "suppbook",
          "suppcollection",
          "suppperiodical",
          "thesis",
          "video",
          "xdata");

  private EntryTypes() {}

  static boolean isKnown(String type) {
    return OF_BIBTEX.contains(type) || OF_BOTH.contains(type) || OF_BIBLATEX.contains(type);
  }

  static boolean isOfBiblatexOnly(String type) {
    return OF_BIBLATEX.contains(type);
  }
}
