package merese.exchange.skos;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Looks at what stands before the first element of an XML file, and refuses a document type: it is
 * what entities are declared in, and with them a file can ask for other files or grow without end.
 * Java's own readers of XML are not asked, since they print some faults on standard error.
 */
final class XmlProlog {
  /** A first element must begin within so many bytes. */
  static final int LONGEST = 1 << 16;

  /** In these, what markup is made of are the bytes of ASCII, with or without zeros between. */
  private static final Set<String> ENCODINGS = Set.of("us-ascii", "utf-8", "utf-16");

  private static final String REMEDY = "is it RDF/XML? Turtle is to be named .ttl";

  private final String file;
  private final String text;
  private final boolean cut;
  private int at;

  private XmlProlog(String file, byte[] head) {
    this.file = file;
    this.cut = head.length == LONGEST;
    String bytes = new String(head, StandardCharsets.ISO_8859_1);
    this.text = afterMark(bytes.indexOf('\0') < 0 ? bytes : bytes.replace("\0", ""));
  }

  /**
   * @param head the first {@value #LONGEST} bytes, or all there are
   */
  static void check(String file, byte[] head) {
    new XmlProlog(file, head).check();
  }

  /** Without a byte order mark of UTF-8 or UTF-16. */
  private static String afterMark(String bytes) {
    for (String mark : new String[] {"\u00EF\u00BB\u00BF", "\u00FE\u00FF", "\u00FF\u00FE"}) {
      if (bytes.startsWith(mark)) {
        return bytes.substring(mark.length());
      }
    }
    return bytes;
  }

  private void check() {
    if (text.startsWith("<?xml")) {
      int end = text.indexOf("?>");
      declaration(end < 0 ? text : text.substring(0, end));
    }
    while (true) {
      while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
        at++;
      }
      if (text.startsWith("<?", at)) {
        pass("?>");
      } else if (text.startsWith("<!--", at)) {
        pass("-->");
      } else if (text.startsWith("<!", at)) {
        throw refused(
            at,
            "a document type (<!DOCTYPE …>) is not read, since it can ask for other files",
            "delete it, and write what its entities stand for in full");
      } else if (text.startsWith("<", at)) {
        return;
      } else {
        throw at == text.length()
            ? noElement()
            : refused(at, "this is not XML: an element must begin with \"<\"", REMEDY);
      }
    }
  }

  private void pass(String end) {
    int found = text.indexOf(end, at);
    if (found < 0) {
      throw noElement();
    }
    at = found + end.length();
  }

  private UnreadableException noElement() {
    return cut
        ? new UnreadableException(
            file,
            "no element begins in the first " + LONGEST + " bytes, which is the limit",
            "move long comments down")
        : new UnreadableException(file, "the file has no element", REMEDY);
  }

  private void declaration(String declaration) {
    for (int i = 0; i < declaration.length(); i++) {
      if (declaration.charAt(i) >= 0x80) {
        throw refused(
            i,
            "this has no place in an XML declaration",
            "write <?xml version=\"1.0\" encoding=\"UTF-8\"?>, or leave it out");
      }
    }
    int name = declaration.indexOf("encoding");
    int equals = declaration.indexOf('=', Math.max(0, name));
    if (name < 0 || equals < 0) {
      return;
    }
    String given = declaration.substring(equals + 1).strip();
    int end = given.isEmpty() ? -1 : given.indexOf(given.charAt(0), 1);
    String encoding = end < 0 ? "" : given.substring(1, end).toLowerCase(Locale.ROOT);
    boolean known =
        ENCODINGS.contains(encoding)
            || encoding.startsWith("iso-8859-")
            || encoding.startsWith("windows-125");
    if (!known) {
      throw refused(
          name,
          "the encoding \"" + encoding + "\" is not read",
          "save the file as UTF-8 and say so here");
    }
  }

  private UnreadableException refused(int where, String what, String remedy) {
    String before = text.substring(0, where);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = where - before.lastIndexOf('\n');
    return new UnreadableException(new FilePlace(file, line, column, 0), what, remedy);
  }
}
