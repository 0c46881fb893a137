package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Incoming;
import merese.exchange.Refused;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** Sound files with bytes changed: nothing fails, nothing is lost, no other record is touched. */
class MarcFuzzTest {
  private static final String SEED = "2709";
  private static final String[] TITLES = {
    "Arches", "Verre à jambe", "Cruets & bowls", "Гр <афины>", "Ollerby's collars"
  };

  /** A change of one byte: put in, taken out or another. */
  record Change(int kind, double where, byte value) {
    byte[] of(byte[] file) {
      int at = (int) (where * file.length);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(file, 0, at);
      if (kind != 1) {
        out.write(value);
      }
      int rest = kind == 0 ? at : at + 1;
      out.write(file, rest, file.length - rest);
      return out.toByteArray();
    }
  }

  private static byte[] xml(int number) {
    String title = TITLES[number % TITLES.length].replace("&", "&amp;").replace("<", "&lt;");
    return ("  <record>\n"
            + "    <leader>00000nam a2200000 a 4500</leader>\n"
            + "    <controlfield tag=\"001\">n"
            + number
            + "</controlfield>\n"
            + "    <datafield tag=\"245\" ind1=\"1\" ind2=\"0\">\n"
            + "      <subfield code=\"a\">"
            + title
            + " /</subfield><!-- a comment -->\n"
            + "      <subfield code=\"c\"><![CDATA[M. <Quenby>]]></subfield>\n"
            + "    </datafield>\n"
            + "    <datafield tag=\"260\" ind1=\" \" ind2=\" \">"
            + "<subfield code=\"c\">1926.</subfield></datafield>\n"
            + "  </record>\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static final String BEFORE = "<collection xmlns=\"http://www.loc.gov/MARC21/slim\">\n";
  private static final String AFTER = "</collection>\n";

  private static byte[] iso(int number) {
    byte[] xml =
        joined(
            List.of(
                BEFORE.getBytes(StandardCharsets.UTF_8),
                xml(number),
                AFTER.getBytes(StandardCharsets.UTF_8)));
    return SandburgTest.iso(xml, "UTF-8");
  }

  private static final byte[][] ISO = {iso(0), iso(1), iso(2), iso(3), iso(4)};

  private static byte[] joined(List<byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    parts.forEach(out::writeBytes);
    return out.toByteArray();
  }

  @Provide
  Arbitrary<Change> change() {
    Arbitrary<Byte> value =
        Arbitraries.frequencyOf(
            Tuple.of(2, Arbitraries.bytes()),
            Tuple.of(
                3,
                Arbitraries.chars()
                    .with("<>&/?!\"'[]- :x0192$\0\u001b\u001d\u001e\u001f\n")
                    .map(c -> (byte) c.charValue())));
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            Arbitraries.doubles().between(0, 1).ofScale(9).filter(d -> d < 1),
            value)
        .as(Change::new);
  }

  @Property(tries = 3000, seed = SEED)
  void aChangedByteInAnIso2709RecordCostsNoOther(
      @ForAll("change") Change change, @ForAll int which) {
    int changed = Math.floorMod(which, 3);
    List<byte[]> file = new ArrayList<>(List.of(ISO[0], ISO[1], ISO[2]));
    file.set(changed, change.of(file.get(changed)));
    assertOthers(changed, Handed.iso(joined(file)));
  }

  @Property(tries = 3000, seed = SEED)
  void aChangedByteInAMarcXmlRecordCostsNoOther(
      @ForAll("change") Change change, @ForAll int which) {
    int changed = Math.floorMod(which, 3);
    List<byte[]> file = new ArrayList<>(List.of(xml(0), xml(1), xml(2)));
    file.set(changed, change.of(file.get(changed)));
    file.add(0, BEFORE.getBytes(StandardCharsets.UTF_8));
    file.add(AFTER.getBytes(StandardCharsets.UTF_8));
    assertOthers(changed, Handed.of(new MarcXmlReader(), joined(file)));
  }

  private static void assertOthers(int changed, Handed handed) {
    List<String> ids = handed.sources.stream().map(s -> s.received().id()).toList();
    for (int i = 0; i < 3; i++) {
      if (i != changed) {
        assertTrue(ids.contains("n" + i), () -> handed.words().toString());
        Incoming other = handed.sources.get(ids.indexOf("n" + i));
        assertEquals(TITLES[i], other.work().title());
        assertEquals(List.of(), other.remarks());
      }
    }
    assertTrue(handed.all.size() >= 3, () -> handed.words().toString());
  }

  @Property(tries = 1500, seed = SEED)
  void anyChangesInIso2709AreReadOrRefusedToTheLastByte(
      @ForAll List<@From("change") Change> changes) throws IOException {
    byte[] file = joined(List.of(ISO));
    for (Change change : changes) {
      file = change.of(file);
    }
    Iso2709Pieces pieces = new Iso2709Pieces(new ByteArrayInputStream(file));
    int count = 0;
    long end = 0;
    for (Optional<Iso2709Pieces.Piece> piece = pieces.next();
        piece.isPresent();
        piece = pieces.next()) {
      count++;
      for (long at = end; at < piece.get().offset(); at++) {
        assertTrue(file[(int) at] <= ' ' || (file[(int) at] & 0xFF) == 0xEF, "lost at " + at);
      }
      end = piece.get().offset() + piece.get().bytes().length;
    }
    Handed handed = Handed.iso(file);
    assertEquals(count, handed.all.size());
    assertReadAgain(handed, new MarcReader());
  }

  @Property(tries = 1500, seed = SEED)
  void anyChangesInMarcXmlAreReadOrRefused(@ForAll List<@From("change") Change> changes)
      throws IOException {
    byte[] file =
        joined(
            List.of(
                BEFORE.getBytes(StandardCharsets.UTF_8),
                xml(0),
                xml(1),
                xml(3),
                AFTER.getBytes(StandardCharsets.UTF_8)));
    for (Change change : changes) {
      file = change.of(file);
    }
    XmlEncoding encoding = XmlEncoding.of(new ByteArrayInputStream(file));
    XmlPieces pieces = new XmlPieces(encoding.in(), true);
    int count = 0;
    while (pieces.next().isPresent()) {
      count++;
    }
    MarcXmlReader reader = new MarcXmlReader();
    Handed handed = Handed.of(reader, file);
    assertTrue(count == handed.all.size() || (count == 0 && handed.all.size() == 1));
    assertReadAgain(handed, reader);
  }

  /** What was refused and is not mended is read again, and nothing of it is lost. */
  private static void assertReadAgain(Handed handed, merese.exchange.RecordReader reader) {
    var wrapping = reader.wrapping();
    List<byte[]> parts = new ArrayList<>();
    for (Refused refused : handed.refused) {
      parts.add((parts.isEmpty() ? "" : wrapping.between()).getBytes(StandardCharsets.UTF_8));
      parts.add(refused.verbatim());
    }
    byte[] all = joined(parts);
    parts.add(0, wrapping.before().getBytes(StandardCharsets.UTF_8));
    parts.add(wrapping.after().getBytes(StandardCharsets.UTF_8));
    Handed again = Handed.of(reader, handed.refused.isEmpty() ? new byte[0] : joined(parts));
    ByteArrayOutputStream verbatim = new ByteArrayOutputStream();
    again.refused.forEach(r -> verbatim.writeBytes(r.verbatim()));
    if (reader instanceof MarcReader && again.sources.isEmpty()) {
      assertArrayEquals(withoutSpace(all), withoutSpace(verbatim.toByteArray()));
    }
  }

  private static byte[] withoutSpace(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte b : bytes) {
      if (b > ' ' || b < 0 || b == 0x1e || b == 0x1f) {
        out.write(b);
      }
    }
    return out.toByteArray();
  }

