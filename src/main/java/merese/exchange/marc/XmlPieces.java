package merese.exchange.marc;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import merese.exchange.marc.XmlScopes.Tag;

/**
 * Cuts a stream of XML into the MARC records that it holds, without reading them: elements "record"
 * of the MARC namespace, or of none, wherever they stand. What is round them (a collection, an
 * answer of OAI-PMH or SRU) is passed over.
 *
 * <p>A record that is not closed ends where the next starts, or where the collection ends, so that
 * it costs no other. Elements of MARC outside a record are handed on too, as strays, up to the next
 * record. A comment, CDATA section or instruction that does not end within {@link #LIMIT} bytes is
 * taken to be broken, and what follows its first mark is read.
 *
 * <p>The bytes are of an encoding that has ASCII's bytes for ASCII's characters and for nothing
 * else.
 */
final class XmlPieces {
  /** The most bytes of a piece. */
  static final int LIMIT = 16_000_000;

  private static final int HEAD = 4096;

  private final Window window;
  private final XmlPosition position;
  private final XmlMarkup markup;
  private final XmlScopes scopes = new XmlScopes();
  private int at;
  private boolean stray;
  private boolean sawMarc;
  private boolean sawDoctype;
  private byte[] head = {};

  /** What a piece is. */
  enum Kind {
    RECORD,
    UNCLOSED,
    STRAY,
    DOCTYPE,
    TOO_LONG
  }

  /**
   * @param line of its first byte, from 1
   * @param column from 1, in characters
   */
  record Piece(Kind kind, int line, int column, byte[] bytes) {}

  XmlPieces(InputStream in, boolean utf8) {
    this.window = new Window(in);
    this.position = new XmlPosition(utf8);
    this.markup = new XmlMarkup(window);
  }

  XmlScopes scopes() {
    return scopes;
  }

  /** Whether there has been an element of MARC so far. */
  boolean sawMarc() {
    return sawMarc;
  }

  /** The first bytes of the file, where it had no piece. */
  byte[] head() {
    return head;
  }

  /** The next piece; empty at the end of the stream. */
  Optional<Piece> next() throws IOException {
    while (true) {
      int tag = window.find('<', at, LIMIT);
      if (tag < 0) {
        if (!window.has(LIMIT)) {
          return end();
        }
        if (stray) {
          return take(Kind.TOO_LONG, LIMIT);
        }
        pass(LIMIT);
        continue;
      }
      Optional<Piece> piece =
          switch (window.at(tag + 1)) {
            case '!', '?' -> other(tag);
            case '/' -> close(tag);
            default -> open(tag);
          };
      if (piece.isPresent()) {
        return piece;
      }
      if (!stray) {
        pass(at);
      }
    }
  }

  private Optional<Piece> end() throws IOException {
    int length = window.available(LIMIT);
    if (stray) {
      return take(Kind.STRAY, length);
    }
    pass(length);
    return Optional.empty();
  }

  private Optional<Piece> other(int tag) throws IOException {
    if (!stray && !sawDoctype && markup.isDoctype(tag)) {
      sawDoctype = true; // there can be only one
      int end = markup.endOfDoctype(tag);
      if (end > tag + 1) {
        pass(tag);
        return take(Kind.DOCTYPE, end - tag);
      }
    }
    at = markup.endOfOther(tag);
    return Optional.empty();
  }

  private Optional<Piece> close(int tag) throws IOException {
    if (stray && markup.isNamed(tag + 2, "collection")) {
      return take(Kind.STRAY, tag);
    }
    scopes.close(markup.name(tag + 2));
    at = markup.endOfTag(tag);
    return Optional.empty();
  }

  private Optional<Piece> open(int start) throws IOException {
    int first = window.at(start + 1);
    if (!Character.isLetter(first) && first != '_' && first != ':' && first < 0x80) {
      at = start + 1;
      return Optional.empty();
    }
    int end = markup.endOfTag(start);
    Tag tag = new Tag(markup.name(start + 1), markup.text(start, end));
    if (scopes.isRecord(tag)) {
      sawMarc = true;
      if (stray) {
        return take(Kind.STRAY, start);
      }
      pass(start);
      return record(end - start, tag.text().endsWith("/>"));
    }
    sawMarc |= scopes.isMarc(tag);
    if (scopes.isOfRecord(tag)) {
      sawMarc = true;
      end -= stray ? 0 : passSpace();
      stray = true;
    } else if (!tag.text().endsWith("/>")) {
      scopes.open(tag);
    }
    at = end;
    return Optional.empty();
  }

  private int passSpace() throws IOException {
    int length = 0;
    while (window.at(length) == ' ' || window.at(length) == '\n' || window.at(length) == '\r') {
      length++;
    }
    pass(length);
    return length;
  }

  /** The record that starts at the window's place. */
  private Optional<Piece> record(int endOfTag, boolean empty) throws IOException {
    if (empty) {
      return take(Kind.RECORD, endOfTag);
    }
    int from = endOfTag;
    while (true) {
      int tag = window.find('<', from, LIMIT);
      if (tag < 0) {
        return window.has(LIMIT)
            ? take(Kind.TOO_LONG, LIMIT)
            : take(Kind.UNCLOSED, window.available(LIMIT));
      }
      from = tag + 1;
      switch (window.at(from)) {
        case '!', '?' -> from = markup.endOfOther(tag);
        case '/' -> {
          if (markup.isNamed(tag + 2, "record")) {
            return take(Kind.RECORD, markup.endOfTag(tag));
          }
          if (markup.isNamed(tag + 2, "collection")) {
            return take(Kind.UNCLOSED, tag);
          }
        }
        default -> {
          if (markup.isNamed(from, "record")) {
            return take(Kind.UNCLOSED, tag);
          }
        }
      }
    }
  }

  private Optional<Piece> take(Kind kind, int length) {
    byte[] bytes = window.copy(0, length);
    Piece piece = new Piece(kind, position.line(), position.column(), bytes);
    position.pass(bytes, 0, length);
    window.pass(length);
    at = 0;
    stray = false;
    return Optional.of(piece);
  }

  private void pass(int length) {
    byte[] bytes = window.copy(0, length);
    if (!sawMarc && head.length < HEAD) {
      byte[] longer = Arrays.copyOf(head, Math.min(HEAD, head.length + length));
      System.arraycopy(bytes, 0, longer, head.length, longer.length - head.length);
      head = longer;
    }
    position.pass(bytes, 0, length);
    window.pass(length);
    at = 0;
  }
}
