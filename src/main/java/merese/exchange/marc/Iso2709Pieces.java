package merese.exchange.marc;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * Cuts a stream of ISO 2709 into the records that it holds, and what stands between them.
 *
 * <p>A record ends where its leader says, if a terminator stands there; else at the next
 * terminator, or where the leader of another record stands. So a wrong length, a lost terminator or
 * bytes that are no record cost no other record. Line ends and the like between records belong to
 * none.
 */
final class Iso2709Pieces {
  /** The most bytes of a piece; ISO 2709 itself has no more than 99,999. */
  static final int LIMIT = 1_000_000;

  static final int LEADER = 24;
  static final int END_OF_FIELD = 0x1e;
  static final int END_OF_RECORD = 0x1d;

  private final Window window;

  /** Where in the stream the next terminator stands, -1 where none is known. */
  private long found = -1;

  /** Up to where in the stream there is no other. */
  private long searched;

  /**
   * @param offset of the first byte, from 0
   */
  record Piece(long offset, byte[] bytes) {}

  Iso2709Pieces(InputStream in) {
    this.window = new Window(in);
  }

  /** The next piece; empty at the end of the stream. */
  Optional<Piece> next() throws IOException {
    skip();
    if (!window.has(0)) {
      return Optional.empty();
    }
    int length = length();
    Piece piece = new Piece(window.passed(), window.copy(0, length));
    window.pass(length);
    return Optional.of(piece);
  }

  private void skip() throws IOException {
    if (window.passed() == 0 && window.at(0) == 0xef && window.at(1) == 0xbb) {
      window.pass(window.at(2) == 0xbf ? 3 : 0);
    }
    while (isBetween(window.at(0)) && !isLeader(0)) {
      window.pass(1);
    }
  }

  private static boolean isBetween(int c) {
    return switch (c) {
      case ' ', '\t', '\r', '\n', 0, 0x1a, END_OF_RECORD -> true;
      default -> false;
    };
  }

  private int length() throws IOException {
    int end = end();
    int said = saidLength();
    if (said > LEADER && window.at(said - 1) == END_OF_RECORD) {
      boolean another = end >= 0 && end < said - 1 && isLeader(afterSpace(end + 1));
      if (!another) {
        return said;
      }
    }
    boolean whole = end >= 0;
    int limit = whole ? end + 1 : window.available(LIMIT);
    if (said > LEADER && said < limit && isLeader(said)) {
      return said; // the terminator is another byte
    }
    for (int at = isLeader(0) ? LEADER + 1 : 1; at + LEADER <= limit; at++) {
      if (isLeader(at)) {
        return at;
      }
    }
    boolean more = !whole && window.has(limit);
    return more ? limit - LEADER : limit; // a leader may stand across the limit
  }

  /** The next terminator; -1 where there is none before the limit. Each byte is looked at once. */
  private int end() throws IOException {
    if (found < window.passed()) {
      int from = (int) Math.max(0, searched - window.passed());
      int end = window.find(END_OF_RECORD, from, LIMIT);
      searched = end < 0 ? window.passed() + window.available(LIMIT) : 0;
      found = end < 0 ? -1 : window.passed() + end;
    }
    long end = found - window.passed();
    return found >= 0 && end < LIMIT ? (int) end : -1;
  }

  private int afterSpace(int from) throws IOException {
    int at = from;
    while (isBetween(window.at(at)) && !isLeader(at) && at < from + LEADER) {
      at++;
    }
    return at;
  }

  /** The length that the leader says; -1 where it says none. */
  private int saidLength() throws IOException {
    int length = 0;
    for (int i = 0; i < 5; i++) {
      int digit = window.at(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      length = 10 * length + digit;
    }
    return length;
  }

  /** Whether it looks like the leader of MARC 21: length, "22", address, "450". */
  private boolean isLeader(int at) throws IOException {
    if (window.at(at + 10) != '2'
        || window.at(at + 11) != '2'
        || window.at(at + 20) != '4'
        || window.at(at + 21) != '5'
        || !window.has(at + LEADER - 1)) {
      return false;
    }
    for (int i = 0; i < 5; i++) {
      if (!isDigitOrSpace(window.at(at + i)) || !isDigitOrSpace(window.at(at + 12 + i))) {
        return false;
      }
    }
    int status = window.at(at + 5);
    return status == ' ' || (status >= 'a' && status <= 'z');
  }

  private static boolean isDigitOrSpace(int c) {
    return c == ' ' || (c >= '0' && c <= '9');
  }
}
