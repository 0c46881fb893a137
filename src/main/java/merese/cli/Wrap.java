package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.written.Harmless;

/**
 * Breaks a text into lines at its spaces. Columns are counted as a terminal shows them: a combining
 * mark takes none. Scripts whose letters take two columns are counted as one.
 */
final class Wrap {
  /** A space that breaks only where its words don't fit on one line; a noncharacter of Unicode. */
  private static final char GLUE = '\uFDD0';

  /** A space that never breaks; the next noncharacter. */
  private static final char FAST = '\uFDD1';

  /** Combining marks start here; before them only the soft hyphen takes no column. */
  private static final char FIRST_MARK = '\u0300';

  /** Delete, and what follows it, steers terminals. */
  private static final char FIRST_CONTROL = '\u007F';

  private static final char SOFT_HYPHEN = '\u00AD';

  private Wrap() {}

  /** Keeps words on one line, spaces and all, wherever a line has room for them. */
  static String together(String words) {
    return words.replace(' ', GLUE);
  }

  /** Keeps words on one line even where none has room for them, since they are to be copied. */
  static String whole(String words) {
    return words.replace(' ', FAST);
  }

  /** The words without what {@link #together} put in, for a form that is not wrapped. */
  static String loose(String words) {
    return words.replace(GLUE, ' ').replace(FAST, ' ');
  }

  /** The words without what would steer a terminal. */
  static String harmless(String words) {
    return Harmless.words(words);
  }

  /**
   * The text in lines of at most {@code width} columns; a word that is longer stands on a line of
   * its own, whole, since a locator or a path that is cut can't be copied. A no-break space never
   * breaks; what {@link #together} kept is broken only where a line has no room for it.
   *
   * @param first what the first line starts with
   * @param hanging what every later line starts with
   */
  static List<String> lines(String words, int width, String first, String hanging) {
    int lead = columns(first);
    List<String> lines = new ArrayList<>();
    if (lead + words.length() <= width && isPlain(words)) {
      lines.add(loose(first).concat(loosePlain(words)));
      return lines;
    }
    int margin = columns(hanging);
    boolean glued = words.indexOf(GLUE) >= 0 || words.indexOf(FAST) >= 0;
    String text = harmless(glued ? loosened(words, width - Math.max(lead, margin)) : words);
    StringBuilder line = new StringBuilder(first);
    int used = lead;
    boolean empty = true;
    int at = 0;
    while (at < text.length()) {
      int end = at;
      while (end < text.length() && !breaks(text.charAt(end))) {
        end++;
      }
      if (end > at) {
        String word = text.substring(at, end);
        int wide = columns(word);
        if (!empty && used + 1 + wide > width) {
          lines.add(line.toString());
          line = new StringBuilder(hanging);
          used = margin;
          empty = true;
        }
        if (!empty) {
          line.append(' ');
          used++;
        }
        line.append(word);
        used += wide;
        empty = false;
      }
      if (end < text.length() && text.charAt(end) == '\n') {
        lines.add(line.toString());
        line = new StringBuilder(hanging);
        used = margin;
        empty = true;
      }
      at = end + 1;
    }
    if (!empty || lines.isEmpty()) {
      lines.add(line.toString());
    }
    for (int i = 0; glued && i < lines.size(); i++) {
      lines.set(i, loose(lines.get(i)));
    }
    return lines;
  }

  /**
   * Whether each character takes one column and stays as it is, as in most lines of an answer: such
   * a text is a line as it stands where there is room.
   */
  static boolean isPlain(String words) {
    char last = ' ';
    for (int at = 0; at < words.length(); at++) {
      char c = words.charAt(at);
      boolean plain = (c >= ' ' && c < FIRST_CONTROL) || isPunctuation(c) || c == GLUE;
      if (!plain && !isLatin(c) || c == ' ' && last == ' ') {
        return false;
      }
      last = c;
    }
    return last != ' ';
  }

  /** The same as {@link #loose} for what is plain. */
  static String loosePlain(String plain) {
    return plain.replace(GLUE, ' ');
  }

  private static boolean isLatin(char c) {
    return c > SOFT_HYPHEN && c < FIRST_MARK;
  }

  /** Dashes, quotation marks, dots: none is a mark, and none steers. */
  private static boolean isPunctuation(char c) {
    return c >= '\u2010' && c <= '\u2027';
  }

  /** Gives up what is kept together and wider than the room for it. */
  private static String loosened(String text, int room) {
    if (columns(text) <= room) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      int end = at;
      while (end < text.length() && !breaks(text.charAt(end))) {
        end++;
      }
      String word = text.substring(at, end);
      out.append(columns(word) > room ? word.replace(GLUE, ' ') : word);
      if (end < text.length()) {
        out.append(text.charAt(end));
      }
      at = end + 1;
    }
    return out.toString();
  }

  /** As {@link #lines}, without a lead, as one string. */
  static String text(String text, int width) {
    return String.join("\n", lines(text, width, "", ""));
  }

  /** The columns that a text takes on a screen. */
  static int columns(String text) {
    int columns = 0;
    int length = text.length();
    for (int at = 0; at < length; at++) {
      char c = text.charAt(at);
      if (c < FIRST_MARK) {
        columns += c == SOFT_HYPHEN ? 0 : 1;
      } else if (isPunctuation(c)) {
        columns++;
      } else {
        int point = text.codePointAt(at);
        at += Character.charCount(point) - 1;
        columns += takesNone(point) ? 0 : 1;
      }
    }
    return columns;
  }

  private static boolean breaks(char c) {
    return c == ' ' || c == '\n' || c == '\t';
  }

  private static boolean takesNone(int point) {
    int type = Character.getType(point);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT;
  }
}
