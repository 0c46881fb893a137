package merese.cli;

import java.io.PrintWriter;
import java.util.Optional;

/** Paragraphs, headings and two-column lists on a screen, wrapped at its width. */
final class Page {
  /** Fewer columns than this beside a name are better used by putting the lines below it. */
  private static final int ROOM = 34;

  private final PrintWriter out;
  private final Screen screen;
  private boolean started;
  private boolean blankWanted;

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

  /** One empty line before what follows, however often it is asked for; none at either end. */
  void blank() {
    blankWanted = started;
  }

  /**
   * A name with lines beside it; below it where the screen is too narrow for both, or the name too
   * long.
   *
   * @param width of the name's column
   */
  Columns columns(String lead, String name, int width) {
    return new Columns(lead, name, width);
  }

  private void print(String line) {
    if (blankWanted) {
      out.println();
      blankWanted = false;
    }
    out.println(line);
    started = true;
  }

  /** A text with what stands before and after it; nothing where there is none. */
  static String given(String before, Optional<?> text, String after) {
    return text.isPresent() ? before + text.get() + after : "";
  }

  /** A count with its noun: "1 piece", "2 pieces". */
  static String many(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  /** Lines that share one name. */
  final class Columns {
    private final String indent;
    private final int room;
    private String first;

    private Columns(String lead, String name, int width) {
      int used = Wrap.columns(name);
      int margin = Wrap.columns(lead);
      boolean narrow = screen.width() - margin - width - 2 < ROOM;
      int beside = margin + (narrow ? 2 : width + 2);
      indent = " ".repeat(beside);
      room = screen.width() - beside;
      if (narrow || used > width) {
        hanging(lead, name);
        first = indent;
      } else {
        first = lead + name + " ".repeat(width - used + 2);
      }
    }

    void line(String text) {
      for (String line : Wrap.lines(text, screen.width(), first, indent)) {
        print(line);
      }
      first = indent;
    }

    /** Two texts on one line, or each on lines of its own where one line can't hold both. */
    void line(String text, String other) {
      boolean fit = text.length() + 2 + other.length() <= room;
      if (fit && Wrap.isPlain(text) && Wrap.isPlain(other)) {
        print(Wrap.loose(first) + Wrap.loosePlain(text) + "  " + Wrap.loosePlain(other));
        first = indent;
        return;
      }
      String both = text + "  " + other;
      if (Wrap.columns(both) <= room) {
        line(Wrap.together(both));
      } else {
        line(text);
        line(other);
      }
    }
  }
}
