package merese.vocabulary;

/** A word of a page. */
public final class PageWord {
  private final String letters;
  private final String exact;
  private final int start;
  private final int end;

  /** Made when first asked for: where a word stands exactly, nobody asks. */
  private String loose;

  private PageWord(String letters, String exact, String loose, int start, int end) {
    this.letters = letters;
    this.exact = exact;
    this.loose = loose;
    this.start = start;
    this.end = end;
  }

  /**
   * @param letters lower-case and plain
   */
  static PageWord of(String letters, int start, int end) {
    return new PageWord(letters, MisreadWords.exact(letters), null, start, end);
  }

  /** The same word at another place. */
  PageWord at(int from, int to) {
    return new PageWord(letters, exact, loose, from, to);
  }

  /** Its folded form; never empty. */
  public String exact() {
    return exact;
  }

  /** What it folds to with letters that are taken for each other made the same. */
  public String loose() {
    if (loose == null) {
      loose = MisreadWords.loose(letters, exact);
    }
    return loose;
  }

  /** Where it begins in the page's text, in chars. */
  public int start() {
    return start;
  }

  /** Where it ends, exclusive; a word that is mended runs over the end of a line. */
  public int end() {
    return end;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PageWord word
        && letters.equals(word.letters)
        && start == word.start
        && end == word.end;
  }

  @Override
  public int hashCode() {
    return 31 * letters.hashCode() + start;
  }

  @Override
  public String toString() {
    return exact + " at " + start;
  }
}
