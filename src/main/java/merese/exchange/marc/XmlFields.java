package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import merese.exchange.marc.MarcField.Subfield;

/** Reads the texts of MARCXML records. */
final class XmlFields {
  private final XmlFeed feed = new XmlFeed();

  /** That a record breaks off as XML; where, in its text. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1;

    private final int line;
    private final int column;

    Broken(int line, int column) {
      super(null, null, false, false);
      this.line = line;
      this.column = column;
    }

    /** From 1, in the record. */
    int line() {
      return line;
    }

    /** From 1, in UTF-16 units. */
    int column() {
      return column;
    }
  }

  /**
   * @throws BadRecord for what is XML, but no MARC
   */
  MarcRecord read(String text, List<String> remarks) throws Broken, BadRecord {
    boolean whole = false;
    try {
      XMLStreamReader xml = feed.start(text);
      List<MarcField> fields = new ArrayList<>();
      while (isStart(xml)) {
        fields.add(field(xml, remarks));
      }
      feed.end();
      whole = true;
      return new MarcRecord(fields);
    } catch (XMLStreamException e) {
      int line = feed.line(e.getLocation().getLineNumber());
      throw new Broken(line, e.getLocation().getColumnNumber());
    } finally {
      if (!whole) {
        feed.breakOff();
      }
    }
  }

  /** Goes on to the next child; false at the end of the element. */
  private static boolean isStart(XMLStreamReader xml) throws XMLStreamException, BadRecord {
    while (true) {
      switch (xml.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          return true;
        }
        case XMLStreamConstants.END_ELEMENT, XMLStreamConstants.END_DOCUMENT -> {
          return false;
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
          if (!xml.isWhiteSpace()) {
            String text = xml.getText().strip();
            throw new BadRecord(
                "the text \""
                    + text.substring(0, Math.min(40, text.length()))
                    + "\" stands outside a subfield",
                "put it where it belongs");
          }
        }
        default -> {}
      }
    }
  }

  private static String local(XMLStreamReader xml) {
    String name = xml.getLocalName();
    return name.substring(name.indexOf(':') + 1);
  }

  private static MarcField field(XMLStreamReader xml, List<String> remarks)
      throws XMLStreamException, BadRecord {
    String name = local(xml);
    return switch (name) {
      case "leader" -> MarcField.control(MarcField.LEADER, text(xml));
      case "controlfield" -> MarcField.control(tag(xml), text(xml));
      case "datafield" -> data(xml, remarks);
      default -> throw new BadRecord("<" + name + "> is no part of a MARC record", "take it out");
    };
  }

  private static String tag(XMLStreamReader xml) throws BadRecord {
    String tag = xml.getAttributeValue(null, "tag");
    if (tag == null || tag.length() != 3 || tag.isBlank()) {
      throw new BadRecord(
          tag == null ? "a field has no tag" : "the tag \"" + tag + "\" has not three characters",
          "give it its tag");
    }
    return tag;
  }

  private static MarcField data(XMLStreamReader xml, List<String> remarks)
      throws XMLStreamException, BadRecord {
    String tag = tag(xml);
    String indicators = indicator(xml, 1, tag, remarks) + indicator(xml, 2, tag, remarks);
    List<Subfield> subfields = new ArrayList<>();
    while (isStart(xml)) {
      if (!local(xml).equals("subfield")) {
        throw new BadRecord("<" + local(xml) + "> is no part of a field", "take it out");
      }
      String code = xml.getAttributeValue(null, "code");
      if (code == null || code.length() != 1) {
        throw new BadRecord(
            "a subfield of " + tag + " has the code \"" + (code == null ? "" : code) + "\"",
            "give it a letter or digit");
      }
      subfields.add(new Subfield(code.charAt(0), text(xml)));
    }
    return MarcField.data(tag, indicators, subfields);
  }

  private static String indicator(XMLStreamReader xml, int number, String tag, List<String> remarks)
      throws BadRecord {
    String value = xml.getAttributeValue(null, "ind" + number);
    if (value == null || value.isEmpty() || value.equals("#")) {
      String has = value == null || value.isEmpty() ? "no indicator " : "# for indicator ";
      remarks.add("field " + tag + " has " + has + number + "; read as blank");
      return " ";
    }
    if (value.length() != 1) {
      throw new BadRecord(
          "indicator " + number + " of field " + tag + " is \"" + value + "\"",
          "give it one character");
    }
    return value;
  }

  private static String text(XMLStreamReader xml) throws XMLStreamException, BadRecord {
    StringBuilder text = new StringBuilder();
    while (true) {
      switch (xml.next()) {
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            text.append(xml.getText());
        case XMLStreamConstants.END_ELEMENT -> {
          return text.toString();
        }
        case XMLStreamConstants.START_ELEMENT ->
            throw new BadRecord(
                "<" + local(xml) + "> stands within the text of a field", "take it out");
        default -> {}
      }
    }
  }
}
