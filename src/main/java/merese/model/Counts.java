package merese.model;

/**
 * How many of something there may be: "2", "3-5" or "3+".
 *
 * @param most {@link Integer#MAX_VALUE} where there is no end
 */
public record Counts(int least, int most) {
  private static final int DIGITS = 4;

  /**
   * Reads what a key states.
   *
   * @throws IllegalArgumentException for anything else
   */
  public static Counts parse(String text) {
    int dash = text.indexOf('-');
    boolean open = text.endsWith("+");
    int least = number(text, 0, dash > 0 ? dash : open ? text.length() - 1 : text.length());
    int most = open ? Integer.MAX_VALUE : dash > 0 ? number(text, dash + 1, text.length()) : least;
    Require.that(least <= most, "\"" + text + "\" runs backwards; write the smaller number first");
    return new Counts(least, most);
  }

  private static int number(String text, int from, int to) {
    boolean digits = to > from && to - from <= DIGITS;
    for (int i = from; digits && i < to; i++) {
      digits = text.charAt(i) >= '0' && text.charAt(i) <= '9';
    }
    Require.that(digits, "\"" + text + "\" is no number; write it as in 2, 3-5 or 3+");
    return Integer.parseInt(text.substring(from, to));
  }

  public boolean hold(int count) {
    return count >= least && count <= most;
  }

  /** Whether some number is in both. */
  public boolean meet(Counts other) {
    return least <= other.most && other.least <= most;
  }

  /** "2", "3 to 5", "3 or more". */
  public String words() {
    if (most == Integer.MAX_VALUE) {
      return least + " or more";
    }
    return least == most ? Integer.toString(least) : least + " to " + most;
  }
}
