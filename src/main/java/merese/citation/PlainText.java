package merese.citation;

/**
 * Makes text from a library safe to hand to the processor: one line, no control characters, no
 * marks that turn the direction of what follows, no half characters. Mark-up stays literal text;
 * {@link CitationFormat} escapes it for each output.
 *
 * <p>Quotation marks are replaced by {@link Marks}: the processor's own reading of straight ones
 * does not nest them and slows with the square of their number.
 */
final class PlainText {
  private PlainText() {}

  static String of(String text) {
    StringBuilder out = new StringBuilder(text.length());
    int previous = ' ';
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      int next = i < text.length() ? text.codePointAt(i) : ' ';
      int shown = shown(c, previous, next);
      boolean repeatedSpace = shown == ' ' && previous == ' ';
      if (shown >= 0 && !repeatedSpace) {
        out.appendCodePoint(shown);
        previous = shown;
      }
    }
    return out.toString().strip();
  }

  private static int shown(int c, int previous, int next) {
    boolean opens = Character.isWhitespace(previous) || "([{=—–-/".indexOf(previous) >= 0;
    return switch (c) {
      case '\'' ->
          !opens && Character.isLetter(previous) && Character.isLetter(next)
              ? '’'
              : opens ? Marks.OPEN_SINGLE : Marks.CLOSE_SINGLE;
      case '‘' -> Marks.OPEN_SINGLE;
      case '’' ->
          Character.isLetter(previous) && Character.isLetter(next) ? '’' : Marks.CLOSE_SINGLE;
      case '"' -> opens ? Marks.OPEN_DOUBLE : Marks.CLOSE_DOUBLE;
      case '“' -> Marks.OPEN_DOUBLE;
      case '”' -> Marks.CLOSE_DOUBLE;
      default -> harmless(c);
    };
  }

  private static int harmless(int c) {
    if (Character.isWhitespace(c) || c == 0x85 || c == 0x2028 || c == 0x2029) {
      return ' ';
    }
    boolean nonCharacter = c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFE) == 0xFFFE;
    return switch (Character.getType(c)) {
      case Character.CONTROL -> -1;
      case Character.SURROGATE -> 0xFFFD;
      case Character.FORMAT -> c == 0x200C || c == 0x200D || c == 0xAD ? c : -1;
      default -> nonCharacter ? -1 : c;
    };
  }
}
