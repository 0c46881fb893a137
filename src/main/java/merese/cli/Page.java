package merese.cli;

import java.io.PrintWriter;

/** Paragraphs, headings and two-column lists on a screen, wrapped at its width. */
final class Page {
  private static final int NARROW = 60;

  private final PrintWriter out;
  private final Screen screen;
  private boolean lastWasBlank = true;

  Page(PrintWriter out, Screen screen) {
    this.out = out;
    this.screen = screen;
  }

  void heading(String text) {
    String on = screen.colour() ? "\u001B[1m" : "";
    String off = screen.colour() ? "\u001B[0m" : "";
    for (String line : Wrap.lines(text, screen.width(), "", "")) {
      print(on + line + off);
    }
  }

  void text(String text) {
    hanging("", text);
  }

  /** A paragraph whose later lines stand under the first one's text. */
  void hanging(String lead, String text) {
    for (String line : Wrap.lines(text, screen.width(), lead, " ".repeat(Wrap.columns(lead)))) {
      print(line);
    }
  }

  /** One empty line, however often it is asked for. */
  void blank() {
    if (!lastWasBlank) {
      out.println();
      lastWasBlank = true;
    }
  }

  /**
   * A name with lines beside it, or below it where the screen is narrow.
   *
   * @param width of the name's column
   */
  Columns columns(String lead, String name, int width) {
    return new Columns(lead, name, width);
  }

  private void print(String line) {
    out.println(line);
    lastWasBlank = line.isEmpty();
  }

  /** Keeps the words of a name on one line. */
  static String together(String name) {
    return name.replace(' ', '\u00A0');
  }

  /** A count with its noun: "1 piece", "2 pieces". */
  static String many(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  /** Lines that share one name. */
  final class Columns {
    private final String indent;
    private String first;

    private Columns(String lead, String name, int width) {
      int used = Wrap.columns(name);
      if (screen.width() < NARROW || used > width) {
        print(lead + name);
        indent = " ".repeat(Wrap.columns(lead) + (screen.width() < NARROW ? 2 : width + 2));
        first = indent;
      } else {
        indent = " ".repeat(Wrap.columns(lead) + width + 2);
        first = lead + name + " ".repeat(width - used + 2);
      }
    }

    void line(String text) {
      for (String line : Wrap.lines(text, screen.width(), first, indent)) {
        print(line);
      }
      first = indent;
    }
  }
}
