package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.Incoming;
import merese.model.Contributor;
import merese.model.Identifier;
import merese.model.Name;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Test;
import org.marc4j.MarcStreamWriter;

/** The Library of Congress's example record: checks/marcxml-sandburg.xml. */
class SandburgTest {
  static byte[] xml() throws IOException {
    try (InputStream in =
        SandburgTest.class.getResourceAsStream("/merese/checks/marcxml-sandburg.xml")) {
      return in.readAllBytes();
    }
  }

  /** As ISO 2709, by marc4j 2.9.6. */
  static byte[] iso(byte[] xml, String encoding) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MarcStreamWriter writer = new MarcStreamWriter(out, encoding);
    org.marc4j.MarcXmlReader reader = new org.marc4j.MarcXmlReader(new ByteArrayInputStream(xml));
    while (reader.hasNext()) {
      writer.write(reader.next());
    }
    writer.close();
    return out.toByteArray();
  }

  private static Incoming read() throws IOException {
    Handed handed = Handed.of(new MarcXmlReader(), xml());
    assertEquals(List.of("Arithmetic"), handed.words());
    return handed.sources.get(0);
  }

  @Test
  void itIsWhatACatalogueSaysOfTheBook() throws IOException {
    Incoming source = read();
    assertEquals(Optional.of("92005291"), source.key());
    assertEquals(List.of(), source.remarks());
    assertEquals(
        List.of(
            new Contributor(
                Contributor.Role.AUTHOR,
                new Name.Person(
                    "Sandburg", Optional.of("Carl"), Optional.empty(), Optional.empty())),
            new Contributor(
                Contributor.Role.ILLUSTRATOR,
                new Name.Person("Rand", Optional.of("Ted"), Optional.empty(), Optional.empty()))),
        source.work().contributors());
    assertEquals(Optional.empty(), source.work().subtitle());
    assertEquals(Optional.of("en"), source.work().language());
    var imprint = source.edition().imprint();
    assertEquals(Optional.of("1st ed."), imprint.statement());
    assertEquals(OptionalInt.of(1), imprint.number());
    assertEquals(OptionalInt.of(1993), imprint.year());
    assertEquals(Optional.of("c1993"), imprint.yearPrinted());
    assertEquals(List.of("San Diego"), imprint.places());
    assertEquals(Optional.of("Harcourt Brace Jovanovich"), imprint.publisher());
    assertEquals(OptionalInt.empty(), imprint.volumes());
    assertEquals(
        List.of(Identifier.of(Identifier.Scheme.ISBN, "0-15-203865-5")), imprint.identifiers());
  }

  @Test
  void theReceivedRecordIsTheRecordLineByLine() throws IOException {
    ReceivedRecord record = read().received();
    assertEquals("marc", record.format());
    assertEquals("92005291", record.id());
    assertEquals("   92005291 ", record.fields().get(1).value());
    assertEquals(Optional.of("$a0152038655 :$c{dollar}15.95"), record.field("020 ##"));
    assertEquals(
        Optional.of(
            "$aArithmetic /$cCarl Sandburg ; illustrated as an anamorphic adventure by Ted Rand."),
        record.field("245 10"));
  }

  @Test
  void itIsTheSameRecordInEitherForm() throws IOException {
    byte[] iso = iso(xml(), "UTF-8");
    Handed handed = Handed.iso(iso);
    assertEquals(List.of("Arithmetic"), handed.words());
    Incoming source = handed.sources.get(0);
    assertEquals(List.of(), source.remarks());
    assertEquals(read().received(), source.received());
    assertEquals(read().work(), source.work());
    assertEquals(1142, iso.length); // as the leader of the example says
  }
}
