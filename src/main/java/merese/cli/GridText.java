package merese.cli;

import java.util.ArrayList;
import java.util.List;

/** Prints a table in columns, each cell wrapped in its own. */
final class GridText {
  private static final String GAP = "  ";
  private static final String NO_BREAK = "\u00A0";
  private static final int WIDEST_NAME = 22;
  private static final int WIDEST_WORD = 18;

  private final Page page;
  private final int width;

  GridText(Page page, int width) {
    this.page = page;
    this.width = width;
  }

  /** The parts that it takes to print a table. */
  List<Grid> parts(Grid grid) {
    int room = width - nameWidth(grid);
    return grid.parts(room, column -> GAP.length() + least(column));
  }

  void print(Grid part) {
    List<Integer> widths = widths(part);
    boolean tall = false;
    List<List<String>> rows = new ArrayList<>();
    rows.add(row(part.corner(), part.columns(), widths));
    for (int i = 0; i < part.rows().size(); i++) {
      List<String> row = row(part.rows().get(i), part.cells().get(i), widths);
      tall |= row.size() > 1;
      rows.add(row);
    }
    StringBuilder rule = new StringBuilder();
    for (int column : widths) {
      rule.append(rule.isEmpty() ? "" : GAP).append("─".repeat(column));
    }
    for (int i = 0; i < rows.size(); i++) {
      if (i > 1 && tall) {
        page.blank();
      }
      rows.get(i).forEach(line -> page.text(Wrap.together(line)));
      if (i == 0) {
        page.text(rule.toString().replace("  ", Wrap.together("  ")));
      }
    }
    page.blank();
  }

  /** The name's column and the others: first what each needs, then what is left by turns. */
  private List<Integer> widths(Grid part) {
    List<Integer> widths = new ArrayList<>();
    List<Integer> wanted = new ArrayList<>();
    widths.add(nameWidth(part));
    wanted.add(widths.get(0));
    int left = width - widths.get(0);
    for (int i = 0; i < part.columns().size(); i++) {
      int least = Math.min(least(part.column(i)), width - widths.get(0) - GAP.length());
      widths.add(least);
      wanted.add(longestLine(part.column(i)));
      left -= least + GAP.length();
    }
    boolean grew = true;
    while (left > 0 && grew) {
      grew = false;
      for (int i = 0; i < widths.size() && left > 0; i++) {
        if (widths.get(i) < wanted.get(i)) {
          widths.set(i, widths.get(i) + 1);
          left--;
          grew = true;
        }
      }
    }
    return widths;
  }

  private int nameWidth(Grid grid) {
    int longest = Wrap.columns(grid.corner());
    for (String name : grid.rows()) {
      longest = Math.max(longest, Wrap.columns(name));
    }
    return Math.min(longest, Math.min(WIDEST_NAME, width / 3));
  }

  /** The longest word, so that words stay whole where they are not too long for a table. */
  private int least(List<String> column) {
    int longest = 1;
    for (String cell : column) {
      for (String line : Wrap.lines(kept(cell), 1, "", "")) {
        longest = Math.max(longest, Wrap.columns(line));
      }
    }
    return Math.min(longest, Math.min(WIDEST_WORD, width - width / 3 - GAP.length()));
  }

  private static int longestLine(List<String> column) {
    int longest = 0;
    for (String cell : column) {
      for (String line : Wrap.lines(cell, Integer.MAX_VALUE, "", "")) {
        longest = Math.max(longest, Wrap.columns(line));
      }
    }
    return longest;
  }

  private static List<String> row(String name, List<String> cells, List<Integer> widths) {
    List<List<String>> columns = new ArrayList<>();
    columns.add(lines(name, widths.get(0)));
    int height = columns.get(0).size();
    for (int i = 0; i < cells.size(); i++) {
      List<String> lines =
          cells.get(i).isEmpty() ? List.of() : lines(cells.get(i), widths.get(i + 1));
      columns.add(lines);
      height = Math.max(height, lines.size());
    }
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      StringBuilder row = new StringBuilder();
      for (int column = 0; column < columns.size(); column++) {
        List<String> lines = columns.get(column);
        String text = i < lines.size() ? lines.get(i) : "";
        row.append(column == 0 ? "" : GAP).append(text);
        row.append(" ".repeat(Math.max(0, widths.get(column) - Wrap.columns(text))));
      }
      rows.add(row.toString().stripTrailing());
    }
    return rows;
  }

  /**
   * A text in lines. Words that are longer than the column are broken, since they would push the
   * others aside.
   */
  private static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    for (String line : Wrap.lines(kept(text), width, "", "")) {
      String rest = line;
      while (Wrap.columns(rest) > width) {
        int end = end(rest, width);
        lines.add(loose(rest.substring(0, end)));
        rest = rest.substring(end);
      }
      lines.add(loose(rest));
    }
    return lines;
  }

  private static int end(String word, int width) {
    int gap = word.lastIndexOf(NO_BREAK, width);
    if (gap > 0) {
      return gap + 1;
    }
    int hyphen = word.lastIndexOf('-', width - 1);
    return hyphen > 0 ? hyphen + 1 : width;
  }

  /** The text with its labels and numbers on one line: a locator is broken at its commas. */
  private static String kept(String text) {
    return Labels.together(text)
        .replace(ConcordanceTable.PICTURED + " ", ConcordanceTable.PICTURED + NO_BREAK)
        .replace(Wrap.together(" "), NO_BREAK);
  }

  private static String loose(String line) {
    return line.replace(NO_BREAK, " ").strip();
  }
}
