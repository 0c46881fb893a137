package merese.vocabulary;

/**
 * A page's text on one line, as a passage of it is shown: a word that is broken by a sign which
 * only breaks it is whole again, and one with a hyphen keeps that.
 */
public final class OneLine {
  private final String text;
  private final int[] at;

  OneLine(CharSequence text, int[] at) {
    this.text = text.toString();
    this.at = at;
  }

  public String text() {
    return text;
  }

  /** Where a place of the page's text is on this line, in chars; also for the end of the text. */
  public int at(int place) {
    return at[place];
  }
}
