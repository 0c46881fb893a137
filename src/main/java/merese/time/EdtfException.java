package merese.time;

/**
 * A text that is no EDTF: where it goes wrong, what is wrong, and what to write instead. The
 * message quotes the text and ends with the remedy.
 */
public final class EdtfException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private static final int QUOTED_AT_MOST = 80;

  private final int offset;
  private final String problem;
  private final String remedy;

  EdtfException(String text, int offset, String problem, String remedy) {
    super(
        "cannot read the date \""
            + shortened(text)
            + "\" at character "
            + (text.codePointCount(0, offset) + 1)
            + ": "
            + problem
            + "; "
            + remedy);
    this.offset = offset;
    this.problem = problem;
    this.remedy = remedy;
  }

  private static String shortened(String text) {
    return text.length() <= QUOTED_AT_MOST
        ? text
        : text.substring(0, text.offsetByCodePoints(0, QUOTED_AT_MOST / 2)) + "…";
  }

  /** Where the trouble starts, counted in chars from 0; at most the length of the text. */
  public int offset() {
    return offset;
  }

  /** What is wrong. */
  public String problem() {
    return problem;
  }

  /** What to write instead. */
  public String remedy() {
    return remedy;
  }
}
