package merese.exchange.bibtex;

import java.text.Normalizer;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes literal text for LaTeX, so that it prints as it stands and no character of it is a command
 * to BibTeX or LaTeX.
 *
 * <p>The result is one line with balanced braces and no control characters, marks of direction or
 * half characters. What plain LaTeX has a command for is written in ASCII, an accented letter as
 * BibTeX's "special character" <code>{\'e}</code>, which it files and abbreviates rightly; other
 * letters, such as Greek, stay UTF-8. The characters of ASCII that LaTeX reads as commands or joins
 * into others are escaped or kept apart. A text is cut after {@value #MOST} characters.
 */
final class LatexText {
  /** No title comes near it, and TeX still reads it as one line. */
  static final int MOST = 10_000;

  /** Pairs of these would join: dashes, quotation marks, and a low quotation mark in T1. */
  private static final String JOINING = "`'-,";

  private final StringBuilder out = new StringBuilder();
  private int previous = ' ';

  private LatexText() {}

  static String of(String text) {
    return of(text, MOST);
  }

  static String of(String text, int most) {
    String whole = Normalizer.normalize(text.replace("\r\n", " "), Normalizer.Form.NFC);
    boolean cut = whole.codePointCount(0, whole.length()) > most;
    String used = cut ? whole.substring(0, whole.offsetByCodePoints(0, most)) : whole;
    LatexText latex = new LatexText();
    used.codePoints().forEach(latex::write);
    if (cut) {
      latex.write('…');
    }
    return latex.out.toString().strip();
  }

  /** For a field that is read as a list of texts joined with "and": this is one of them. */
  static String oneOfList(String text) {
    String latex = of(text);
    return BibtexNameSplit.hasAnd(latex) || latex.equals("others") ? "{" + latex + "}" : latex;
  }

  /** Several texts as such a list. */
  static String list(List<String> texts) {
    return texts.stream()
        .map(LatexText::oneOfList)
        .filter(latex -> !latex.isEmpty())
        .collect(Collectors.joining(" and "));
  }

  private void write(int c) {
    int type = Character.getType(c);
    if (Character.isWhitespace(c) || Character.isSpaceChar(c) || c == 0x85) {
      if (previous != ' ') {
        out.append(' ');
        previous = ' ';
      }
      return;
    }
    boolean nonCharacter = c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFE) == 0xFFFE;
    if (type == Character.CONTROL || type == Character.FORMAT || nonCharacter) {
      return;
    }
    append(type == Character.SURROGATE ? "\uFFFD" : latex(c));
    previous = c;
  }

  private String latex(int c) {
    boolean opens = previous == ' ' || "([{=—–-/‘“".indexOf(previous) >= 0;
    return switch (c) {
      case '"' -> opens ? "``" : "''";
      case '\'' -> opens ? "`" : "'";
      default -> LatexLetters.of(c);
    };
  }

  /** Keeps apart what would become one character, such as two hyphens or "?" and a quote. */
  private void append(String latex) {
    int last = out.length() - 1;
    char first = latex.charAt(0);
    if (last >= 0) {
      char before = out.charAt(last);
      boolean joins = before == first && JOINING.indexOf(first) >= 0;
      if (joins || first == '`' && (before == '?' || before == '!')) {
        out.append("{}");
      }
    }
    out.append(latex);
  }
}
