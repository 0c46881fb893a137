package merese.exchange.skos;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Looks at what stands before the first element of an XML file, and refuses a document type: it is
 * what entities are declared in, and with them a file can ask for other files or grow without end.
 */
final class XmlProlog {
  /** A first element must begin within so many bytes. */
  static final int LONGEST = 1 << 16;

  private XmlProlog() {}

  /**
   * @param head the first {@value #LONGEST} bytes, or all there are
   */
  static void check(String file, byte[] head) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> new ByteArrayInputStream(new byte[0]));
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(head));
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          return;
        }
        if (event == XMLStreamConstants.DTD) {
          throw documentType(file, head, reader.getLocation());
        }
      }
    } catch (XMLStreamException e) {
      Location at = e.getLocation();
      boolean cut = head.length == LONGEST;
      throw new UnreadableException(
          at == null || cut
              ? new FilePlace(file, 0, 0, 0)
              : new FilePlace(file, at.getLineNumber(), Math.max(0, at.getColumnNumber()), 0),
          cut
              ? "no element begins in the first " + LONGEST + " bytes, which is the limit"
              : "this is not XML: " + reason(e),
          cut ? "move long comments down" : "is it RDF/XML? Turtle is to be named .ttl");
    }
    throw new UnreadableException(file, "the file has no element", "is it RDF/XML?");
  }

  private static UnreadableException documentType(String file, byte[] head, Location end) {
    // The reader knows where it ends; where it begins is what a person looks for.
    String text = new String(head, java.nio.charset.StandardCharsets.ISO_8859_1);
    int start = text.toUpperCase(Locale.ROOT).indexOf("<!DOCTYPE");
    int line = end.getLineNumber();
    int column = 0;
    if (start >= 0) {
      line = 1 + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
      column = start - text.lastIndexOf('\n', start);
    }
    return new UnreadableException(
        new FilePlace(file, line, column, 0),
        "a document type (<!DOCTYPE …>) is not read, since it can ask for other files",
        "delete it, and write what its entities stand for in full");
  }

  /** The parser's words, without the place that it puts before them. */
  static String reason(XMLStreamException e) {
    String message = String.valueOf(e.getMessage());
    int at = message.indexOf("Message: ");
    return message.substring(at < 0 ? 0 : at + 9).strip();
  }
}
