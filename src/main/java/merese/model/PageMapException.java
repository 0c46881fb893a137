package merese.model;

/**
 * A text that cannot be read as a {@link PageMap}: where it goes wrong, what is wrong, and what to
 * write instead. The message quotes the part concerned and ends with the remedy.
 */
public final class PageMapException extends IllegalArgumentException implements ForTheUser {
  private static final long serialVersionUID = 1L;
  private static final int QUOTED_AT_MOST = 80;

  private final String text;
  private final int offset;
  private final String remedy;

  PageMapException(String text, int offset, String problem, String remedy) {
    super(
        "cannot read the page map \""
            + shortened(text)
            + "\" at character "
            + (offset + 1)
            + ": "
            + problem
            + "; "
            + remedy);
    this.text = text;
    this.offset = offset;
    this.remedy = remedy;
  }

  private static String shortened(String text) {
    return text.length() <= QUOTED_AT_MOST ? text : text.substring(0, QUOTED_AT_MOST) + "…";
  }

  /** The whole map, as it was typed. */
  public String text() {
    return text;
  }

  /** Where the trouble starts, counted in chars from 0; at most the length of the text. */
  public int offset() {
    return offset;
  }

  /** What to do about it. */
  public String remedy() {
    return remedy;
  }
}
