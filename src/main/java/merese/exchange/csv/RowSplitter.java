package merese.exchange.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the rows of a file and their cells (RFC 4180, with any line ends, and with the separator
 * given).
 *
 * <p>Guarantees: a row is at most {@link #LONGEST} bytes; a quotation mark that does not close, or
 * closes in a later row, costs the rows between only as far as the next line that is a row by
 * itself with the right number of cells.
 */
final class RowSplitter {
  /** The most bytes of a row: 4 MiB. */
  static final int LONGEST = 4 << 20;

  /** The most columns. */
  static final int MOST_CELLS = 10_000;

  /** How far a line is read to see whether it is a row. */
  private static final int TRIED = 1 << 16;

  /** The fewest columns with which a line of prose hardly looks like a row. */
  private static final int SUSPICIOUS = 4;

  static final Charset WINDOWS = Charset.forName("windows-1252");

  private final InputStream in;
  private byte[] buffer = new byte[1 << 16];
  private int end;
  private boolean ended;
  private int at;
  private int counted;
  private int line = 1;

  private byte separator = ',';
  private int width = -1;

  private int[] from = new int[64];
  private int[] to = new int[64];
  private boolean[] quoted = new boolean[64];
  private int cells;
  private boolean filledBeyond;
  private int after;
  private int content;
  private int rowStart;
  private Flaw flaw;
  private int flawAt;

  RowSplitter(InputStream in) {
    this.in = in;
  }

  /** What is wrong with a row. */
  enum Flaw {
    NONE,
    /** A quotation mark that does not close. */
    OPEN,
    /** Text between a closing quotation mark and the separator. */
    TEXT_BEHIND,
    WRONG_COUNT,
    TOO_LONG,
    /** Bytes that are neither UTF-8 nor Windows-1252. */
    ENCODING
  }

  /**
   * A row.
   *
   * @param line of its first byte
   * @param flawLine of the flaw
   * @param cells decoded, without their quotation marks; none where there is a flaw
   * @param count how many cells it has
   * @param windows whether it is Windows-1252
   * @param holdsRows whether one of its cells holds a line that would be a row by itself
   * @param bytes of the row as it stands, without its line end, where it has a flaw
   */
  record Row(
      int line,
      Flaw flaw,
      int flawLine,
      List<String> cells,
      int count,
      boolean windows,
      boolean holdsRows,
      byte[] bytes) {}

  /** How rows are to be read from here on. */
  void expect(char separator, int width) {
    this.separator = (byte) separator;
    this.width = width;
  }

  /** The next line as it stands, still to be read; null at the end of the file. */
  byte[] line() throws IOException {
    skipBlank();
    if (!has(at)) {
      return null;
    }
    int i = at;
    boolean inQuotes = false;
    while (i - at < TRIED && has(i) && (inQuotes || buffer[i] != '\n' && buffer[i] != '\r')) {
      inQuotes ^= buffer[i] == '"';
      i++;
    }
    return Arrays.copyOfRange(buffer, at, i);
  }

  /** Goes on behind the line. */
  void skipLine() throws IOException {
    at = lineAfter(at);
  }

  /** The next row that is not empty; null at the end of the file. */
  Row next() throws IOException {
    skipBlank();
    if (!has(at)) {
      return null;
    }
    int start = at;
    scan(start, LONGEST);
    if (flaw == Flaw.NONE && width >= 0 && !isWide()) {
      flaw = Flaw.WRONG_COUNT;
      flawAt = start;
    }
    return flaw == Flaw.NONE ? whole(start) : flawed(start);
  }

  /** The bytes of the row that was given last, where it has no flaw; until the next one. */
  byte[] lastRow() {
    return Arrays.copyOfRange(buffer, rowStart, content);
  }

  private Row whole(int start) throws IOException {
    at = after;
    rowStart = start;
    count(start);
    int first = line;
    int count = cells;
    List<String> texts = texts(start, StandardCharsets.UTF_8);
    boolean windows = texts == null;
    if (windows) {
      texts = texts(start, WINDOWS);
    }
    if (texts == null) {
      byte[] bytes = Arrays.copyOfRange(buffer, start, content);
      return new Row(first, Flaw.ENCODING, first, List.of(), count, false, false, bytes);
    }
    boolean holdsRows = width >= SUSPICIOUS && holdsRows(start);
    return new Row(first, Flaw.NONE, first, texts, count, windows, holdsRows, new byte[0]);
  }

  /** Asked of few rows, since it reads them again. */
  private boolean holdsRows(int start) throws IOException {
    int last = content;
    boolean isOneLine = true;
    for (int i = start; i < last && isOneLine; i++) {
      isOneLine = buffer[i] != '\n' && buffer[i] != '\r';
    }
    boolean holds = !isOneLine && nextRow(start, last) >= 0;
    content = last;
    return holds;
  }

  private Row flawed(int start) throws IOException {
    Flaw found = flaw;
    int foundAt = flawAt;
    int count = cells;
    int region = found == Flaw.TEXT_BEHIND ? lineAfter(after) : after;
    boolean tooLong = found == Flaw.TOO_LONG || region - start > LONGEST;
    int regionEnd = Math.min(region, start + LONGEST);
    int stop = nextRow(start, regionEnd);
    count(start);
    int first = line;
    count(Math.min(foundAt, regionEnd));
    int flawLine = line;
    if (stop < 0 && tooLong) {
      byte[] bytes = Arrays.copyOfRange(buffer, start, Math.min(end, start + LONGEST));
      at = Math.min(end, start + LONGEST);
      skipLongLine();
      return new Row(first, Flaw.TOO_LONG, flawLine, List.of(), count, false, false, bytes);
    }
    at = stop < 0 ? region : stop;
    int last = at;
    while (last > start && (buffer[last - 1] == '\n' || buffer[last - 1] == '\r')) {
      last--;
    }
    byte[] bytes = Arrays.copyOfRange(buffer, start, last);
    return new Row(first, found, flawLine, List.of(), count, false, false, bytes);
  }

  /** The first line after the first one of a region that is a row by itself; -1 for none. */
  private int nextRow(int start, int regionEnd) throws IOException {
    if (width < 1) {
      return -1;
    }
    for (int i = lineAfter(start); i < regionEnd; i = lineAfter(i)) {
      scan(i, TRIED);
      if (flaw == Flaw.NONE && isWide()) {
        return i;
      }
    }
    return -1;
  }

  private int lineAfter(int from) throws IOException {
    int i = from;
    while (i - from <= LONGEST && has(i)) {
      if (buffer[i] == '\n' || buffer[i] == '\r' && !(has(i + 1) && buffer[i + 1] == '\n')) {
        return i + 1;
      }
      i++;
    }
    return i;
  }

  private void skipLongLine() throws IOException {
    while (true) {
      drop();
      int i = at;
      while (i < end && buffer[i] != '\n') {
        i++;
      }
      at = i;
      if (i < end || !has(i)) {
        return;
      }
    }
  }

  /** Whether the row has as many cells as the header, not counting empty ones after those. */
  private boolean isWide() {
    if (cells < width) {
      return false;
    }
    for (int i = width; i < Math.min(cells, MOST_CELLS); i++) {
      if (from[i] != to[i]) {
        return false;
      }
    }
    return !filledBeyond;
  }

  /** Finds the cells of the row that begins at a place, and its end or its flaw. */
  private void scan(int start, int most) throws IOException {
    flaw = Flaw.NONE;
    cells = 0;
    filledBeyond = false;
    int limit = start + most;
    int i = start;
    while (true) {
      if (i >= limit) {
        fail(Flaw.TOO_LONG, start, i);
        return;
      }
      boolean marks = false;
      int first = i;
      if (has(i) && buffer[i] == '"') {
        first = i + 1;
        int j = first;
        while (true) {
          if (j >= limit || !has(j)) {
            fail(j >= limit ? Flaw.TOO_LONG : Flaw.OPEN, i, j);
            return;
          }
          if (buffer[j] == '"') {
            if (!(has(j + 1) && buffer[j + 1] == '"')) {
              break;
            }
            marks = true;
            j++;
          }
          j++;
        }
        cell(first, j, marks);
        i = j + 1;
        if (has(i) && buffer[i] != separator && buffer[i] != '\n' && buffer[i] != '\r') {
          fail(Flaw.TEXT_BEHIND, i, i);
          return;
        }
      } else {
        while (true) {
          if (i == end && !has(i)) {
            break;
          }
          byte b = buffer[i];
          if (b == separator || b == '\n' || b == '\r') {
            break;
          }
          i++;
          if (i >= limit) {
            fail(Flaw.TOO_LONG, first, i);
            return;
          }
        }
        cell(first, i, false);
      }
      if (!has(i) || buffer[i] != separator) {
        content = i;
        after =
            !has(i) ? i : buffer[i] == '\r' && has(i + 1) && buffer[i + 1] == '\n' ? i + 2 : i + 1;
        return;
      }
      i++;
    }
  }

  private void fail(Flaw what, int where, int reached) {
    flaw = what;
    flawAt = where;
    after = reached;
    content = reached;
  }

  private void cell(int first, int last, boolean marks) {
    if (cells >= MOST_CELLS) {
      cells++;
      filledBeyond |= first != last;
      return;
    }
    if (cells == from.length) {
      from = Arrays.copyOf(from, cells * 2);
      to = Arrays.copyOf(to, cells * 2);
      quoted = Arrays.copyOf(quoted, cells * 2);
    }
    from[cells] = first;
    to[cells] = last;
    quoted[cells] = marks;
    cells++;
  }

  /** The cells; null where the bytes are not of the character set. */
  private List<String> texts(int start, Charset charset) {
    int sign = 0;
    for (int i = start; i < content; i++) {
      sign |= buffer[i];
    }
    boolean ascii = sign >= 0;
    int number = width < 0 ? Math.min(cells, MOST_CELLS) : width;
    List<String> texts = new ArrayList<>(number);
    for (int i = 0; i < number; i++) {
      if (from[i] == to[i]) {
        texts.add("");
        continue;
      }
      Charset used = ascii ? StandardCharsets.ISO_8859_1 : charset;
      String text = new String(buffer, from[i], to[i] - from[i], used);
      if (!ascii && text.indexOf('\uFFFD') >= 0 && !isReplacement(from[i], to[i], charset)) {
        return null;
      }
      texts.add(quoted[i] ? text.replace("\"\"", "\"") : text);
    }
    return texts;
  }

  /** Whether U+FFFD stands in the file itself. */
  private boolean isReplacement(int first, int last, Charset charset) {
    String text = new String(buffer, first, last - first, charset);
    return charset.equals(StandardCharsets.UTF_8)
        && Arrays.equals(
            text.getBytes(StandardCharsets.UTF_8), Arrays.copyOfRange(buffer, first, last));
  }

  private void skipBlank() throws IOException {
    while (true) {
      drop();
      if (!has(at)) {
        return;
      }
      byte b = buffer[at];
      if (b != '\n' && b != '\r') {
        return;
      }
      at++;
    }
  }

  /** Moves the line on to a place. */
  private void count(int index) {
    for (; counted < index; counted++) {
      byte b = buffer[counted];
      boolean lone = b == '\r' && (counted + 1 >= end || buffer[counted + 1] != '\n');
      if (b == '\n' || lone) {
        line++;
      }
    }
  }

  int lineNumber() {
    count(at);
    return line;
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
  private void drop() throws IOException {
    if (at < end && buffer[at] == '\r') {
      has(at + 1);
    }
    count(at);
    if (at > buffer.length / 2 || at == end) {
      System.arraycopy(buffer, at, buffer, 0, end - at);
      end -= at;
      counted = 0;
      at = 0;
    }
  }
}
