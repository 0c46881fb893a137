package merese.exchange.pages;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.UnreadableException;
import merese.model.PageLines;
import merese.model.PageText.Origin;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PageReaderTest {
  @TempDir private Path dir;

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(dir.resolve(name), bytes);
  }

  private PagesRead read(byte[] bytes) throws IOException {
    return new PageReader(Limits.USUAL).read(file("a file", bytes));
  }

  private static List<List<String>> lines(PagesRead read) {
    return read.pages().stream().map(PageLines::lines).toList();
  }

  private String refusal(byte[] bytes) throws IOException {
    return refusal(file("bad", bytes), Limits.USUAL);
  }

  private static String refusal(Path file, Limits limits) {
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> new PageReader(limits).read(file));
    assertTrue(refused.getMessage().startsWith(file.toString() + ": "), refused.getMessage());
    assertFalse(refused.remedy().isBlank());
    return refused.what() + "; " + refused.remedy();
  }

  private static Limits few(int pages, int pageCharacters, long characters) {
    Limits usual = Limits.USUAL;
    return new Limits(
        pages,
        characters,
        pageCharacters,
        usual.fileMegabytes(),
        usual.heapMegabytes(),
        usual.forPage(),
        usual.forFile());
  }

  private static Limits heap(int megabytes) {
    Limits usual = Limits.USUAL;
    return new Limits(
        usual.pages(),
        usual.characters(),
        usual.pageCharacters(),
        usual.fileMegabytes(),
        megabytes,
        usual.forPage(),
        usual.forFile());
  }

  @Nested
  class PlainText {
    @Test
    void aFormFeedEndsAPageAndTheLastBeginsNone() throws IOException {
      PagesRead read = read("one\r\ntwo\f\n\fthe ſtem\n\n  of a wine-\rglaſs\n\f".getBytes(UTF_8));
      assertEquals(Origin.PLAIN_TEXT, read.from());
      assertEquals(
          List.of(List.of("one", "two"), List.of(), List.of("the ſtem", "of a wine-", "glaſs")),
          lines(read));
      assertEquals(List.of(), read.remarks());
    }

    /** Unicode 15, 5.8, names the line and the paragraph separator; a page prints no tabulator. */
    @Test
    void everyEndOfALineIsOneAndNoControlCharacterStays() throws IOException {
      assertEquals(
          List.of(List.of("one", "two", "three", "four", "fi ve")),
          lines(read("one\u2028two\u2029three\u0085four\nfi\tve".getBytes(UTF_8))));
    }

    @Test
    void withoutAFormFeedItIsOnePageAndIsSaidToBe() throws IOException {
      PagesRead read = read("one\ntwo\n".getBytes(UTF_8));
      assertEquals(List.of(List.of("one", "two")), lines(read));
      assertTrue(read.remarks().get(0).contains("one page"), read.remarks().toString());
    }

    /** The hash of "abc" is that of FIPS 180-4, example SHA-256 one-block message. */
    @Test
    void itsHashIsThatOfTheFile() throws IOException {
      assertEquals(
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
          read("abc".getBytes(UTF_8)).sha256());
    }

    @Test
    void aMarkSaysWhichUnicodeItIs() throws IOException {
      String text = "\ufeffcruet ﬂaſk\fring";
      List<List<String>> pages = List.of(List.of("cruet ﬂaſk"), List.of("ring"));
      assertEquals(pages, lines(read(text.getBytes(UTF_8))));
      assertEquals(pages, lines(read(text.getBytes(UTF_16LE))));
      assertEquals(pages, lines(read(text.getBytes(UTF_16BE))));
    }

    @Test
    void whatIsNotUtf8IsSaidWithItsPlace() throws IOException {
      byte[] bytes = "one\r\ntwo\rA caf?\n".getBytes(UTF_8);
      bytes[14] = (byte) 0xE9;
      assertEquals(
          "line 3 is not UTF-8: byte 15 of the file is e9; save the text as UTF-8, and attach that",
          refusal(bytes));
    }

    @Test
    void aZeroByteIsNoText() throws IOException {
      assertTrue(refusal("one\ntw\0o".getBytes(UTF_8)).contains("a zero byte in line 2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\f  \f\n"})
    void aFileOfNothingIsRefused(String text) throws IOException {
      assertTrue(refusal(text.getBytes(UTF_8)).contains("text"), refusal(text.getBytes(UTF_8)));
    }

    @Test
    void limitsHaveEachTheirMessage() throws IOException {
      Path three = file("three", "one\ftwo\fthree".getBytes(UTF_8));
      assertTrue(refusal(three, few(2, 100, 100)).startsWith("it has more than 2 pages"));
      assertTrue(refusal(three, few(9, 4, 100)).startsWith("page 3 has more than 4 characters"));
      assertTrue(refusal(three, few(9, 9, 8)).startsWith("its pages have more than 8 characters"));
      assertEquals(3, new PageReader(few(3, 5, 11)).read(three).pages().size());
    }

    @Test
    void aFileThatIsMuchTooLargeIsNotReadIntoMemory() throws IOException {
      Path large = file("large", "x\n\f".repeat(1_000).getBytes(UTF_8));
      String refusal = refusal(large, few(9, 8, 8));
      assertTrue(refusal.startsWith("it has more than 8 characters of text"), refusal);
      Limits none = new Limits(9, 99, 99, 0, 99, Duration.ofMinutes(1), Duration.ofMinutes(1));
      assertTrue(refusal(large, none).startsWith("it is larger than 0 MB"));
    }

    /** Linux makes this file anew for each who reads it; elsewhere there is none. */
    @Test
    void aFileThatChangesWhileItIsReadIsRefused() {
      Path changing = Path.of("/proc/sys/kernel/random/uuid");
      assumeTrue(Files.isReadable(changing));
      String refusal = refusal(changing, Limits.USUAL);
      assertTrue(refusal.startsWith("it was changed while it was read"), refusal);
    }

    @Test
    void aMillionPagesAreTooMany() throws IOException {
      assertTrue(
          refusal("x\f".repeat(1_000_000).getBytes(UTF_8))
              .startsWith("it has more than 20,000 pages"));
    }
  }

  @Nested
  class OtherFiles {
    @ParameterizedTest
    @CsvSource({
      "89504e470d0a1a0a, a picture (PNG)",
      "ffd8ffe000104a46, a picture (JPEG)",
      "49492a0008000000, a picture (TIFF)",
      "504b0304140000, a packed folder",
      "41542654464f524d, a DjVu file",
      "1f8b0800, a packed file"
    })
    void areCalledWhatTheyAre(String hex, String what) throws IOException {
      String refusal = refusal(java.util.HexFormat.of().parseHex(hex));
      assertTrue(refusal.startsWith("it is " + what), refusal);
    }

    @Test
    void aPageOfTheWebIsNotHocr() throws IOException {
      String refusal = refusal("<!DOCTYPE html><html><p>rings</p></html>".getBytes(UTF_8));
      assertTrue(refusal.contains("nothing in it has the class ocr_page"), refusal);
    }

    @Test
    void aFileThatIsNotThere() {
      assertTrue(refusal(dir.resolve("none"), Limits.USUAL).startsWith("there is no such file"));
    }
  }

  @Nested
  class Hocr {
    private byte[] of(String body) {
      return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
              + "<!DOCTYPE html [<!ENTITY a \"aaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>\n"
              + "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta"
              + " name=\"ocr-capabilities\" content=\"ocr_page ocr_line"
              + " ocrx_word\"/></head><body>"
              + body
              + "</body></html>")
          .getBytes(UTF_8);
    }

    /**
     * The example of a logical line over two physical ones in the hOCR specification 1.2, under
     * ocrx_line.
     */
    @Test
    void theSpecificationsLineOfTwoLinesIsTwo() throws IOException {
      PagesRead read =
          read(
              of(
                  """
                  <div class="ocr_page" title="ppageno 0">
                  <span class="ocrx_line">
                  <span class='ocr_line' title="bbox 16 16 860 47">Aus den Gewinn- und Verlust-</span>
                  <span class='ocr_line' title="bbox 302 62 603 98">rechnungen</span>
                  </span>
                  </div>\
                  """));
      assertEquals(Origin.HOCR, read.from());
      assertEquals(List.of(List.of("Aus den Gewinn- und Verlust-", "rechnungen")), lines(read));
    }

    @Test
    void wordsThatTouchStandApartAndPagesWithoutTextCount() throws IOException {
      PagesRead read =
          read(
              of(
                  """
                  <div class="ocr_page"><div class="ocr_carea"><p class="ocr_par">
                  <span class="ocr_header"><span class="ocrx_word">OF</span><span class="ocrx_word">RINGS</span></span>
                  <span class="ocr_line"><span class="ocrx_word">the <b>blade</b></span>
                    <span class="ocrx_word">&amp;c.</span></span></p></div></div>
                  <div class="ocr_page"></div>
                  <div class="ocr_page"><p class="ocr_par">no lines here</p></div>\
                  """));
      assertEquals(
          List.of(List.of("OF RINGS", "the blade &c."), List.of(), List.of("no lines here")),
          lines(read));
    }

    @Test
    void plainHtmlWithAnOldCharacterSetIsReadByIt() throws IOException {
      byte[] bytes =
          "<html><head><meta charset=iso-8859-1></head><body><div class='ocr_page extra'>"
              .concat("<span class=ocr_line>Caf\u00e9</span></div></body></html>")
              .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
      assertEquals(List.of(List.of("Caf\u00e9")), lines(read(bytes)));
      String refusal =
          refusal(
              new String(bytes, UTF_8)
                  .replace("iso-8859-1", "utf-8")
                  .getBytes(java.nio.charset.StandardCharsets.UTF_16BE));
      assertFalse(refusal.isBlank());
    }

    @Test
    void whateverIsMarkedAsALineIsOne() throws IOException {
      StringBuilder page = new StringBuilder("<div class='ocr_page'>");
      List<String> wanted = new ArrayList<>();
      for (String line : List.of("line", "header", "caption", "textfloat", "footer", "pageno")) {
        page.append("<span class='ocr_" + line + "'>a " + line + "</span>");
        wanted.add("a " + line);
      }
      page.append("<span class='ocrx_line'>a physical line</span></div>");
      wanted.add("a physical line");
      assertEquals(List.of(wanted), lines(read(of(page.toString()))));
    }

    @Test
    void paragraphsWithoutLinesAreALineEach() throws IOException {
      assertEquals(
          List.of(List.of("one", "two")),
          lines(
              read(
                  of(
                      "<div class='ocr_page'><div class='ocr_par'>one</div>"
                          + "<div class='ocr_par'>two</div></div>"))));
    }

    @Test
    void anEmptyElementOfXmlHoldsNothingOfWhatFollows() throws IOException {
      assertEquals(
          List.of(List.of(), List.of("two")),
          lines(
              read(
                  of(
                      "<div class='ocr_page'/><div class='ocr_page'>"
                          + "<span class='ocr_line'>two</span></div>"))));
    }

    @Test
    void htmlIsReadAsHtml() throws IOException {
      String html = "<HTML><BODY><DIV CLASS=ocr_page><SPAN CLASS=ocr_line>a<BR>b</SPAN></DIV>";
      assertEquals(List.of(List.of("a b")), lines(read(html.getBytes(UTF_8))));
    }

    @Test
    void whatHasNoPageIsSaidToHaveNone() throws IOException {
      String refusal = refusal(of("<p>rings</p>"));
      assertTrue(refusal.startsWith("it is HTML without a page"), refusal);
    }

    @Test
    void itsCharacterSetIsThatOfItsMarkElseTheOneThatItNames() throws IOException {
      String page =
          "<?xml version='1.0' encoding=\"iso-8859-1\"?><html><div class='ocr_page'>"
              + "<span class='ocr_line'>Caf\u00e9</span></div></html>";
      List<List<String>> wanted = List.of(List.of("Caf\u00e9"));
      assertEquals(wanted, lines(read(page.getBytes(ISO_8859_1))));
      assertEquals(wanted, lines(read(("\ufeff" + page).getBytes(UTF_8))));
      assertEquals(wanted, lines(read(("\ufeff" + page).getBytes(UTF_16BE))));
      assertEquals(wanted, lines(read(("\ufeff" + page).getBytes(UTF_16LE))));
    }

    @Test
    void whatIsNotInItsCharacterSetIsRefusedHoweverLate() throws IOException {
      for (int before : new int[] {1, 200_000}) {
        byte[] bytes = of("<div class='ocr_page'><p>" + "x ".repeat(before) + "?</p></div>");
        bytes[new String(bytes, UTF_8).lastIndexOf("?</p>")] = (byte) 0xE9;
        String refusal = refusal(bytes);
        assertTrue(refusal.startsWith("it is not UTF-8, as it should be"), refusal);
      }
    }

    @Test
    void aLongOneTakesTheMemoryOfAPage() throws IOException {
      String page =
          "<div class='ocr_page'><span class='ocr_line'>" + "ring ".repeat(4_000) + "</span></div>";
      Limits usual = heap(24);
      Limits long60 =
          new Limits(9_999, 60_000_000, 99_999, 99, 24, usual.forPage(), usual.forFile());
      Path file = file("long", of(page.repeat(2_000)));
      assertEquals(2_000, new PageReader(long60).read(file).pages().size());
    }

    @Test
    void entitiesThatMultiplyAreNotExpanded() throws IOException {
      PagesRead read =
          read(of("<div class=\"ocr_page\"><span class=\"ocr_line\">x &b;</span></div>"));
      assertTrue(lines(read).get(0).get(0).length() < 20, lines(read).toString());
    }

    @Test
    void aFileThatFillsMemoryIsEnded() throws IOException {
      StringBuilder deep = new StringBuilder("<div class=\"ocr_page\">");
      deep.append("<p>x".repeat(1_000_000));
      String refusal = refusal(file("deep", of(deep.toString())), heap(24));
      assertTrue(refusal.startsWith("reading it takes more than 24 MB of memory"), refusal);
    }
  }

  @Nested
  class Pdf {
    @Test
    void isReadPageByPage() throws IOException {
      PagesRead read =
          read(
              new MadePdf()
                  .page("The ſtem of a wine-", "glaſs with a collar")
                  .picture()
                  .page()
                  .page("PLATE I.")
                  .bytes());
      assertEquals(Origin.PDF, read.from());
      assertEquals(
          List.of(
              List.of("The ſtem of a wine-", "glaſs with a collar"),
              List.of(),
              List.of(),
              List.of("PLATE I.")),
          lines(read));
    }

    @Test
    void columnsAreReadOneAfterTheOther() throws IOException {
      List<String> left = List.of("left one", "left two", "left three", "left four");
      List<String> right = List.of("right one", "right two", "right three", "right four");
      List<String> both = new ArrayList<>(left);
      both.addAll(right);
      assertEquals(List.of(both), lines(read(new MadePdf().columns(left, right).bytes())));
    }

    @Test
    void linesPutDownInDisorderAreReadByTheirPlaces() throws IOException {
      String[] lines = {"one", "two", "three", "four", "five"};
      assertEquals(List.of(List.of(lines)), lines(read(new MadePdf().pageUpwards(lines).bytes())));
    }

    /** ISO 32000-1, 7.6.3: the standard security handler, with its owner and user passwords. */
    @Test
    void oneThatNeedsAPasswordIsRefused() throws IOException {
      String refusal = refusal(new MadePdf().page("rings").encrypted("o", "u", true).bytes());
      assertTrue(refusal.startsWith("it is encrypted"), refusal);
    }

    @Test
    void oneThatAnybodyMayOpenAndCopyIsRead() throws IOException {
      byte[] bytes = new MadePdf().page("rings").encrypted("o", "", true).bytes();
      assertEquals(List.of(List.of("rings")), lines(read(bytes)));
    }

    @Test
    void oneWhoseTextMayNotBeTakenOutIsLeftAlone() throws IOException {
      String refusal = refusal(new MadePdf().page("rings").encrypted("o", "", false).bytes());
      assertTrue(refusal.startsWith("who made it does not permit"), refusal);
    }

    @Test
    void oneThatBreaksOffIsRefused() throws IOException {
      byte[] whole = new MadePdf().page("rings").page("collars").bytes();
      String refusal = refusal(Arrays.copyOf(whole, whole.length / 2));
      assertTrue(refusal.startsWith("it breaks off"), refusal);
    }

    @Test
    void oneOfPicturesAloneSaysWhatToDo() throws IOException {
      String refusal = refusal(new MadePdf().picture().picture().bytes());
      assertTrue(refusal.startsWith("none of its 2 pages has text"), refusal);
      assertTrue(refusal.contains("run character recognition over the pages first"), refusal);
    }

    @Test
    void oneThatSwellsIsEndedAndLeavesNothingBehind() throws IOException {
      Path swelling = file("bad", new MadePdf().page("rings").bomb(100).bytes());
      assertTrue(Files.size(swelling) < 1 << 20);
      String refusal = refusal(swelling, heap(48));
      assertTrue(refusal.startsWith("reading it takes more than 48 MB of memory"), refusal);
      try (Stream<Path> left = Files.list(dir)) {
        assertEquals(List.of("bad"), left.map(p -> p.getFileName().toString()).toList());
      }
    }

    @Test
    void aTreeOfPagesThatLeadsIntoItselfIsDamaged() throws IOException {
      String refusal =
          refusal(
              MadePdf.of(
                  "<< /Type /Catalog /Pages 2 0 R >>",
                  "<< /Type /Pages /Kids [3 0 R 2 0 R] /Count 2 >>",
                  "<< /Type /Pages /Parent 2 0 R /Kids [2 0 R] /Count 1 >>"));
      assertTrue(refusal.contains("damaged") || refusal.contains("nested"), refusal);
    }

    @Test
    void aTreeOfAMillionPagesIsTooLarge() throws IOException {
      String refusal =
          refusal(
              MadePdf.of(
                  "<< /Type /Catalog /Pages 2 0 R >>",
                  "<< /Type /Pages /Kids [" + "3 0 R ".repeat(1_000_000) + "] /Count 1000000 >>",
                  "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] >>"));
      assertTrue(refusal.startsWith("it has more than 20,000 pages"), refusal);
    }

    @Test
    void fewerPagesThanItSaysMeansThatSomeAreLost() throws IOException {
      String refusal =
          refusal(
              MadePdf.of(
                  "<< /Type /Catalog /Pages 2 0 R >>",
                  "<< /Type /Pages /Kids [3 0 R 4 0 R] /Count 2 >>",
                  "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] >>"));
      assertTrue(refusal.startsWith("it is damaged"), refusal);
    }

    @Test
    void aNestOfPagesWithoutEndIsRefused() throws IOException {
      int deep = 60_000;
      String[] objects = new String[deep];
      objects[0] = "<< /Type /Catalog /Pages 2 0 R >>";
      for (int i = 1; i < deep - 1; i++) {
        objects[i] = "<< /Type /Pages /Kids [" + (i + 2) + " 0 R] /Count 1 >>";
      }
      objects[deep - 1] = "<< /Type /Page /MediaBox [0 0 9 9] >>";
      String refusal = refusal(MadePdf.of(objects));
      assertFalse(refusal.isBlank());
    }

    @Test
    void onlyTheHeadOfOneIsDamaged() throws IOException {
      String refusal = refusal("%PDF-1.7\nnothing more\n%%EOF\n".getBytes(UTF_8));
      assertTrue(refusal.contains("PDF"), refusal);
    }

    @Test
    void aPageWithTooMuchTextIsNamed() throws IOException {
      Path file = file("full", new MadePdf().page("one").page("three hundred").bytes());
      String refusal = refusal(file, few(9, 8, 1000));
      assertTrue(refusal.startsWith("page 2 has more than 8 characters"), refusal);
    }

    @Test
    void whatTakesTooLongIsEnded() throws IOException {
      Path file = file("slow", new MadePdf().page("one").bytes());
      Limits usual = Limits.USUAL;
      Limits none =
          new Limits(9, 999, 99, 9, usual.heapMegabytes(), Duration.ZERO, usual.forFile());
      String refusal = refusal(file, none);
      assertTrue(refusal.startsWith("no page of it came within 0 seconds"), refusal);
    }
  }

  @Nested
  class Folder {
    private Path folder(String... files) throws IOException {
      Path folder = Files.createDirectory(dir.resolve("scans"));
      for (String each : files) {
        int split = each.indexOf('=');
        Files.writeString(folder.resolve(each.substring(0, split)), each.substring(split + 1));
      }
      return folder;
    }

    @Test
    void isInTheOrderInWhichPeopleCount() throws IOException {
      Path folder = folder("p10.txt=ten", "p02.txt=two\n", "p1.txt=one\f", "P3.txt=");
      PagesRead read = new PageReader(Limits.USUAL).read(folder);
      assertEquals(Origin.FOLDER, read.from());
      assertEquals("scans", read.file());
      assertEquals(List.of(List.of("one"), List.of("two"), List.of(), List.of("ten")), lines(read));
      assertTrue(read.remarks().get(0).contains("p1.txt, the last p10.txt"));
    }

    @Test
    void straysAreNamedAndLeftOut() throws IOException {
      Path folder = folder("1.txt=one", "2.txt=two", ".hidden=x", "b.png=\u0089PNG");
      Files.write(folder.resolve("a.tif"), new byte[] {'I', 'I', '*', 0, 1});
      Files.createDirectory(folder.resolve("more"));
      PagesRead read = new PageReader(Limits.USUAL).read(folder);
      assertEquals(2 + 1, read.pages().size()); // b.png is a text, whatever it is called
      assertEquals("Not page texts, and left out: a.tif, more.", read.remarks().get(0));
    }

    @Test
    void ofManyStraysFiveAreNamed() throws IOException {
      Path folder = folder("1.txt=one", "p1.pdf=%PDF-1.7", "p2.pdf=%PDF-1.7");
      for (String name : List.of("a", "b", "c", "d", "e")) {
        Files.createDirectory(folder.resolve(name));
      }
      assertEquals(
          "Not page texts, and left out: a, b, c, d, e and 2 more.",
          new PageReader(Limits.USUAL).read(folder).remarks().get(0));
    }

    @Test
    void aPageMayBeInUtf16() throws IOException {
      Path folder = folder("1.txt=one");
      Files.write(folder.resolve("2.txt"), "\ufefftwo".getBytes(UTF_16LE));
      assertEquals(
          List.of(List.of("one"), List.of("two")),
          lines(new PageReader(Limits.USUAL).read(folder)));
    }

    /** The hash of "abc" as above. */
    @Test
    void itsHashIsThatOfItsFilesOneAfterTheOther() throws IOException {
      assertEquals(
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
          new PageReader(Limits.USUAL).read(folder("1.txt=a", "2.txt=bc")).sha256());
    }

    @Test
    void aPageThatCannotBeReadIsNamed() throws IOException {
      Path folder = folder("1.txt=one");
      Files.write(folder.resolve("2.txt"), new byte[] {'a', (byte) 0xE9});
      assertTrue(
          refusal(folder, Limits.USUAL).startsWith("2.txt: line 1 is not UTF-8"),
          refusal(folder, Limits.USUAL));
    }

    @Test
    void aFileOfHocrWithTwoPagesIsRefusedAndNamed() throws IOException {
      String page = "<div class='ocr_page'><p>one</p></div>";
      Path folder = folder("1.hocr=<html>" + page + "</html>", "2.hocr=<html>" + page + page);
      String refusal = refusal(folder, Limits.USUAL);
      assertTrue(refusal.startsWith("2.hocr has more than one page in it"), refusal);
    }

    @Test
    void aFileForEachPageMayBeHocr() throws IOException {
      String page =
          "<html><head><meta charset='utf-8'></head><div class='ocr_page'>"
              + "<span class='ocr_line'>%</span></div></html>";
      Path folder =
          folder(
              "p2.hocr=" + page.replace("%", "two"),
              "p1.txt=one",
              "p3.hocr=" + page.replace("%", "three"));
      assertEquals(
          List.of(List.of("one"), List.of("two"), List.of("three")),
          lines(new PageReader(Limits.USUAL).read(folder)));
    }

    @Test
    void anEmptyOneAndOneWithSeveralPagesInAFileAreRefused() throws IOException {
      Path folder = folder();
      assertTrue(refusal(folder, Limits.USUAL).startsWith("the folder is empty"));
      Files.writeString(folder.resolve("a.txt"), "one\ftwo");
      assertTrue(refusal(folder, Limits.USUAL).startsWith("a.txt has more than one page in it"));
      Files.delete(folder.resolve("a.txt"));
      Files.write(folder.resolve("a.bin"), new byte[] {0, 1, 2});
      assertTrue(
          refusal(folder, Limits.USUAL).startsWith("no file in the folder is the text of a page"));
      Files.writeString(folder.resolve("b.txt"), " \n");
      assertTrue(refusal(folder, Limits.USUAL).startsWith("its page has no text"));
    }
  }
}
