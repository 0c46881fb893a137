package merese.exchange.csv;

/**
 * Cells that a spreadsheet would run as a formula, made harmless by an apostrophe, and back.
 *
 * <p>A spreadsheet runs a cell that begins with one of = + - @ (ASCII or full-width), a tab or a
 * line end (OWASP, "CSV Injection", from memory), and, where it splits rows at another sign than we
 * do, one that begins so after a comma, semicolon, tab or line end inside our cell. An apostrophe
 * goes before each such beginning, and before a beginning that already has apostrophes, so that
 * {@link #undone} takes off just what {@link #harmless} put on.
 */
final class FormulaCells {
  private FormulaCells() {}

  static String harmless(String cell) {
    StringBuilder out = null;
    int done = 0;
    for (int i = 0; i < cell.length(); i++) {
      if (isBeginning(cell, i) && startsFormula(cell, i)) {
        out = out == null ? new StringBuilder(cell.length() + 8) : out;
        out.append(cell, done, i).append('\'');
        done = i;
      }
    }
    return out == null ? cell : out.append(cell, done, cell.length()).toString();
  }

  static String undone(String cell) {
    if (cell.indexOf('\'') < 0) {
      return cell;
    }
    StringBuilder out = null;
    int done = 0;
    for (int i = 0; i < cell.length(); i++) {
      if (cell.charAt(i) == '\'' && isBeginning(cell, i) && startsFormula(cell, i)) {
        out = out == null ? new StringBuilder(cell.length()) : out;
        out.append(cell, done, i);
        done = i + 1;
      }
    }
    return out == null ? cell : out.append(cell, done, cell.length()).toString();
  }

  /** Whether a cell begins here: at the start, or behind a separator and maybe quotation marks. */
  private static boolean isBeginning(String cell, int at) {
    if (at == 0) {
      return true;
    }
    char first = cell.charAt(at);
    if (first != '\'' && !isSign(first)) {
      return false;
    }
    int before = at - 1;
    while (before >= 0 && cell.charAt(before) == '"') {
      before--;
    }
    return before < 0 || ",;\t\r\n".indexOf(cell.charAt(before)) >= 0;
  }

  /** Whether a sign that starts a formula stands here, or behind apostrophes. */
  private static boolean startsFormula(String cell, int at) {
    int i = at;
    while (i < cell.length() && cell.charAt(i) == '\'') {
      i++;
    }
    if (i == cell.length()) {
      return false;
    }
    char c = cell.charAt(i);
    return isSign(c) || at == 0 && (c == '\t' || c == '\r' || c == '\n');
  }

  private static boolean isSign(char c) {
    return switch (c) {
      case '=', '+', '-', '@', '＝', '＋', '－', '＠' -> true;
      default -> false;
    };
  }
}
