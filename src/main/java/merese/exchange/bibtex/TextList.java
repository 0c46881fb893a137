package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;

/** Lists in a field, cut where nothing is in braces. */
final class TextList {
  private TextList() {}

  /**
   * Names or places, joined with "and", as BibTeX cuts them: the word in any case, in white space.
   */
  static List<String> ofAnd(String latex) {
    List<String> items = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      depth += c == '{' ? 1 : c == '}' && depth > 0 ? -1 : 0;
      if (depth == 0 && (c == 'a' || c == 'A') && isAnd(latex, i)) {
        add(latex.substring(from, i), items);
        from = i + 3;
      }
    }
    add(latex.substring(from), items);
    return items;
  }

  private static boolean isAnd(String latex, int at) {
    return latex.regionMatches(true, at, "and", 0, 3)
        && (at == 0 || StoredValue.isSpace(latex.charAt(at - 1)))
        && (at + 3 == latex.length() || StoredValue.isSpace(latex.charAt(at + 3)));
  }

  /** Items parted by one of some characters. */
  static List<String> of(String latex, String separators) {
    List<String> items = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      depth += c == '{' ? 1 : c == '}' && depth > 0 ? -1 : 0;
      if (depth == 0 && separators.indexOf(c) >= 0) {
        add(latex.substring(from, i), items);
        from = i + 1;
      }
    }
    add(latex.substring(from), items);
    return items;
  }

  private static void add(String item, List<String> to) {
    if (!item.isBlank()) {
      to.add(item.strip());
    }
  }

  /** Whether one pair of braces holds all of it. */
  static boolean isBraced(String latex) {
    int depth = 0;
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (depth == 0) {
        return i > 0 && i == latex.length() - 1;
      }
    }
    return false;
  }
}
