package merese.exchange.skos;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import merese.exchange.UnreadableException;

/** Refuses a file that goes on after so many bytes. */
final class Limited extends FilterInputStream {
  private static final int MEGABYTE = 1 << 20;

  private final String file;
  private final String format;
  private final int megabytes;
  private long left;
  private Optional<IOException> failure = Optional.empty();

  Limited(InputStream in, String file, String format, int megabytes) {
    super(in);
    this.file = file;
    this.format = format;
    this.megabytes = megabytes;
    this.left = (long) megabytes * MEGABYTE;
  }

  @Override
  public int read() throws IOException {
    try {
      int b = in.read();
      count(b < 0 ? 0 : 1);
      return b;
    } catch (IOException e) {
      failure = Optional.of(e);
      throw e;
    }
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    try {
      int count = in.read(bytes, from, length);
      count(Math.max(0, count));
      return count;
    } catch (IOException e) {
      failure = Optional.of(e);
      throw e;
    }
  }

  /** What the stream itself failed with. */
  Optional<IOException> failure() {
    return failure;
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private void count(int read) {
    left -= read;
    if (left < 0) {
      throw new UnreadableException(
          file,
          "the file is larger than " + megabytes + " MB, the limit for " + format,
          "split it, or leave out what is not SKOS");
    }
  }
}
