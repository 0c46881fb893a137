package merese.cli;

/**
 * A piece of what is said around a table, in whatever form it is written.
 *
 * @param name what an item is about; "" for other kinds
 */
record Block(Kind kind, String name, String text) {
  /** What a piece is. */
  enum Kind {
    HEADING,
    SUBHEADING,
    TEXT,
    ITEM
  }

  static Block heading(String text) {
    return new Block(Kind.HEADING, "", text);
  }

  static Block subheading(String text) {
    return new Block(Kind.SUBHEADING, "", text);
  }

  static Block text(String text) {
    return new Block(Kind.TEXT, "", text);
  }

  static Block item(String name, String text) {
    return new Block(Kind.ITEM, name, text);
  }

  /** Without what keeps words on one line of a screen. */
  Block loose() {
    return new Block(kind, Wrap.loose(name), Wrap.loose(text));
  }
}
