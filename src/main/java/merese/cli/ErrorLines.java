package merese.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks what is said on the error stream at the width of the screen, between words. A path and a
 * command to copy stay on one line, whole, however long they are.
 *
 * <p>Where a path with blanks in it ends is not marked. So a whole path goes on to the end of the
 * clause, and what may be the end of one to the last of its words that has a slash or the ending of
 * a file's name; taking along a word too many makes a line longer, and no more. A line that is
 * pointed into from below stays as it is.
 */
final class ErrorLines {
  /** What later lines of a message start with; the lines of a list start with two blanks. */
  static final String HANGING = "    ";

  private static final String COMMAND = "merese ";
  private static final String ENDS_COMMAND = ";(\n“”\"'";

  /** How many words without a slash may stand in the name of a file. */
  private static final int MOST_BLANKS = 6;

  private static final int LONGEST_ENDING = 5;

  private ErrorLines() {}

  /** Prints a message. */
  static void print(Context context, String message) {
    print(context, "", message);
  }

  /**
   * The same.
   *
   * @param lead what it begins with, without a blank at its end
   */
  static void print(Context context, String lead, String message) {
    List<String> lines = lines(lead, message, context.errorScreen().width());
    if (context.errorScreen().colour() && !lead.isEmpty()) {
      String first = lines.get(0);
      lines.set(0, "\u001B[1;31m" + lead + "\u001B[0m" + first.substring(lead.length()));
    }
    lines.forEach(context.err()::println);
  }

  static List<String> lines(String lead, String message, int width) {
    List<String> lines = new ArrayList<>();
    String before = lead.isEmpty() ? "" : lead + " ";
    int begin = 0;
    while (begin <= message.length()) {
      int end = message.indexOf('\n', begin);
      end = end < 0 ? message.length() : end;
      String line = message.substring(begin, end);
      int indent = 0;
      while (indent < line.length() && line.charAt(indent) == ' ') {
        indent++;
      }
      String margin = line.substring(0, indent);
      if (begin > 0 && (isPointer(line) || isPointer(lineAt(message, end + 1)))) {
        lines.add(line);
        begin = end + 1;
        continue;
      }
      lines.addAll(
          Wrap.lines(
              kept(line.substring(indent)),
              width,
              begin == 0 ? before + margin : margin,
              margin + HANGING));
      begin = end + 1;
    }
    return lines;
  }

  private static String lineAt(String message, int begin) {
    int end = message.indexOf('\n', begin);
    return message.substring(
        Math.min(begin, message.length()), end < begin ? message.length() : end);
  }

  private static boolean isPointer(String line) {
    return line.strip().equals("^");
  }

  /** The words with those kept together that are one thing to copy. */
  private static String kept(String line) {
    StringBuilder kept = new StringBuilder();
    int at = 0;
    while (at < line.length()) {
      int end = endOfThing(line, at);
      kept.append(Wrap.whole(line.substring(at, end)));
      int next = line.indexOf(' ', end);
      next = next < 0 ? line.length() : next + 1;
      kept.append(line, end, next);
      at = next;
    }
    return kept.toString();
  }

  /** Where what begins here and is not to be broken ends; a word begins here. */
  private static int endOfThing(String line, int at) {
    int begin = at;
    while (begin < line.length() && "“\"'(".indexOf(line.charAt(begin)) >= 0) {
      begin++;
    }
    if (line.startsWith(COMMAND, begin)) {
      return endOfCommand(line, begin);
    }
    return endOfPath(line, at);
  }

  /** A command ends with the clause, not within what it quotes. */
  private static int endOfCommand(String line, int begin) {
    boolean quoted = false;
    int at = begin;
    while (at < line.length()) {
      char c = line.charAt(at);
      if (c == '"' && (quoted || line.indexOf('"', at + 1) > at && line.charAt(at - 1) == ' ')) {
        quoted = !quoted;
      } else if (!quoted
          && (ENDS_COMMAND.indexOf(c) >= 0
              || (c == ',' || c == ':' || c == '.')
                  && (at + 1 == line.length() || line.charAt(at + 1) == ' '))) {
        break;
      }
      at++;
    }
    while (at > begin && line.charAt(at - 1) == ' ') {
      at--;
    }
    return at;
  }

  private static int endOfPath(String line, int at) {
    int end = endOfWord(line, at);
    if (!hasSlash(line, at, end)) {
      return at;
    }
    boolean whole = isWhole(line, at);
    int last = end;
    int blanks = 0;
    while (end < line.length() && blanks <= MOST_BLANKS && !endsClause(line, end)) {
      int from = end + 1;
      if (line.startsWith("(", from)) {
        break;
      }
      end = endOfWord(line, from);
      boolean named = hasSlash(line, from, end) || hasEnding(line, from, end);
      last = named || whole ? end : last;
      blanks = named ? 0 : blanks + 1;
    }
    return last;
  }

  /** Whether a path begins here from a root. */
  private static boolean isWhole(String line, int at) {
    int begin = at;
    while (begin < line.length() && "“\"'(".indexOf(line.charAt(begin)) >= 0) {
      begin++;
    }
    return line.startsWith("/", begin) || line.startsWith(":\\", begin + 1);
  }

  private static int endOfWord(String line, int at) {
    int end = line.indexOf(' ', at);
    return end < 0 ? line.length() : end;
  }

  private static boolean hasSlash(String line, int from, int to) {
    int slash = line.indexOf('/', from);
    return slash >= 0 && slash < to || line.startsWith(":\\", from + 1);
  }

  private static boolean endsClause(String line, int end) {
    return end > 0 && ":;,”\"'".indexOf(line.charAt(end - 1)) >= 0;
  }

  /** "book.pdf", with a mark behind it or without. */
  private static boolean hasEnding(String line, int from, int to) {
    int end = to;
    while (end > from && !Character.isLetterOrDigit(line.charAt(end - 1))) {
      end--;
    }
    int dot = line.lastIndexOf('.', end - 1);
    return dot > from && end - dot - 1 > 0 && end - dot - 1 <= LONGEST_ENDING;
  }
}
