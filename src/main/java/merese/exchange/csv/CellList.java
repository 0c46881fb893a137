package merese.exchange.csv;

import java.util.ArrayList;
import java.util.List;

/**
 * Several things in one cell, between semicolons. A semicolon that belongs to one of them has a
 * backslash before it, and so have a comma and braces in a name; any other backslash is one.
 */
final class CellList {
  private static final String SIGNS = "\\;,{}";

  private CellList() {}

  /** The things as they stand, with their backslashes. */
  static List<String> split(String cell) {
    return split(cell, ';');
  }

  /** Splits at a sign that has no backslash before it and is in no braces; without empty parts. */
  static List<String> split(String cell, char at) {
    List<String> all = new ArrayList<>();
    int start = 0;
    boolean braced = false;
    for (int i = 0; i <= cell.length(); i++) {
      char c = i < cell.length() ? cell.charAt(i) : at;
      if (c == '\\' && i + 1 < cell.length() && SIGNS.indexOf(cell.charAt(i + 1)) >= 0) {
        i++;
      } else if (c == '{' && closing(cell, i) > 0) {
        braced = true;
      } else if (c == '}') {
        braced = false;
      } else if (c == at && (!braced || i == cell.length())) {
        String part = cell.substring(start, i).strip();
        if (!part.isEmpty()) {
          all.add(part);
        }
        start = i + 1;
      }
    }
    return all;
  }

  /** Where the first brace closes that has no backslash before it; -1 for nowhere. */
  static int closing(String cell, int from) {
    for (int i = from; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == '\\' && i + 1 < cell.length() && SIGNS.indexOf(cell.charAt(i + 1)) >= 0) {
        i++;
      } else if (c == '}') {
        return i;
      }
    }
    return -1;
  }

  static String plain(String part) {
    if (part.indexOf('\\') < 0) {
      return part;
    }
    StringBuilder out = new StringBuilder(part.length());
    for (int i = 0; i < part.length(); i++) {
      char c = part.charAt(i);
      boolean marks = c == '\\' && i + 1 < part.length() && SIGNS.indexOf(part.charAt(i + 1)) >= 0;
      out.append(marks ? part.charAt(++i) : c);
    }
    return out.toString();
  }

  /** With a backslash before each of some signs and before each backslash that could mark one. */
  static String marked(String text, String signs) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean marking =
          c == '\\' && (i + 1 == text.length() || SIGNS.indexOf(text.charAt(i + 1)) >= 0);
      if (marking || signs.indexOf(c) >= 0) {
        out.append('\\');
      }
      out.append(c);
    }
    return out.toString();
  }

  static String joined(List<String> texts) {
    return String.join("; ", texts.stream().map(t -> marked(t, ";{}")).toList());
  }

  /** The things of a cell without backslashes. */
  static List<String> texts(String cell) {
    return split(cell).stream().map(CellList::plain).toList();
  }
}
