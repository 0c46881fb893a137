package merese.model;

/** The kinds of source that the trade uses (common practice, no source). */
public enum SourceKind implements Coded {
  MONOGRAPH("monograph"),
  JOURNAL_ARTICLE("journal article"),
  NEWSLETTER("newsletter"),
  EXHIBITION_CATALOGUE("exhibition catalogue"),
  MUSEUM_CATALOGUE("museum catalogue"),
  SALE_CATALOGUE("sale catalogue"),
  MANUSCRIPT("manuscript"),
  TRADE_LIST("printed trade list"),
  TRADE_DIRECTORY("trade directory"),
  PATENT("patent or registered design"),
  LEAFLET("leaflet"),
  THESIS("thesis"),
  WEB_PAGE("web page"),
  VIDEO("video"),
  STATEMENT("statement or letter");

  private final String words;

  SourceKind(String words) {
    this.words = words;
  }

  /** The kind in the words of an answer. */
  public String words() {
    return words;
  }
}
