package merese.model;

/**
 * A cursor over the text of one locator. Folding is per character, so that no default locale can
 * change it. Most characters are of ASCII and told there: an answer reads many locators before Java
 * has compiled anything.
 */
final class LocatorScanner {
  private static final String SPACES = "\u00a0\u2009\u202f";
  private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2212";
  private static final char FIRST_BEYOND_ASCII = '\u0080';

  final String text;
  int at;

  LocatorScanner(String text) {
    this.text = text;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isSpace(char c) {
    return c == ' ' || c >= FIRST_BEYOND_ASCII && SPACES.indexOf(c) >= 0;
  }

  static boolean isDash(char c) {
    return c == '-' || c >= FIRST_BEYOND_ASCII && DASHES.indexOf(c) >= 0;
  }

  static boolean isLetter(char c) {
    return c >= 'a' && c <= 'z'
        || c >= 'A' && c <= 'Z'
        || c >= FIRST_BEYOND_ASCII && Character.isLetter(c);
  }

  static String folded(String word) {
    int small = 0;
    while (small < word.length() && word.charAt(small) >= 'a' && word.charAt(small) <= 'z') {
      small++;
    }
    if (small == word.length()) {
      return word;
    }
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
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  /** The letters at the cursor, which stays where it is. */
  String word() {
    return wordAt(at);
  }

  String wordAt(int begin) {
    int end = begin;
    while (end < text.length() && isLetter(text.charAt(end))) {
      end++;
    }
    return end == begin ? "" : text.substring(begin, end);
  }

  /** Moves past the word if it stands at the cursor, whole, in any case. */
  boolean takeWord(String small) {
    int end = at + small.length();
    if (!isLetter(peek())) {
      return false;
    }
    for (int i = 0; i < small.length(); i++) {
      if (Character.toLowerCase(peek(i)) != small.charAt(i)) {
        return false;
      }
    }
    if (end < text.length() && isLetter(text.charAt(end))) {
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
