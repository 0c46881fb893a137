package merese.exchange.bibtex;

import java.util.Optional;
import merese.model.SourceKind;

/**
 * What kind of source an entry is: as our own export says among its keywords, else by its type.
 *
 * @param ours whether the keywords are those that our own export writes
 * @param mine whether the keywords say that it is the user's own work
 */
record KindReader(SourceKind kind, boolean ours, boolean mine) {
  private static final String OWN = ", own work";

  static KindReader of(String type, EntryFields fields) {
    String keywords = fields.plain("keywords").orElse("");
    boolean own = keywords.endsWith(OWN);
    String words = own ? keywords.substring(0, keywords.length() - OWN.length()) : keywords;
    for (SourceKind kind : SourceKind.values()) {
      if (kind.words().equals(words)) {
        return new KindReader(kind, true, own);
      }
    }
    return new KindReader(byType(type, fields), false, false);
  }

  private static SourceKind byType(String type, EntryFields fields) {
    return switch (type) {
      case "article", "suppperiodical", "review" -> SourceKind.JOURNAL_ARTICLE;
      case "thesis", "phdthesis", "mastersthesis" -> SourceKind.THESIS;
      case "unpublished" -> SourceKind.MANUSCRIPT;
      case "online", "electronic", "www" -> SourceKind.WEB_PAGE;
      case "patent" -> SourceKind.PATENT;
      case "letter" -> SourceKind.STATEMENT;
      case "video", "movie" -> SourceKind.VIDEO;
      case "misc" -> isOnlyOnline(fields) ? SourceKind.WEB_PAGE : SourceKind.MONOGRAPH;
      default -> SourceKind.MONOGRAPH;
    };
  }

  private static boolean isOnlyOnline(EntryFields fields) {
    Optional<String> howPublished = fields.latex("howpublished");
    boolean onlyAddress =
        howPublished.isPresent() && howPublished.flatMap(WebField::alone).isPresent();
    boolean otherwise =
        fields.has("publisher", "booktitle", "journal", "journaltitle", "isbn", "institution")
            || howPublished.isPresent() && !onlyAddress;
    return !otherwise && (onlyAddress || fields.has("url"));
  }
}
