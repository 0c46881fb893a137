package merese.store;

/** Values of a file as a message shows them: short, on one line, without control characters. */
final class Quote {
  private static final int LONGEST = 60;

  private Quote() {}

  static String of(String value) {
    return '"' + cut(value) + '"';
  }

  static String cut(String value) {
    StringBuilder out = new StringBuilder();
    int count = 0;
    for (int i = 0; i < value.length(); i += Character.charCount(value.codePointAt(i))) {
      if (++count > LONGEST) {
        return out.append('…').toString();
      }
      int c = value.codePointAt(i);
      boolean shown = !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE;
      out.appendCodePoint(shown && Character.getType(c) != Character.FORMAT ? c : '\uFFFD');
    }
    return out.toString();
  }
}
