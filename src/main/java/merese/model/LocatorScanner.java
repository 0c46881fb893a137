package merese.model;

/**
 * A cursor over the text of one locator. Folding is per character, so that no default locale can
 * change it.
 */
final class LocatorScanner {
  private static final String SPACES = " \u00a0\u2009\u202f";
  private static final String DASHES = "-\u2010\u2011\u2012\u2013\u2014\u2212";

  final String text;
  int at;

  LocatorScanner(String text) {
    this.text = text;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isSpace(char c) {
    return SPACES.indexOf(c) >= 0;
  }

  static boolean isDash(char c) {
    return DASHES.indexOf(c) >= 0;
  }

  static String folded(String word) {
    StringBuilder out = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      out.append(Character.toLowerCase(word.charAt(i)));
    }
    return out.toString();
  }

  boolean atEnd() {
    return at >= text.length();
  }

  /** The character at the cursor, or NUL at the end. */
  char peek() {
    return peek(0);
  }

  char peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : '\0';
  }

  boolean take(char c) {
    if (peek() == c && !atEnd()) {
      at++;
      return true;
    }
    return false;
  }

  void skipSpaces() {
    while (!atEnd() && isSpace(peek())) {
      at++;
    }
  }

  /** The letters at the cursor, which stays where it is. */
  String word() {
    return wordAt(at);
  }

  String wordAt(int begin) {
    int end = begin;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(begin, end);
  }

  /** Moves past the word if it stands at the cursor, whole, in any case. */
  boolean takeWord(String small) {
    int end = at + small.length();
    for (int i = 0; i < small.length(); i++) {
      if (Character.toLowerCase(peek(i)) != small.charAt(i)) {
        return false;
      }
    }
    if (end < text.length() && Character.isLetter(text.charAt(end))) {
      return false;
    }
    at = end;
    return true;
  }

  /** Moves past one dash, a double hyphen, or the word "to" or "through", and spaces round it. */
  boolean takeRangeSign() {
    int start = at;
    skipSpaces();
    if (!atEnd() && isDash(peek())) {
      if (peek() == '-' && peek(1) == '-') {
        at++;
      }
      at++;
      skipSpaces();
      return true;
    }
    if (at > start && (takeWord("to") || takeWord("through"))) {
      skipSpaces();
      return true;
    }
    at = start;
    return false;
  }

  boolean takeAnd() {
    return take('&') || takeWord("and");
  }

  /** A few characters from the offset on, to be quoted. */
  String excerpt(int offset) {
    int end = Math.min(text.length(), offset + 20);
    return offset >= text.length() ? "the end" : "\"" + text.substring(offset, end) + "\"";
  }

  LocatorException error(int offset, String problem, String remedy) {
    return new LocatorException(text, Math.min(offset, text.length()), problem, remedy);
  }
}
