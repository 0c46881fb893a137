package merese.exchange.skos;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Lets UTF-8 through and refuses anything else with its place, since a character that cannot be
 * decoded would otherwise be read as another.
 */
final class Utf8Stream extends FilterInputStream {
  private final String file;
  private final String format;
  private int line = 1;
  private int column = 1;
  private int wanted;
  private int code;
  private int least;

  Utf8Stream(InputStream in, String file, String format) {
    super(in);
    this.file = file;
    this.format = format;
  }

  @Override
  public int read() throws IOException {
    int b = in.read();
    if (b < 0) {
      end();
    } else {
      check(b);
    }
    return b;
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    int count = in.read(bytes, from, length);
    if (count < 0) {
      end();
    }
    for (int i = 0; i < count; i++) {
      check(bytes[from + i] & 0xFF);
    }
    return count;
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private void end() {
    if (wanted > 0) {
      throw refused();
    }
  }

  private void check(int b) {
    if (wanted > 0) {
      continued(b);
    } else if (b < 0x80) {
      if (b == '\n') {
        line++;
        column = 1;
      } else {
        column++;
      }
    } else if (b >= 0xC2 && b < 0xE0) {
      begin(1, b & 0x1F, 0x80);
    } else if (b >= 0xE0 && b < 0xF0) {
      begin(2, b & 0x0F, 0x800);
    } else if (b >= 0xF0 && b < 0xF5) {
      begin(3, b & 0x07, 0x10000);
    } else {
      throw refused();
    }
  }

  private void begin(int more, int bits, int smallest) {
    wanted = more;
    code = bits;
    least = smallest;
  }

  private void continued(int b) {
    if ((b & 0xC0) != 0x80) {
      throw refused();
    }
    code = code << 6 | b & 0x3F;
    wanted--;
    if (wanted == 0) {
      if (code < least || code > 0x10FFFF || (code >= 0xD800 && code < 0xE000)) {
        throw refused();
      }
      column++;
    }
  }

  private UnreadableException refused() {
    return new UnreadableException(
        new FilePlace(file, line, column, 0),
        "this is not UTF-8, as " + format + " must be",
        "save the file as UTF-8");
  }
}
