package merese.exchange.marc;

import java.io.Reader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One XML parser for many texts, each a whole element, since a parser takes longer to make than a
 * record to read. It is given one text after the other as children of an element of our own; after
 * a text that is broken, a new one is made. No DTD, no entity but XML's own five, nothing fetched.
 */
final class XmlFeed {
  /** After so many, a new parser is made, which has not seen the names of the old. */
  private static final int TEXTS = 10_000;

  private static final String BEFORE = "<all>";

  private final XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
  private XMLStreamReader xml;
  private Texts texts;
  private int count;
  private int line;

  XmlFeed() {
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
  }

  /** Gives out the text that it is at, and no more until it has another. */
  private static final class Texts extends Reader {
    private String text = BEFORE;
    private int at;

    @Override
    public int read(char[] to, int offset, int length) {
      int count = Math.min(length, text.length() - at);
      if (count == 0) {
        return -1;
      }
      text.getChars(at, at + count, to, offset);
      at += count;
      return count;
    }

    @Override
    public void close() {
      text = "";
      at = 0;
    }
  }

  /** At the start of the element that the text is. */
  XMLStreamReader start(String text) throws XMLStreamException {
    if (xml == null || count++ == TEXTS) {
      texts = new Texts();
      xml = factory.createXMLStreamReader(texts);
      xml.next();
      count = 0;
      line = 2;
    }
    texts.text = "\n" + text;
    texts.at = 0;
    while (xml.next() != XMLStreamConstants.START_ELEMENT) {}
    return xml;
  }

  /** After the text has been read to its end. */
  void end() {
    line = xml.getLocation().getLineNumber() + 1;
  }

  /** The line in the text, from 1, of a line that the parser says. */
  int line(int said) {
    return Math.max(1, said - line + 1);
  }

  /** Gives up the parser, which is somewhere in a text. */
  void breakOff() {
    xml = null;
  }
}
