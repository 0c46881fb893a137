package merese.search;

/** The names of the index's fields. */
final class Fields {
  static final String TYPE = "type";
  static final String FILE = "file";
  static final String EDITION = "edition";
  static final String ORDER = "order";
  static final String UNIQUE = "unique";
  static final String CONCEPT = "concept";
  static final String MEANING = "meaning";
  static final String POSSIBLE = "possible";
  static final String UNASSIGNED = "unassigned";
  static final String PRINTED = "printed";
  static final String PRINTED_KEY = "printedKey";
  static final String PIECE = "piece";
  static final String QUOTATION = "quotation";
  static final String CLAIM = "claim";
  static final String READING = "reading";
  static final String TITLE = "title";
  static final String AUTHOR = "author";
  static final String IMPRINT = "imprint";
  static final String PLACE = "place";
  static final String DEFINITION = "definition";
  static final String OWN = "own";

  /** All words, each as often as its parts weigh: what the ranking counts. */
  static final String ALL = "all";

  static final String ABOUT = "about";
  static final String YEAR = "year";
  static final String KIND = "kind";
  static final String PICTURED = "pictured";

  /** What kind of thing a hit is; only documents that can be found have it. */
  static final String FOUND = "found";

  static final String FILING = "filing";
  static final String PAYLOAD = "payload";
  static final String SIZE = "size";
  static final String MODIFIED = "modified";
  static final String HASH = "hash";
  static final String SETTLED = "settled";

  /** Values of {@link #TYPE}, besides those that a caller gives its records. */
  static final String NOTE = "note";

  static final String SOURCE = "source";
  static final String CHECK = "check";
  static final String STAMP = "stamp";

  private Fields() {}

  static String unique(String edition, int order) {
    return edition + '\n' + order;
  }

  static String piece(String edition, String piece) {
    return edition + '\n' + piece;
  }
}
