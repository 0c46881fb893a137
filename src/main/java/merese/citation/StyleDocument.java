package merese.citation;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A style or a locale as parsed XML. No document type is allowed, so nothing outside the file is
 * ever read.
 *
 * @param from what a message calls it: a style's name or a file
 */
record StyleDocument(String from, Document document) {

  static StyleDocument parse(String from, InputStream in) throws IOException {
    return parse(from, in.readAllBytes());
  }

  static StyleDocument parse(String from, byte[] bytes) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return new StyleDocument(from, builder.parse(new ByteArrayInputStream(bytes)));
    } catch (SAXParseException e) {
      throw new CitationException(
          from
              + ", line "
              + e.getLineNumber()
              + ", column "
              + e.getColumnNumber()
              + ": not a CSL style: "
              + e.getMessage(),
          e);
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new CitationException(from + ": not a CSL style: " + e.getMessage(), e);
    }
  }

  Element root() {
    return document.getDocumentElement();
  }

  /** The name of the style that a dependent style takes its rules from. */
  Optional<String> parent() {
    return elements("link").stream()
        .filter(link -> link.getAttribute("rel").equals("independent-parent"))
        .map(link -> link.getAttribute("href"))
        .map(address -> address.substring(address.lastIndexOf('/') + 1))
        .findFirst();
  }

  /** What the style says of itself: note, author-date, author, numeric or label. */
  Optional<String> citationFormat() {
    return elements("category").stream()
        .map(category -> category.getAttribute("citation-format"))
        .filter(format -> !format.isEmpty())
        .findFirst();
  }

  boolean has(String element) {
    return !elements(element).isEmpty();
  }

  List<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>(nodes.getLength());
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
