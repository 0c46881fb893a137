package merese.answer.written;

/** Words as they may be printed anywhere. */
public final class Harmless {
  private Harmless() {}

  /**
   * The words with a mark in the place of what would steer a terminal or turn the direction of
   * writing, since what a library holds may come from anywhere.
   */
  public static String words(String words) {
    StringBuilder clean = null;
    for (int i = 0; i < words.length(); i++) {
      if (steers(words.charAt(i))) {
        clean = clean == null ? new StringBuilder(words) : clean;
        clean.setCharAt(i, '\uFFFD');
      }
    }
    return clean == null ? words : clean.toString();
  }

  private static boolean steers(char c) {
    boolean control = (c < ' ' && c != '\n' && c != '\t') || (c >= 0x7F && c < 0xA0);
    boolean direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    return control || direction;
  }
}
