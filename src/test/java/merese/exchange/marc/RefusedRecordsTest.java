package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import org.junit.jupiter.api.Test;

/** What is refused can be mended where it lies, and brought in. */
class RefusedRecordsTest {
  private static final String RECORD =
      "<m:record><m:leader>00000nam a2200000 a 4500</m:leader><m:datafield tag=\"245\" ind1=\"0\""
          + " ind2=\"0\"><m:subfield code=\"a\">Verre à jambe & co</m:subfield></m:datafield>"
          + "</m:record>";

  private static String file(String encoding) {
    return "<?xml version=\"1.0\" encoding=\""
        + encoding
        + "\"?>\n<m:collection xmlns:m=\"http://www.loc.gov/MARC21/slim\">"
        + RECORD
        + RECORD
        + "</m:collection>";
  }

  private static byte[] wrapped(Wrapping wrapping, List<Refused> refused) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(wrapping.before().getBytes(wrapping.charset()));
    for (Refused record : refused) {
      out.writeBytes(record.verbatim());
      out.writeBytes(wrapping.between().getBytes(wrapping.charset()));
    }
    out.writeBytes(wrapping.after().getBytes(wrapping.charset()));
    return out.toByteArray();
  }

  private static void assertMendable(Charset charset, Charset kept) {
    MarcXmlReader reader = new MarcXmlReader();
    Handed handed = Handed.of(reader, file(charset.name()).getBytes(charset));
    assertEquals(2, handed.refused.size(), () -> handed.words().toString());
    assertArrayEquals(RECORD.getBytes(kept), handed.refused.get(0).verbatim());
    String mended =
        new String(wrapped(reader.wrapping(), handed.refused), kept).replace("&", "&amp;");
    Handed again = Handed.of(new MarcXmlReader(), mended.getBytes(kept));
    assertEquals(List.of("Verre à jambe & co", "Verre à jambe & co"), again.words());
  }

  @Test
  void recordsOfXmlStandInACollectionThatKnowsTheirPrefix() {
    assertMendable(StandardCharsets.UTF_8, StandardCharsets.UTF_8);
  }

  @Test
  void theyKeepAnEncodingOfSingleBytes() {
    assertMendable(StandardCharsets.ISO_8859_1, StandardCharsets.ISO_8859_1);
  }

  @Test
  void theyKeepAnEncodingOfTwoBytes() {
    assertMendable(StandardCharsets.UTF_16BE, StandardCharsets.UTF_16BE);
    assertMendable(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16LE);
  }

  @Test
  void theyKeepAnEncodingThatOnlyTheDeclarationNames() {
    assertMendable(Charset.forName("GB18030"), Charset.forName("GB18030"));
  }

  @Test
  void aRecordThatIsNotClosedEndsBeforeTheEndOfItsCollection() {
    String open = RECORD.replace("</m:record>", "");
    Handed handed = Handed.xml(file("UTF-8").replace(RECORD, open));
    assertEquals(2, handed.refused.size());
    for (Refused refused : handed.refused) {
      assertEquals(open, new String(refused.verbatim(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void aRecordOfIso2709IsKeptByteByByte() throws IOException {
    byte[] sound = SandburgTest.iso(SandburgTest.xml(), "UTF-8");
    byte[] bad = sound.clone();
    bad[30] = 'x'; // a length in the directory
    bad[200] = 0x1e; // in the directory
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(sound);
    file.writeBytes(bad);
    file.writeBytes(sound);
    Handed handed = Handed.iso(file.toByteArray());
    assertEquals(2, handed.sources.size());
    assertEquals(1, handed.refused.size());
    assertArrayEquals(bad, handed.refused.get(0).verbatim());
    assertEquals(
        "file: record 2: from byte 1143 of the file: these bytes are no MARC record: no leader of"
            + " 24 bytes and directory of 12 a field; read it in the format that it is in, or mend"
            + " it",
        handed.refused.get(0).toString());
  }
}
