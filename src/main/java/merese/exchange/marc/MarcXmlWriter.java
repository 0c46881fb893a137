package merese.exchange.marc;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import merese.exchange.Outgoing;
import merese.exchange.RecordWriter;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.ReceivedRecord;

/**
 * Writes sources in MARCXML, a record for each, sorted by control number.
 *
 * <p>Guarantees: a source that came as a MARC record and has not been changed since has the same
 * fields again, in their order; the same sources give the same text; the user's notes are left out.
 * A character that XML does not allow becomes U+FFFD.
 */
public final class MarcXmlWriter implements RecordWriter {
  /** A source that is ready to be written. */
  private record Ready(String number, String id, MarcRecord record) {}

  @Override
  public void write(Collection<Outgoing> sources, List<ReceivedRecord> kept, Writer out)
      throws IOException {
    List<Ready> ready = new ArrayList<>(sources.size());
    for (Outgoing source : sources) {
      MarcRecord record = Rewriting.of(source);
      ready.add(new Ready(record.controlNumber(), source.id(), record));
    }
    ready.sort(Comparator.comparing(Ready::number).thenComparing(Ready::id));
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.write("<collection xmlns=\"" + XmlScopes.MARC + "\">\n");
    for (Ready source : ready) {
      write(source.record(), out);
    }
    for (ReceivedRecord record : kept) {
      if (record.format().equals(MarcRecord.FORMAT)) {
        write(MarcRecord.of(record), out);
      }
    }
    out.write("</collection>\n");
  }

  private static void write(MarcRecord record, Writer out) throws IOException {
    StringBuilder xml = new StringBuilder("  <record>\n");
    boolean leader = false;
    for (MarcField field : record.fields()) {
      if (field.isLeader() && !leader) {
        leader = true;
        xml.append("    <leader>");
        XmlText.text(field.control().orElseThrow(), xml);
        xml.append("</leader>\n");
      } else if (field.control().isPresent()) {
        xml.append("    <controlfield tag=\"");
        XmlText.attribute(field.tag(), xml);
        xml.append("\">");
        XmlText.text(field.control().get(), xml);
        xml.append("</controlfield>\n");
      } else {
        data(field, xml);
      }
    }
    out.append(xml.append("  </record>\n"));
  }

  private static void data(MarcField field, StringBuilder xml) {
    xml.append("    <datafield tag=\"");
    XmlText.attribute(field.tag(), xml);
    xml.append("\" ind1=\"");
    XmlText.attribute(Character.toString(field.one()), xml);
    xml.append("\" ind2=\"");
    XmlText.attribute(Character.toString(field.two()), xml);
    xml.append("\">\n");
    for (Subfield subfield : field.subfields()) {
      xml.append("      <subfield code=\"");
      XmlText.attribute(Character.toString(subfield.code()), xml);
      xml.append("\">");
      XmlText.text(subfield.text(), xml);
      xml.append("</subfield>\n");
    }
    xml.append("    </datafield>\n");
  }
}
