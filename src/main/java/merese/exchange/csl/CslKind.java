package merese.exchange.csl;

import merese.model.SourceKind;

/** Which kind of source an item is by its type alone. */
final class CslKind {
  private CslKind() {}

  /** A page of a site, whose container is the site itself. */
  static boolean isSitePage(String type) {
    return switch (type) {
      case "webpage", "post", "post-weblog" -> true;
      default -> false;
    };
  }

  /** For a type that is not of the schema, or none: a book. */
  static SourceKind of(String type) {
    return switch (type) {
      case "article",
          "article-journal",
          "article-magazine",
          "article-newspaper",
          "review",
          "review-book" ->
          SourceKind.JOURNAL_ARTICLE;
      case "manuscript" -> SourceKind.MANUSCRIPT;
      case "pamphlet" -> SourceKind.LEAFLET;
      case "patent" -> SourceKind.PATENT;
      case "thesis" -> SourceKind.THESIS;
      case "webpage", "post", "post-weblog" -> SourceKind.WEB_PAGE;
      case "motion_picture", "broadcast" -> SourceKind.VIDEO;
      case "interview", "personal_communication", "speech" -> SourceKind.STATEMENT;
      default -> SourceKind.MONOGRAPH;
    };
  }
}
