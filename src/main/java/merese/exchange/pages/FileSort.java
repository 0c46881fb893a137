package merese.exchange.pages;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** What a file is by what stands at its beginning, whatever it is called. */
enum FileSort {
  PDF,
  HOCR,
  TEXT;

  /** So many bytes tell. */
  static final int ENOUGH = 1 << 16;

  private static final int HEADER_WITHIN = 1024;

  private record Mark(String begins, String whatItIs, String remedy) {}

  private static final String RECOGNISE =
      "run character recognition over it, and attach the hOCR or text that comes of it";
  private static final String CONVERT = "save it as PDF or plain text, and attach that";

  /** The marks of UTF-8 and UTF-16, read as if each byte were a letter. */
  private static final List<String> UNICODE =
      List.of("\u00ef\u00bb\u00bf", "\u00fe\u00ff", "\u00ff\u00fe");

  /** File signatures; from memory. */
  private static final List<Mark> OTHERS =
      List.of(
          new Mark("\u00ff\u00d8\u00ff", "a picture (JPEG)", RECOGNISE),
          new Mark("\u0089PNG", "a picture (PNG)", RECOGNISE),
          new Mark("II*\0", "a picture (TIFF)", RECOGNISE),
          new Mark("MM\0*", "a picture (TIFF)", RECOGNISE),
          new Mark("GIF8", "a picture (GIF)", RECOGNISE),
          new Mark("\0\0\0\fjP", "a picture (JPEG 2000)", RECOGNISE),
          new Mark("AT&TFORM", "a DjVu file", CONVERT),
          new Mark("PK\u0003\u0004", "a packed folder, or a file of an office program", CONVERT),
          new Mark("\u00d0\u00cf\u0011\u00e0", "a file of an office program", CONVERT),
          new Mark("{\\rtf", "a file in Rich Text Format", CONVERT),
          new Mark("%!PS", "a PostScript file", CONVERT),
          new Mark("\u001f\u008b", "a packed file", "unpack it, and attach what is in it"));

  static FileSort of(byte[] head) {
    String latin = new String(head, StandardCharsets.ISO_8859_1);
    int header = latin.indexOf("%PDF-");
    if (header >= 0 && header < HEADER_WITHIN) {
      return PDF;
    }
    for (Mark mark : OTHERS) {
      if (latin.startsWith(mark.begins())) {
        throw new RefusedException("it is " + mark.whatItIs(), mark.remedy());
      }
    }
    String start = latin.replace("\0", "");
    for (String mark : UNICODE) {
      start = start.startsWith(mark) ? start.substring(mark.length()) : start;
    }
    start = start.substring(0, Math.min(start.length(), HEADER_WITHIN)).strip();
    start = start.toLowerCase(Locale.ROOT);
    boolean html =
        start.startsWith("<!doctype html")
            || start.startsWith("<html")
            || start.startsWith("<?xml");
    if (!html) {
      return TEXT;
    }
    if (latin.replace("\0", "").contains("ocr")) {
      return HOCR;
    }
    throw new RefusedException(
        "it is a page of the web or another kind of XML, and not hOCR: nothing in it has the class"
            + " ocr_page",
        "attach hOCR, PDF or plain text");
  }
}
