package merese.exchange.bibtex;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.RandomAccessFile;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A stream's bytes, which can be read more than once: in memory where they are few, else in a
 * temporary file that goes when this is closed. UTF-16, which a file says by its first two bytes,
 * is turned into UTF-8.
 */
final class Spool implements Closeable {
  /** Where a long stream is copied to unless another folder is given. */
  static final Path USUAL_FOLDER = Path.of(System.getProperty("java.io.tmpdir"));

  private static final int IN_MEMORY = 1 << 20;
  private static final int PAGE = 1 << 16;

  private final Path path;
  private final RandomAccessFile file;
  private final long length;

  private byte[] page;
  private long pageStart;
  private int pageLength;

  private Spool(byte[] all) {
    this.path = null;
    this.file = null;
    this.length = all.length;
    this.page = all;
    this.pageLength = all.length;
  }

  private Spool(Path path) throws IOException {
    this.path = path;
    this.file = new RandomAccessFile(path.toFile(), "r");
    this.length = file.length();
    this.page = new byte[PAGE];
  }

  static Spool of(InputStream in, Path folder) throws IOException {
    byte[] head = in.readNBytes(2);
    InputStream whole = new SequenceInputStream(new ByteArrayInputStream(head), in);
    if (head.length == 2 && isUtf16(head[0] & 0xFF, head[1] & 0xFF)) {
      return inFile(whole, StandardCharsets.UTF_16, folder);
    }
    byte[] first = whole.readNBytes(IN_MEMORY);
    return first.length < IN_MEMORY
        ? new Spool(first)
        : inFile(new SequenceInputStream(new ByteArrayInputStream(first), whole), null, folder);
  }

  private static boolean isUtf16(int first, int second) {
    return first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE;
  }

  private static Spool inFile(InputStream in, Charset from, Path folder) throws IOException {
    Path path = Files.createTempFile(folder, "import", ".bib");
    path.toFile().deleteOnExit(); // should the process be stopped
    try {
      try (OutputStream out = Files.newOutputStream(path)) {
        if (from == null) {
          in.transferTo(out);
        } else {
          OutputStreamWriter writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
          new InputStreamReader(in, from).transferTo(writer);
          writer.flush();
        }
      }
      return new Spool(path);
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(path);
      throw e;
    }
  }

  long length() {
    return length;
  }

  /** The byte at a position, from 0 to 255; -1 before the start and after the end. */
  int at(long position) throws IOException {
    long inPage = position - pageStart;
    if (inPage >= 0 && inPage < pageLength) {
      return page[(int) inPage] & 0xFF;
    }
    if (position < 0 || position >= length) {
      return -1;
    }
    turnTo(position);
    return page[(int) (position - pageStart)] & 0xFF;
  }

  /**
   * How many bytes from a position on are all of a kind; fewer where a page ends.
   *
   * @param kind by the byte's value, from 0 to 127; no other byte is of it
   */
  int run(long position, boolean[] kind) throws IOException {
    if (at(position) < 0) {
      return 0;
    }
    byte[] bytes = page;
    int start = (int) (position - pageStart);
    int most = pageLength;
    int end = start;
    while (end < most && bytes[end] >= 0 && kind[bytes[end]]) {
      end++;
    }
    return end - start;
  }

  private void turnTo(long position) throws IOException {
    pageStart = position - position % PAGE;
    pageLength = (int) Math.min(PAGE, length - pageStart);
    file.seek(pageStart);
    file.readFully(page, 0, pageLength);
  }

  byte[] slice(long from, long to) throws IOException {
    if (from >= pageStart && to <= pageStart + pageLength) {
      return Arrays.copyOfRange(page, (int) (from - pageStart), (int) (to - pageStart));
    }
    byte[] slice = new byte[(int) (to - from)];
    file.seek(from);
    file.readFully(slice);
    return slice;
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
      Files.deleteIfExists(path);
    }
  }
}
