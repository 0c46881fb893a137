package merese.search;

/**
 * What a run of words is to the document that it stands in. The weight is how often a word of it
 * counts in the ranking, as the weights of BM25F (S. Robertson, H. Zaragoza and M. Taylor, "Simple
 * BM25 extension to multiple weighted fields", CIKM 2004: a weighted word counts as so many words
 * of one field).
 */
public enum Part {
  /** A term as printed, or a label. */
  TERM(Fields.TERM, 4),
  QUOTATION(Fields.QUOTATION, 2),
  CLAIM(Fields.CLAIM, 2),
  /** What the user makes of it. */
  READING(Fields.READING, 1),
  TITLE(Fields.TITLE, 4),
  SUBTITLE(Fields.TITLE, 3),
  AUTHOR(Fields.AUTHOR, 4),
  /** Publisher, series, journal, year and whatever else a record says. */
  IMPRINT(Fields.IMPRINT, 2),
  /** A place of publication, or one that a note claims. */
  PLACE(Fields.PLACE, 1),
  DEFINITION(Fields.DEFINITION, 2),
  /** What one of the user's own pieces is called. */
  PIECE(Fields.OWN, 4),
  /** The user's own words, apart from readings. */
  OWN(Fields.OWN, 2),
  /** Labels of the concepts that a note has; no words of the note itself. */
  MEANING("", 1),
  /** Authors of the source that a note is from; no words of the note itself. */
  NOTED_FROM("", 1);

  private final String field;
  private final int weight;

  Part(String field, int weight) {
    this.field = field;
    this.weight = weight;
  }

  /** The index's field for words that stand in the document; empty for those that do not. */
  String field() {
    return field;
  }

  int weight() {
    return weight;
  }

  /** Whether the words stand in the document, so that a phrase may be looked for in them. */
  public boolean stands() {
    return !field.isEmpty();
  }
}
