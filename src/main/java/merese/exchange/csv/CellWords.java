package merese.exchange.csv;

/** The words of a cell on one line: white space as one space, no control characters. */
final class CellWords {
  private CellWords() {}

  static String of(String cell) {
    if (isPlain(cell)) {
      return cell;
    }
    StringBuilder out = new StringBuilder(cell.length());
    for (int i = 0; i < cell.length(); ) {
      int c = cell.codePointAt(i);
      i += Character.charCount(c);
      if (Character.isWhitespace(c) || c == 0x85) {
        if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
          out.append(' ');
        }
      } else if (Character.getType(c) == Character.SURROGATE) {
        out.append('\uFFFD');
      } else if (!Character.isISOControl(c)) {
        out.appendCodePoint(c);
      }
    }
    return out.toString().strip();
  }

  private static boolean isPlain(String cell) {
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      boolean atEdge = i == 0 || i == cell.length() - 1;
      boolean single = c == ' ' && !atEdge && cell.charAt(i - 1) != ' ';
      if (!single && (c <= ' ' || c >= 0x7F && !Character.isLetter(c))) {
        return false;
      }
    }
    return true;
  }
}
