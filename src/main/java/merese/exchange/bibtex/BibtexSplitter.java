package merese.exchange.bibtex;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/**
 * Cuts a file into its entries, looking at braces, quotation marks and line starts only, so that a
 * broken entry does not take the others with it.
 *
 * <p>An entry starts at an {@code @} with a word and an opening brace or parenthesis. It ends at
 * its closing one or, if that is missing, before the next line that starts like an entry. What is
 * between entries is passed over, and so is a line's rest from a percent sign there (as Biber
 * does). A comment ends at its closing brace; if that is missing, only its first word counts. A
 * line in the text that starts with {@code @} and a word is an entry whose brace is missing. Where
 * fields follow what seems to be an entry's end, a brace too many is before them, and they belong
 * to it.
 */
final class BibtexSplitter {
  /** No entry is longer, in bytes; its abstract or note would be a book. */
  static final int MOST = 4 << 20;

  private static final long MOST_IN_VAIN = 4L * MOST;

  /** How far a line is looked at for what starts an entry. */
  private static final int LONGEST_START = 1000;

  /** Most of a file: what moves on by one column and means nothing here. */
  private static final boolean[] PLAIN = plain();

  private final Spool bytes;
  private long at;
  private int line = 1;
  private long lineStart;
  private int column = 1;
  private boolean blankLine = true;
  private long lookedAhead;

  /**
   * An entry's bytes and where they start.
   *
   * @param type the word after the {@code @}, in lower case
   * @param column from 1, in bytes but for the later ones of a UTF-8 character
   * @param tooLong whether there is more of it than {@link #MOST}
   */
  record Chunk(String type, long from, long to, int line, int column, boolean tooLong) {}

  BibtexSplitter(Spool bytes) throws IOException {
    this.bytes = bytes;
    if (bytes.at(0) == 0xEF && bytes.at(1) == 0xBB && bytes.at(2) == 0xBF) {
      at = 3;
      lineStart = 3;
    }
  }

  /** The next entry; empty at the end of the file. */
  Optional<Chunk> next() throws IOException {
    while (true) {
      int c = bytes.at(at);
      if (c < 0) {
        return Optional.empty();
      }
      if (c == '%') {
        toEndOfLine();
      } else if (c == '@') {
        Optional<Chunk> chunk = chunk();
        if (chunk.isPresent()) {
          return chunk;
        }
      } else {
        step(c);
      }
    }
  }

  private void step(int c) throws IOException {
    at++;
    column += (c & 0xC0) == 0x80 ? 0 : 1;
    blankLine &= c == ' ' || c == '\t';
    if (c == '\n' || c == '\r' && bytes.at(at) != '\n') {
      line++;
      lineStart = at;
      column = 1;
      blankLine = true;
    }
  }

  private static boolean[] plain() {
    boolean[] plain = new boolean[128];
    for (char c = ' '; c < 127; c++) {
      plain[c] = "{}()\"@%,=".indexOf(c) < 0;
    }
    return plain;
  }

  /** Goes past plain bytes, of which there is at least one, but not past a position. */
  private void stepPastPlain(long limit) throws IOException {
    step(bytes.at(at));
    if (!blankLine) {
      int run = (int) Math.min(bytes.run(at, PLAIN), limit - at);
      at += run;
      column += run;
    }
  }

  private void stepTo(long position) throws IOException {
    while (at < position) {
      step(bytes.at(at));
    }
  }

  private void toEndOfLine() throws IOException {
    for (int c = bytes.at(at); c >= 0 && c != '\n' && c != '\r'; c = bytes.at(at)) {
      at++;
    }
  }

  /** What starts at this {@code @}; empty for one that is only text, which is then passed. */
  private Optional<Chunk> chunk() throws IOException {
    long from = at;
    int startLine = line;
    boolean first = blankLine;
    int startColumn = column;
    long wordStart = pastSpace(at + 1);
    long wordEnd = pastWord(wordStart);
    String type = word(wordStart, wordEnd);
    long open = pastSpace(wordEnd);
    int delimiter = bytes.at(open);
    boolean delimited = delimiter == '{' || delimiter == '(';
    if (type.isEmpty() || !delimited && (type.equals("comment") || !first)) {
      stepTo(Math.max(wordEnd, from + 1));
      return Optional.empty();
    }
    if (type.equals("comment")) {
      comment(open, wordEnd);
      return Optional.empty();
    }
    boolean tooLong = false;
    if (delimited) {
      stepTo(open + 1);
      tooLong = body(from, delimiter == '{' ? '}' : ')', !isKeyless(type));
    }
    if (!tooLong && (!delimited || isClosedEarly())) {
      tooLong = toNextStart(from, MOST);
    }
    long to = at;
    if (tooLong) {
      toNextStart(from, Long.MAX_VALUE);
    }
    return Optional.of(new Chunk(type, from, to, startLine, startColumn, tooLong));
  }

  static boolean isKeyless(String type) {
    return type.equals("string") || type.equals("preamble");
  }

