package merese.exchange.pages;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.UnreadableException;
import merese.model.PageText.Origin;

/** Reads the text of a file or folder, page by page; what it is, it sees by what is in it. */
public final class PageReader {
  private static final int TAIL = 2048;
  private static final int NAMED = 5;
  private static final String NO_TEXT =
      "run character recognition over the pages first, and attach the hOCR or the text that comes"
          + " of it";

  private final Limits limits;

  public PageReader(Limits limits) {
    this.limits = limits;
  }

  /**
   * @throws UnreadableException for a file that is of no such kind, is damaged or encrypted, has no
   *     text, or goes beyond the limits
   */
  public PagesRead read(Path file) {
    String shown = file.toString();
    try {
      return Files.isDirectory(file) ? folder(file) : single(file);
    } catch (RefusedException e) {
      throw new UnreadableException(shown, e.what(), e.remedy());
    } catch (NoSuchFileException | FileNotFoundException e) {
      throw new UnreadableException(shown, "there is no such file", "look at its name and folder");
    } catch (AccessDeniedException e) {
      throw new UnreadableException(shown, "it cannot be read", "look at its permissions");
    } catch (IOException e) {
      String why = e.getMessage() == null ? "" : ": " + e.getMessage();
      throw new UnreadableException(shown, "it cannot be read" + why, "look at the disk");
    }
  }

  private PagesRead single(Path file) throws IOException {
    if (!Files.exists(file)) {
      throw new NoSuchFileException(file.toString());
    }
    if (!Files.isRegularFile(file)) {
      throw new RefusedException("it is neither a file nor a folder", "attach a file");
    }
    byte[] head = head(file);
    FileSort sort = FileSort.of(head);
    Collected pages = new Collected(limits);
    MessageDigest digest = digest();
    String hash = HexFormat.of().formatHex(hash(file, digest).digest());
    if (sort == FileSort.TEXT) {
      PlainPages.read(whole(file), pages);
    } else {
      if (sort == FileSort.PDF) {
        requireEnd(file);
      }
      new ReadingProcess(limits).read(sort, List.of(file), pages::page);
    }
    requireText(pages);
    if (!HexFormat.of().formatHex(hash(file, digest()).digest()).equals(hash)) {
      throw new RefusedException("it was changed while it was read", "attach it again");
    }
    List<String> remarks = new ArrayList<>();
    if (sort == FileSort.TEXT && pages.pages().size() == 1) {
      remarks.add("There is no form feed in the text, so that all of it is one page.");
    }
    Origin from =
        switch (sort) {
          case PDF -> Origin.PDF;
          case HOCR -> Origin.HOCR;
          case TEXT -> Origin.PLAIN_TEXT;
        };
    return new PagesRead(from, nameOf(file), hash, pages.pages(), remarks);
  }

