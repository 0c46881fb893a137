package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a field's value is kept in a received record, so that it goes out with the same meaning.
 *
 * <p>A value is the text itself, without its outer braces or quotation marks. Names that the file
 * does not define stay names: those of the months, which each style words in its own way, and any
 * that is undefined. A value with such a name is an expression, kept as BibTeX has it: {@code jul},
 * <code>{10~} # jan</code>, or <code>acm # {}</code> for an undefined name alone. A text that could
 * be mistaken for one of these stands in quotation marks. So nothing is ambiguous, and {@link
 * #written} gives what stands after the equals sign.
 */
final class StoredValue {
  /** The names that the styles define, and how plain.bst words them. */
  private static final Map<String, String> MONTHS =
      Map.ofEntries(
          Map.entry("jan", "January"),
          Map.entry("feb", "February"),
          Map.entry("mar", "March"),
          Map.entry("apr", "April"),
          Map.entry("may", "May"),
          Map.entry("jun", "June"),
          Map.entry("jul", "July"),
          Map.entry("aug", "August"),
          Map.entry("sep", "September"),
          Map.entry("oct", "October"),
          Map.entry("nov", "November"),
          Map.entry("dec", "December"));

  private static final String NOT_IN_NAMES = "\"#%'(),={}";
  private static final String JOINT = " # ";

  /**
   * A piece of a value.
   *
   * @param isName whether it is the name of a string, which stands bare, and not text
   */
  record Piece(boolean isName, String text) {
    static Piece text(String text) {
      return new Piece(false, text);
    }

    static Piece name(String name) {
      return new Piece(true, name);
    }

    /** As an expression has it. */
    private String written() {
      return isName ? text : "{" + text + "}";
    }
  }

  private StoredValue() {}

  static boolean isMonth(String name) {
    return MONTHS.containsKey(name);
  }

  /** White space as BibTeX has it: runs become one space, and none is at either end. */
  static String of(List<Piece> pieces) {
    if (pieces.size() == 1 && !pieces.get(0).isName() && isTidy(pieces.get(0).text())) {
      String text = pieces.get(0).text();
      return isMistakable(text) ? '"' + text + '"' : text;
    }
    List<Piece> joined = joined(pieces);
    if (joined.stream().noneMatch(Piece::isName)) {
      String text = joined.isEmpty() ? "" : joined.get(0).text();
      return isMistakable(text) ? '"' + text + '"' : text;
    }
    boolean undefinedAlone = joined.size() == 1 && !isMonth(joined.get(0).text());
    return Stream.concat(joined.stream(), undefinedAlone ? Stream.of(Piece.text("")) : Stream.of())
        .map(Piece::written)
        .collect(Collectors.joining(JOINT));
  }

  /** Whether white space in it is as BibTeX has it. */
  private static boolean isTidy(String text) {
    boolean afterSpace = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isSpace(c) && (afterSpace || c != ' ')) {
        return false;
      }
      afterSpace = c == ' ';
    }
    return !afterSpace;
  }

  /** Neighbouring texts as one, without empty ones. */
  private static List<Piece> joined(List<Piece> pieces) {
    List<Piece> joined = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    boolean afterSpace = true;
    for (Piece piece : pieces) {
      if (piece.isName()) {
        add(text, joined);
        String name = piece.text().toLowerCase(Locale.ROOT);
        joined.add(Piece.name(isMonth(name) ? name : piece.text()));
        afterSpace = false;
      } else {
        afterSpace = collapse(piece.text(), text, afterSpace);
      }
    }
    if (afterSpace && !text.isEmpty()) {
      text.setLength(text.length() - 1);
    }
    add(text, joined);
    return joined;
  }

  private static void add(StringBuilder text, List<Piece> to) {
    if (!text.isEmpty()) {
      to.add(Piece.text(text.toString()));
      text.setLength(0);
    }
  }

  private static boolean collapse(String from, StringBuilder to, boolean startsAfterSpace) {
    boolean afterSpace = startsAfterSpace;
    int copied = 0;
    for (int i = 0; i < from.length(); i++) {
      if (isSpace(from.charAt(i))) {
        to.append(from, copied, i);
        afterSpace = afterSpace && i == copied;
        if (!afterSpace) {
          to.append(' ');
          afterSpace = true;
        }
        copied = i + 1;
      }
    }
    to.append(from, copied, from.length());
    return afterSpace && copied == from.length();
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f' || c == '\u000B';
  }

  static boolean isNamePart(char c) {
    return !isSpace(c) && NOT_IN_NAMES.indexOf(c) < 0;
  }

  /** What stands after the equals sign. */
  static String written(String stored) {
    return isExpression(stored) ? stored : "{" + unquoted(stored) + "}";
  }

  /**
   * The text, with the months as plain.bst words them; empty where a name in it is undefined, so
   * that nobody knows what it says.
   */
  static Optional<String> text(String stored) {
    if (!isExpression(stored)) {
      return Optional.of(unquoted(stored));
    }
    StringBuilder text = new StringBuilder();
    for (Piece piece : pieces(stored)) {
      String words = piece.isName() ? MONTHS.get(piece.text()) : piece.text();
      if (words == null) {
        return Optional.empty();
      }
      text.append(words);
    }
    return Optional.of(text.toString());
  }

  private static String unquoted(String stored) {
    boolean quoted = stored.length() > 1 && stored.charAt(0) == '"' && isMistakable(stored);
    return quoted ? stored.substring(1, stored.length() - 1) : stored;
  }

  /** Whether a text is an expression, or one that stands in quotation marks. */
  private static boolean isMistakable(String text) {
    if (text.length() != 3 && !text.startsWith("\"") && !text.contains(JOINT)) {
      return false;
    }
    int from = 0;
    int to = text.length();
    while (to - from > 1 && text.charAt(from) == '"' && text.charAt(to - 1) == '"') {
      from++;
      to--;
    }
    return isExpression(text.substring(from, to));
  }

  static boolean isExpression(String stored) {
    if (stored.length() == 3) {
      return isMonth(stored);
    }
    if (!stored.contains(JOINT)) {
      return false;
    }
    List<Piece> pieces = pieces(stored);
    return pieces.size() > 1 && pieces.stream().anyMatch(Piece::isName);
  }

  /** The pieces of an expression; none where it is not one. */
  private static List<Piece> pieces(String stored) {
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    while (true) {
      int end = stored.startsWith("{", at) ? endOfBraces(stored, at) : endOfName(stored, at);
      if (end <= at) {
        return List.of();
      }
      boolean name = stored.charAt(at) != '{';
      pieces.add(new Piece(name, name ? stored.substring(at, end) : inside(stored, at, end)));
      if (end == stored.length()) {
        return pieces;
      }
      if (!stored.startsWith(JOINT, end)) {
        return List.of();
      }
      at = end + JOINT.length();
    }
  }

  private static String inside(String stored, int at, int end) {
    return stored.substring(at + 1, end - 1);
  }

  private static int endOfName(String text, int from) {
    int end = from;
    boolean digit = from < text.length() && text.charAt(from) >= '0' && text.charAt(from) <= '9';
    while (!digit && end < text.length() && isNamePart(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static int endOfBraces(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (depth == 0) {
        return i + 1;
      }
    }
    return -1;
  }
}
