package merese.cli;

import java.io.PrintWriter;
import merese.answer.Found.Mark;
import merese.answer.Found.Text;

/**
 * Prints texts with marked words: in bold where the screen takes escape sequences, between « and »
 * where it does not. While lines are broken, two characters that take no column stand for the ends
 * of bold; a text's own control characters are printed as spaces.
 */
final class MarkedText {
  private static final char ON = '\uFFF9';
  private static final char OFF = '\uFFFB';

  private final PrintWriter out;
  private final Screen screen;

  MarkedText(PrintWriter out, Screen screen) {
    this.out = out;
    this.screen = screen;
  }

  String text(Text text) {
    StringBuilder marked = new StringBuilder();
    int at = 0;
    for (Mark mark : text.marks()) {
      marked.append(clean(text.words().substring(at, mark.start())));
      marked.append(screen.colour() ? ON : '«');
      marked.append(clean(text.words().substring(mark.start(), mark.end())));
      marked.append(screen.colour() ? OFF : '»');
      at = mark.end();
    }
    return marked.append(clean(text.words().substring(at))).toString();
  }

  /** Without what a terminal would obey. */
  static String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      clean.append(Character.isISOControl(c) ? ' ' : c == ON || c == OFF ? '\uFFFD' : c);
    }
    return clean.toString();
  }

  void print(String lead, String hanging, String text) {
    boolean bold = false;
    for (String line : Wrap.lines(text, screen.width(), lead, hanging)) {
      StringBuilder printed = new StringBuilder(bold ? "\u001B[1m" : ""); // goes on from above
      for (int i = 0; i < line.length(); i++) {
        char c = line.charAt(i);
        if (c == ON || c == OFF) {
          bold = c == ON;
          printed.append(bold ? "\u001B[1m" : "\u001B[0m");
        } else {
          printed.append(c);
        }
      }
      out.println(bold ? printed.append("\u001B[0m") : printed);
    }
  }
}