  private String word(long from, long to) throws IOException {
    StringBuilder word = new StringBuilder();
    for (long i = from; i < to; i++) {
      word.append((char) bytes.at(i));
    }
    return word.toString().toLowerCase(Locale.ROOT);
  }

  /**
   * Goes past the end of the entry.
   *
   * @return whether it is too long, which ends it
   */
  private boolean body(long from, char close, boolean hasKey) throws IOException {
    int depth = 0;
    boolean quoted = false;
    boolean inKey = hasKey;
    while (true) {
      int c = bytes.at(at);
      if (c < 0 || c == '@' && at == lineStart && startsEntry(at)) {
        return false;
      }
      if (at - from >= MOST) {
        return true;
      }
      if (c < PLAIN.length && PLAIN[c]) {
        stepPastPlain(from + MOST);
        continue;
      }
      if (c == '{') {
        depth++;
      } else if (depth > 0) {
        depth -= c == '}' ? 1 : 0;
      } else if (quoted) {
        quoted = c != '"';
      } else if (c == close) {
        at++;
        return false;
      } else if (inKey) {
        inKey = c != ',' && c != '=';
      } else if (c == '"') {
        quoted = true;
      } else if (c == '%') {
        toEndOfLine();
        continue;
      }
      step(c);
    }
  }

  /** Whether what follows the end of an entry is more of its fields, after a comma. */
  private boolean isClosedEarly() throws IOException {
    long i = at;
    boolean comma = false;
    for (int c = bytes.at(i); isSpace(c) || c == ',' || c == '}'; c = bytes.at(i)) {
      comma |= c == ',';
      i++;
    }
    long nameEnd = pastWord(i);
    return comma && nameEnd > i && bytes.at(pastSpace(nameEnd)) == '=';
  }

  /**
   * Past a comment, or only past its word where its brace is never closed. How far is looked in
   * vain is limited, since there may be many such.
   */
  private void comment(long open, long wordEnd) throws IOException {
    int depth = 0;
    for (long i = open; i - open < MOST && lookedAhead < MOST_IN_VAIN; i++) {
      lookedAhead++;
      int c = bytes.at(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      boolean closed = bytes.at(open) == '(' ? c == ')' && depth == 0 : c == '}' && depth == 0;
      if (closed) {
        lookedAhead -= i + 1 - open;
        stepTo(i + 1);
        return;
      }
      if (c < 0) {
        break;
      }
    }
    stepTo(wordEnd);
  }

  /**
   * @return whether there is none within so many bytes
   */
  private boolean toNextStart(long from, long most) throws IOException {
    for (int c = bytes.at(at); c >= 0; c = bytes.at(at)) {
      if (at > from && c == '@' && at == lineStart && startsEntry(at)) {
        return false;
      }
      if (at - from >= most) {
        return true;
      }
      step(c);
    }
    return false;
  }

  /**
   * Whether a line that starts with an {@code @} starts an entry: a word and an opening brace, and
   * where the word is no known type, then a key with a comma after it or a field's name with an
   * equals sign. A line of somebody's text may well start with {@code @Test(} or the like.
   */
  private boolean startsEntry(long position) throws IOException {
    long wordEnd = pastWord(position + 1);
    String type = word(position + 1, Math.min(wordEnd, position + LONGEST_START));
    long open = pastSpace(wordEnd);
    int delimiter = bytes.at(open);
    if (type.isEmpty() || delimiter != '{' && delimiter != '(') {
      return false;
    }
    if (isKeyless(type) || type.equals("comment") || EntryTypes.isKnown(type)) {
      return true;
    }
    long keyStart = pastSpace(open + 1);
    long keyEnd = keyStart;
    while (isInKey(bytes.at(keyEnd)) && keyEnd - open < LONGEST_START) {
      keyEnd++;
    }
    int after = bytes.at(pastSpace(keyEnd));
    return after == ',' || after == '=' || isFieldAt(pastSpace(keyEnd));
  }

  /** A field's name with an equals sign. */
  private boolean isFieldAt(long position) throws IOException {
    long nameEnd = pastWord(position);
    return nameEnd > position && bytes.at(pastSpace(nameEnd)) == '=';
  }

  private static boolean isInKey(int c) {
    return c > ' ' && c != ',' && c != '{' && c != '}' && c != '"' && c != '=';
  }

  private static boolean isSpace(int c) {
    return c >= 0 && StoredValue.isSpace((char) c);
  }

  private long pastSpace(long position) throws IOException {
    long i = position;
    while (i - position < LONGEST_START && isSpace(bytes.at(i))) {
      i++;
    }
    return i;
  }

  private long pastWord(long position) throws IOException {
    long i = position;
    for (int c = bytes.at(i); isInWord(c) && i - position < LONGEST_START; c = bytes.at(i)) {
      i++;
    }
    return i;
  }

  private static boolean isInWord(int c) {
    boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    return letter || c >= '0' && c <= '9' || c == '-' || c == '_' || c == ':' || c == '+';
  }
}
