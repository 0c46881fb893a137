package merese.exchange.csl;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Finds the items of a file, each as a piece of its own: in one list, in several, one alone or one
 * a line.
 *
 * <p>Guarantees: every byte but white space, commas and square brackets round items is in one
 * piece; a piece is at most {@link JsonParsing#LONGEST} bytes. Where quotation marks or brackets do
 * not come out even, the next item is looked for at a line that begins like this one, or with the
 * name "id" or "type"; so that a broken item costs no other.
 */
final class ItemSplitter {
  private static final int LOOK_AHEAD = 256;
  private static final int DEEPEST = JsonParsing.DEEPEST;

  private final InputStream in;
  private byte[] buffer = new byte[1 << 16];
  private int end;
  private boolean ended;
  private int at;

  private int counted;
  private int line = 1;
  private int column = 1;
  private boolean any;
  private int open;

  ItemSplitter(InputStream in) {
    this.in = in;
  }

  /** What a piece is. */
  enum Kind {
    /** An item, whole or as far as it goes. */
    ITEM,
    /** An item of which only the beginning is here, since it is too long. */
    TOO_LONG,
    /** Text between items. */
    STRAY,
    /** A file that begins with neither a list nor an item. */
    OTHER_FORMAT
  }

  /**
   * A piece of the file.
   *
   * @param line of its first byte, from 1
   * @param column of its first byte, from 1, in characters
   */
  record Piece(Kind kind, int line, int column, byte[] bytes) {}

  /** The next piece; null at the end of the file. */
  Piece next() throws IOException {
    while (true) {
      drop();
      if (!has(at)) {
        return null;
      }
      int b = buffer[at];
      if (isSpace(b) || b == ',') {
        at++;
      } else if (!any && startsWith(0xEF, 0xBB, 0xBF)) {
        at += 3;
        counted = at;
      } else if (!any && (b != '[' && b != '{' && b != ']' || has(at + 1) && buffer[at + 1] == 0)) {
        any = true;
        int first = has(JsonParsing.LONGEST) ? JsonParsing.LONGEST : end;
        Piece whole = piece(Kind.OTHER_FORMAT, at, Math.max(first, at + 1));
        skipAll();
        return whole;
      } else if (b == '[' || b == ']') {
        open += b == '[' ? 1 : -1;
        any = true;
        at++;
      } else if (b == '{') {
        any = true;
        return item();
      } else {
        return stray();
      }
    }
  }

  /** Whether a list was opened that is not closed, at the end of the file. */
  boolean isListOpen() {
    return open > 0;
  }

  /** Whether there was a list, if an empty one. */
  boolean hasList() {
    return any;
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }

  private Piece item() throws IOException {
    int start = at;
    int after = endOfItem(start);
    if (after >= 0) {
      at = after;
      return piece(Kind.ITEM, start, after);
    }
    boolean tooLong = end - start > JsonParsing.LONGEST;
    int next = nextStart(start);
    if (next >= 0) {
      at = next;
      return piece(Kind.ITEM, start, trimmed(start, next));
    }
    if (!tooLong && end - start <= JsonParsing.LONGEST) {
      at = end;
      return piece(Kind.ITEM, start, trimmed(start, end));
    }
    Piece beginning = piece(Kind.TOO_LONG, start, start + JsonParsing.LONGEST);
    at = start + JsonParsing.LONGEST;
    skipToStart();
    return beginning;
  }

  /** Where an item ends, or -1 where it has a flaw, does not end, or is too long. */
  private int endOfItem(int start) throws IOException {
    boolean[] objects = new boolean[DEEPEST + 1];
    int depth = 0;
    int last = ' ';
    int limit = start + JsonParsing.LONGEST;
    for (int i = start; i < limit && has(i); i++) {
      int b = buffer[i];
      if (isSpace(b)) {
        continue;
      }
      if (last == '"' && b != ',' && b != ':' && b != '}' && b != ']') {
        return -1;
      }
      switch (b) {
        case '"' -> {
          i = endOfText(i, limit);
          if (i < 0) {
            return -1;
          }
        }
        case '{', '[' -> {
          boolean inObject = depth > 0 && objects[depth];
          if (depth == DEEPEST || inObject && last != ':') {
            return -1;
          }
          depth++;
          objects[depth] = b == '{';
        }
        case '}', ']' -> {
          if (objects[depth] != (b == '}')) {
            return -1;
          }
          depth--;
          if (depth == 0) {
            return i + 1;
          }
        }
        default -> {}
      }
      last = b;
    }
    return -1;
  }

  /** The place of the closing mark of a text; -1 where it does not end on its line. */
  private int endOfText(int start, int limit) throws IOException {
    int i = start + 1;
    while (true) {
      i = endOfPlain(i, Math.min(limit, end));
      if (i >= limit || !has(i)) {
        return -1;
      }
      byte b = buffer[i];
      if (b == '"') {
        return i;
      }
      if (b == '\n') {
        return -1;
      }
      if (b == '\\') {
        i++;
        if (has(i) && buffer[i] == '\n') {
          return -1;
        }
        i++;
      }
    }
  }

  /** The next place, before an end, of a byte that means something inside a text. */
  private int endOfPlain(int from, int to) {
    byte[] bytes = buffer;
    for (int i = from; i < to; i++) {
      byte b = bytes[i];
      if (b == '"' || b == '\n' || b == '\\') {
        return i;
      }
    }
    return Math.max(from, to);
  }

  /** Where after a broken item another one seems to begin; -1 for nowhere within reach. */
  private int nextStart(int start) throws IOException {
    int indent = indent(start);
    int limit = start + JsonParsing.LONGEST;
    for (int i = start + 1; i < limit && has(i); i++) {
      if (buffer[i] == '{' && isStart(start, i, indent)) {
        return i;
      }
    }
    return -1;
  }

  private boolean isStart(int from, int brace, int indent) throws IOException {
    int before = brace - 1;
    int lineStart = -1;
    while (before > from && isSpace(buffer[before])) {
      if (buffer[before] == '\n' && lineStart < 0) {
        lineStart = before + 1;
      }
      before--;
    }
    boolean beginsLine = lineStart >= 0;
    if (beginsLine && brace - lineStart <= indent) {
      return true;
    }
    boolean apart = beginsLine || ",}[]".indexOf(buffer[before]) >= 0;
    return apart && isNamed(brace + 1);
  }

  /** Whether the first name after a brace is "id" or "type". */
  private boolean isNamed(int from) throws IOException {
    int i = from;
    while (has(i) && i - from < LOOK_AHEAD && isSpace(buffer[i])) {
      i++;
    }
    return isAt(i, "\"id\"") || isAt(i, "\"type\"");
  }

  private boolean isAt(int from, String text) throws IOException {
    for (int i = 0; i < text.length(); i++) {
      if (!has(from + i) || buffer[from + i] != text.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** How many bytes stand before it in its line; 0 where the line's beginning is gone. */
  private int indent(int start) {
    return Math.max(0, countedColumn(start) - 1);
  }

  private void skipToStart() throws IOException {
    while (true) {
      drop();
      int next = nextStart(at);
      if (next >= 0) {
        at = next;
        return;
      }
      if (!has(at + JsonParsing.LONGEST)) {
        at = end;
        return;
      }
      at += JsonParsing.LONGEST - LOOK_AHEAD;
    }
  }

  private void skipAll() throws IOException {
    do {
      at = end;
      drop();
    } while (has(at));
  }

  private Piece stray() throws IOException {
    int start = at;
    int i = start;
    int limit = start + JsonParsing.LONGEST;
    while (i < limit && has(i) && "{[],\n".indexOf(buffer[i]) < 0) {
      int close = buffer[i] == '"' ? endOfText(i, limit) : i;
      i = (close < 0 ? i : close) + 1;
    }
    at = i;
    return piece(Kind.STRAY, start, trimmed(start, i));
  }

  /** The end without the white space and commas before it. */
  private int trimmed(int start, int to) {
    int i = to;
    while (i > start + 1 && (isSpace(buffer[i - 1]) || buffer[i - 1] == ',')) {
      i--;
    }
    boolean lastBracket = to == end && ended && i > start + 2 && buffer[i - 1] == ']';
    if (lastBracket && buffer[i - 2] == '\n') {
      open--;
      return trimmed(start, i - 1);
    }
    return i;
  }

  private Piece piece(Kind kind, int from, int to) {
    count(from);
    return new Piece(kind, line, column, Arrays.copyOfRange(buffer, from, Math.min(to, end)));
  }

  private int countedColumn(int index) {
    count(index);
    return column;
  }

  /** Moves the line and column on to a place. */
  private void count(int index) {
    byte[] bytes = buffer;
    int lines = 0;
    int start = counted;
    for (int i = counted; i < index; i++) {
      if (bytes[i] == '\n') {
        lines++;
        start = i + 1;
      }
    }
    if (lines > 0) {
      line += lines;
      column = 1;
    }
    for (int i = start; i < index; i++) {
      column += (bytes[i] & 0xC0) == 0x80 ? 0 : 1;
    }
    counted = Math.max(counted, index);
  }

  /** Whether there is a byte at a place, reading on where need be. */
  private boolean has(int index) throws IOException {
    while (index >= end) {
      if (ended) {
        return false;
      }
      if (end == buffer.length) {
        buffer = Arrays.copyOf(buffer, buffer.length * 2);
      }
      int read = in.read(buffer, end, buffer.length - end);
      if (read < 0) {
        ended = true;
      } else {
        end += read;
      }
    }
    return true;
  }

  /** Forgets what is done with. */
  private void drop() {
    count(at);
    if (at > buffer.length / 2 || at == end) {
      System.arraycopy(buffer, at, buffer, 0, end - at);
      end -= at;
      counted = 0;
      at = 0;
    }
  }

  private boolean startsWith(int... bytes) throws IOException {
    for (int i = 0; i < bytes.length; i++) {
      if (!has(at + i) || (buffer[at + i] & 0xFF) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSpace(int b) {
    return b == ' ' || b == '\n' || b == '\r' || b == '\t';
  }
}
