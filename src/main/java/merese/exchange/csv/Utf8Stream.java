package merese.exchange.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** A file with a byte-order mark, in UTF-8 and without the mark. */
final class Utf8Stream extends InputStream {
  private final Reader reader;
  private final char[] chars = new char[8192];
  private byte[] bytes = new byte[0];
  private int at;
  private int kept;

  private Utf8Stream(Reader reader) {
    this.reader = reader;
  }

  /** A file without a mark is left as it is. */
  static InputStream of(InputStream in) throws IOException {
    PushbackInputStream back = new PushbackInputStream(in, 3);
    byte[] mark = back.readNBytes(3);
    if (isMark(mark, 0xEF, 0xBB, 0xBF)) {
      return back;
    }
    Charset charset =
        isMark(mark, 0xFF, 0xFE)
            ? StandardCharsets.UTF_16LE
            : isMark(mark, 0xFE, 0xFF) ? StandardCharsets.UTF_16BE : null;
    int from = charset == null ? 0 : 2;
    back.unread(mark, from, mark.length - from);
    return charset == null ? back : new Utf8Stream(new InputStreamReader(back, charset));
  }

  private static boolean isMark(byte[] found, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= found.length || (found[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private boolean fill() throws IOException {
    while (at == bytes.length) {
      int read = reader.read(chars, kept, chars.length - kept);
      if (read < 0 && kept == 0) {
        return false;
      }
      int length = kept + Math.max(0, read);
      boolean half = read >= 0 && Character.isHighSurrogate(chars[length - 1]);
      bytes = new String(chars, 0, half ? length - 1 : length).getBytes(StandardCharsets.UTF_8);
      at = 0;
      kept = half ? 1 : 0;
      if (half) {
        chars[0] = chars[length - 1];
      }
    }
    return true;
  }

  @Override
  public int read() throws IOException {
    return fill() ? bytes[at++] & 0xFF : -1;
  }

  @Override
  public int read(byte[] to, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (!fill()) {
      return -1;
    }
    int count = Math.min(length, bytes.length - at);
    System.arraycopy(bytes, at, to, offset, count);
    at += count;
    return count;
  }
}