  private PagesRead folder(Path folder) throws IOException {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> listed = Files.list(folder)) {
      listed.filter(each -> !nameOf(each).startsWith(".")).forEach(all::add);
    }
    NameOrder order = new NameOrder();
    all.sort((one, other) -> order.compare(nameOf(one), nameOf(other)));
    List<Path> files = new ArrayList<>();
    List<String> strays = new ArrayList<>();
    List<Path> hocr = new ArrayList<>();
    for (Path each : all) {
      FileSort sort = sortInFolder(each);
      if (sort == null) {
        strays.add(nameOf(each));
      } else {
        files.add(each);
        if (sort == FileSort.HOCR) {
          hocr.add(each);
        }
      }
    }
    if (files.isEmpty()) {
      throw new RefusedException(
          all.isEmpty() ? "the folder is empty" : "no file in the folder is the text of a page",
          "put one file for each page into it, as plain text or hOCR");
    }
    List<String> recognised = recognised(hocr);
    Collected pages = new Collected(limits);
    MessageDigest digest = digest();
    int next = 0;
    for (Path each : files) {
      hash(each, digest);
      if (hocr.contains(each)) {
        pages.page(recognised.get(next++));
      } else {
        pages.page(onePage(each));
      }
    }
    requireText(pages);
    List<String> remarks = new ArrayList<>();
    if (!strays.isEmpty()) {
      int more = strays.size() - NAMED;
      remarks.add(
          "Not page texts, and left out: "
              + String.join(", ", strays.subList(0, Math.min(NAMED, strays.size())))
              + (more > 0 ? " and " + Counted.of(more) + " more" : "")
              + ".");
    }
    remarks.add(
        "The first page is "
            + nameOf(files.get(0))
            + ", the last "
            + nameOf(files.get(files.size() - 1))
            + ".");
    String hash = HexFormat.of().formatHex(digest.digest());
    return new PagesRead(Origin.FOLDER, nameOf(folder), hash, pages.pages(), remarks);
  }

  /** The text of each file, which is one page. */
  private List<String> recognised(List<Path> files) throws IOException {
    List<String> texts = new ArrayList<>();
    if (files.isEmpty()) {
      return texts;
    }
    new ReadingProcess(limits)
        .read(
            FileSort.HOCR,
            files,
            new ReadingProcess.Receiver() {
              private int pages;

              @Override
              public void page(String text) {
                if (++pages > 1) {
                  throw morePages(files.get(texts.size() - 1));
                }
                texts.add(text);
              }

              @Override
              public void endOfFile() {
                pages = 0;
              }
            });
    return texts;
  }

  private String onePage(Path file) throws IOException {
    Collected pages = new Collected(limits);
    try {
      PlainPages.read(whole(file), pages);
    } catch (RefusedException e) {
      throw new RefusedException(nameOf(file) + ": " + e.what(), e.remedy());
    }
    if (pages.pages().size() > 1) {
      throw morePages(file);
    }
    return String.join("\n", pages.pages().get(0).lines());
  }

  private static RefusedException morePages(Path file) {
    return new RefusedException(
        nameOf(file) + " has more than one page in it",
        "put one file for each page into the folder, or attach that file by itself");
  }

  /** Null for what is no text of a page. */
  private static FileSort sortInFolder(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return null;
    }
    try {
      byte[] head = head(file);
      FileSort sort = FileSort.of(head);
      boolean binary = sort == FileSort.TEXT && isBinary(head);
      return sort == FileSort.PDF || binary ? null : sort;
    } catch (RefusedException e) {
      return null;
    }
  }

  private static boolean isBinary(byte[] head) {
    boolean wide = TextBytes.startsWith(head, 0xFE, 0xFF) || TextBytes.startsWith(head, 0xFF, 0xFE);
    return !wide && new String(head, StandardCharsets.ISO_8859_1).indexOf('\0') >= 0;
  }

  private static void requireText(Collected pages) {
    int without = pages.withoutText();
    if (without == pages.pages().size()) {
      throw new RefusedException(
          without == 1
              ? "its page has no text"
              : without == 0
                  ? "it has no page"
                  : "none of its "
                      + Counted.pages(without)
                      + " has text: they are pictures of pages",
          NO_TEXT);
    }
  }

  /** A PDF ends with a mark (ISO 32000-1, 7.5.5), within its last kilobyte or two. */
  private static void requireEnd(Path file) throws IOException {
    long size = Files.size(file);
    try (InputStream in = Files.newInputStream(file)) {
      in.skipNBytes(Math.max(0, size - TAIL));
      String tail = new String(in.readNBytes(TAIL), StandardCharsets.ISO_8859_1);
      if (!tail.contains("%%EOF")) {
        throw new RefusedException(
            "it breaks off: the end of the PDF is missing",
            "copy or download it again, and attach the whole file");
      }
    }
  }

  private static byte[] head(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(FileSort.ENOUGH);
    }
  }

  /** A text, of which most of the bytes are characters. */
  private byte[] whole(Path file) throws IOException {
    long most = 4 * limits.characters() + TAIL;
    if (Files.size(file) > most) {
      throw new RefusedException(
          "it has more than " + Counted.of(limits.characters()) + " characters of text",
          "attach it in parts, each under a --name of its own");
    }
    return Files.readAllBytes(file);
  }

  private MessageDigest hash(Path file, MessageDigest digest) throws IOException {
    if (Files.size(file) > (long) limits.fileMegabytes() << 20) {
      throw new RefusedException(
          "it is larger than " + Counted.of(limits.fileMegabytes()) + " MB",
          "attach it in parts, or attach its text alone");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] block = new byte[1 << 16];
      for (int read = in.read(block); read >= 0; read = in.read(block)) {
        digest.update(block, 0, read);
      }
    }
    return digest;
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String nameOf(Path file) {
    Path name = file.toAbsolutePath().normalize().getFileName();
    return name == null ? file.toString() : name.toString();
  }
}
