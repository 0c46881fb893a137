package merese.model;

import java.util.List;

/**
 * The text of one file page, line by line as it was read.
 *
 * @param lines none of them blank, and none with a line break in it; empty for a page without text
 */
public record PageLines(List<String> lines) {
  /** A page without text. */
  public static final PageLines NONE = new PageLines(List.of());

  /** Copies the lines. */
  public PageLines {
    lines = List.copyOf(lines);
    for (String line : lines) {
      Require.text(line, "a line of a page");
      boolean broken = line.indexOf('\n') >= 0 || line.indexOf('\r') >= 0;
      Require.that(!broken, "a line of a page has a line break in it; make it two lines");
    }
  }

  public boolean isEmpty() {
    return lines.isEmpty();
  }
}