  @Property(tries = 1000, seed = SEED)
  void anyBytesAreReadOrRefused(@ForAll byte[] bytes) {
    Handed.iso(bytes);
    Handed.of(new MarcXmlReader(), bytes);
  }

  @Property(tries = 1000, seed = SEED)
  void anyMarc8IsReadOrRefused(@ForAll("marc8") byte[] text) {
    byte[] bytes = new byte[text.length + 2];
    System.arraycopy(text, 0, bytes, 0, text.length);
    try {
      MarcCharacters characters = new MarcCharacters();
      characters.settle(bytes, ' ', new ArrayList<>());
      characters.decoded(bytes, 0, text.length);
    } catch (BadRecord refused) {
      assertTrue(refused.getMessage().length() > 10);
    }
  }

  @Provide
  Arbitrary<byte[]> marc8() {
    return Arbitraries.of(
            "\u001b(3",
            "\u001b$1",
            "\u001b$,1",
            "\u001b)4",
            "\u001b(!E",
            "\u001bs",
            "\u001bg",
            "\u001b",
            "!0!",
            "a",
            " ",
            "\u00e1",
            "\u00f2\u00e3",
            "\u00ff",
            "\u00c3\u00a9",
            "&#x41;",
            "$")
        .list()
        .ofMaxSize(12)
        .map(l -> String.join("", l).getBytes(StandardCharsets.ISO_8859_1));
  }
}
