package merese.citation;

/** What a citation is written as. */
public enum Output {
  /** No mark-up: titles are not set off. */
  TEXT,
  /** CommonMark, in line: italics as {@code *title*}, addresses as {@code <https://…>}. */
  MARKDOWN,
  /** A run of HTML without a block around it: {@code <i>}, {@code <b>}, {@code <a href>}. */
  HTML;

  /** Words that are no citation, such as a heading, so that this output shows them as they are. */
  public String literal(String words) {
    return Escape.of(this).text(Marks.removedFrom(PlainText.of(words)));
  }

  /**
   * One line of somebody's words so that this output shows them letter by letter: quotation marks
   * stay as they were typed.
   */
  public String verbatim(String line) {
    Escape escape = Escape.of(this);
    return escape.wholeLine(escape.text(line));
  }
}
