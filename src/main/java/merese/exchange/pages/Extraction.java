package merese.exchange.pages;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The process that reads a PDF or hOCR. It is told what to read on its standard input and hands the
 * pages on, one after the other, on its standard output; it writes no file. It ends with the
 * process that started it.
 *
 * <p>Input: the sort of the file, three limits (pages, characters a page, all characters), how many
 * files, and their paths. Output: for each page {@link #PAGE}, for each file {@link #FILE}, at the
 * end {@link #END}; or {@link #REFUSED} with what is wrong and what to do. A text is the number of
 * its bytes and UTF-8.
 */
public final class Extraction {
  static final int PAGE = 'P';
  static final int FILE = 'F';
  static final int END = 'E';
  static final int REFUSED = 'R';

  private Extraction() {}

  public static void main(String[] args) throws IOException {
    DataInputStream in =
        new DataInputStream(new BufferedInputStream(new FileInputStream(FileDescriptor.in)));
    FileSort sort = FileSort.valueOf(in.readUTF());
    Limits limits =
        new Limits(in.readInt(), in.readLong(), in.readInt(), 0, 0, Duration.ZERO, Duration.ZERO);
    List<Path> files = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      files.add(Path.of(readText(in)));
    }
    Thread watch = new Thread(() -> endWith(in), "watch");
    watch.setDaemon(true);
    watch.start();
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)))) {
      try {
        for (Path file : files) {
          read(sort, file, limits, out);
          out.write(FILE);
        }
        out.write(END);
      } catch (RefusedException e) {
        out.write(REFUSED);
        writeText(out, e.what());
        writeText(out, e.remedy());
      }
    }
  }

  private static void read(FileSort sort, Path file, Limits limits, DataOutputStream out)
      throws IOException {
    PageSink sink =
        text -> {
          out.write(PAGE);
          writeText(out, text);
          out.flush();
        };
    if (sort == FileSort.PDF) {
      PdfPages.read(file, limits, sink);
    } else {
      try (InputStream bytes = Files.newInputStream(file)) {
        HocrPages.read(bytes, sink);
      }
    }
  }

  /** Nothing more comes; when that is certain, nobody waits any longer. */
  private static void endWith(DataInputStream in) {
    try {
      int more = 0;
      while (more >= 0) {
        more = in.read();
      }
    } catch (IOException e) {
      // the same
    }
    Runtime.getRuntime().halt(1);
  }

  static void writeText(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static String readText(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
  }
}
