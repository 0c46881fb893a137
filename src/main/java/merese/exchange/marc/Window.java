package merese.exchange.marc;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * A stream of bytes, seen from a place in it that moves on. Places are counted from there; what is
 * looked at is held until it is passed.
 */
final class Window {
  private static final int CHUNK = 1 << 16;

  private final InputStream in;
  private byte[] bytes = new byte[2 * CHUNK];
  private int start;
  private int end;
  private long passed;
  private boolean ended;

  Window(InputStream in) {
    this.in = in;
  }

  /** How many bytes of the stream are passed. */
  long passed() {
    return passed;
  }

  /** Whether there is a byte at a place. */
  boolean has(int at) throws IOException {
    while (end - start <= at && !ended) {
      fill();
    }
    return at < end - start;
  }

  private void fill() throws IOException {
    if (bytes.length - end < CHUNK) {
      int held = end - start;
      if (bytes.length - held < CHUNK || start < bytes.length / 2) {
        bytes = Arrays.copyOfRange(bytes, start, start + Math.max(bytes.length, 2 * held + CHUNK));
      } else {
        System.arraycopy(bytes, start, bytes, 0, held);
      }
      start = 0;
      end = held;
    }
    int read = in.read(bytes, end, bytes.length - end);
    if (read < 0) {
      ended = true;
    } else {
      end += read;
    }
  }

  /** The byte at a place, without a sign; -1 after the end. */
  int at(int at) throws IOException {
    return has(at) ? bytes[start + at] & 0xff : -1;
  }

  /** The next place of a byte; -1 where there is none before the limit or the end. */
  int find(int value, int from, int limit) throws IOException {
    int at = from;
    while (at < limit && has(at)) {
      int stop = Math.min(end, start + limit);
      for (int i = start + at; i < stop; i++) {
        if (bytes[i] == (byte) value) {
          return i - start;
        }
      }
      at = stop - start;
    }
    return -1;
  }

  boolean is(int at, String ascii) throws IOException {
    if (!has(at + ascii.length() - 1)) {
      return false;
    }
    for (int i = 0; i < ascii.length(); i++) {
      if (bytes[start + at + i] != ascii.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** How many bytes there are up to the limit. */
  int available(int limit) throws IOException {
    return has(limit - 1) ? limit : Math.min(limit, end - start);
  }

  /** A copy; the place does not move. */
  byte[] copy(int from, int to) {
    return Arrays.copyOfRange(bytes, start + from, start + to);
  }

  /** Moves on past bytes that have been looked at. */
  void pass(int count) {
    start += count;
    passed += count;
  }
}
