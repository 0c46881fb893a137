package merese.search;

/**
 * That a question cannot be read. The message says what is wrong and what to do, and shows the
 * question with a caret under the place.
 */
public final class FindQueryException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN_BEFORE = 40;
  private static final int SHOWN_AFTER = 30;

  private final int offset;

  /**
   * @param offset in chars, from 0
   */
  FindQueryException(String text, int offset, String problem, String remedy) {
    super(problem + "; " + remedy + "\n" + withCaret(text, offset));
    this.offset = offset;
  }

  /** Where the trouble starts, in chars from 0. */
  public int offset() {
    return offset;
  }

  private static String withCaret(String text, int offset) {
    int from = offset <= SHOWN_BEFORE ? 0 : offset - SHOWN_BEFORE;
    int to = Math.min(text.length(), offset + SHOWN_AFTER);
    if (from > 0 && Character.isLowSurrogate(text.charAt(from))) {
      from--;
    }
    if (to < text.length() && Character.isLowSurrogate(text.charAt(to))) {
      to++;
    }
    StringBuilder line = new StringBuilder("  ").append(from > 0 ? "…" : "");
    StringBuilder caret = new StringBuilder("  ").append(from > 0 ? " " : "");
    for (int i = from; i < to; ) {
      int c = text.codePointAt(i);
      boolean control = Character.isISOControl(c) || Character.isWhitespace(c);
      line.appendCodePoint(control ? ' ' : c);
      if (i < offset && !takesNoColumn(c)) {
        caret.append(' ');
      }
      i += Character.charCount(c);
    }
    return line.append(to < text.length() ? "…" : "")
        .append('\n')
        .append(caret)
        .append('^')
        .toString();
  }

  private static boolean takesNoColumn(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT;
  }
}
