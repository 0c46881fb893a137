package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.exchange.identifier.Identifiers;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.BibTeXString;
import org.jbibtex.CrossReferenceValue;
import org.jbibtex.Key;
import org.junit.jupiter.api.Test;
import org.marc4j.MarcReader;
import org.marc4j.MarcStreamReader;
import org.marc4j.MarcXmlReader;
import org.marc4j.marc.Record;

/** The files that are invented are right, by libraries that we did not write. */
class InventedSourcesTest {
  private static final int MANY = 400;

  @Test
  void aNumberAlwaysGivesTheSameSource() {
    for (int number = 0; number < MANY; number++) {
      assertEquals(InventedSource.of(number), InventedSource.of(number));
    }
    assertFalse(InventedSource.of(1).title().equals(InventedSource.of(2).title()));
  }

  @Test
  void everyFifthHasAnIsbnOfItsOwn() {
    Set<String> isbns = new HashSet<>();
    for (int number = 4; number < 50_000; number += 5) {
      InventedSource.of(number)
          .isbn()
          .ifPresent(
              isbn -> {
                assertFalse(Identifiers.isbn(isbn).wrongInPrint(), isbn);
                assertTrue(isbns.add(isbn), isbn);
              });
    }
    assertEquals(10_000, isbns.size());
  }

  @Test
  void theBibtexHasEveryEntryAndItsCrossReferences() throws Exception {
    StringWriter text = new StringWriter();
    InventedBibtex.write(0, MANY, text);
    BibTeXParser parser =
        new BibTeXParser() {
          @Override
          public void checkStringResolution(Key key, BibTeXString string) {
            // the names of months are not in the file
          }

          @Override
          public void checkCrossReferenceResolution(Key key, BibTeXEntry entry) {
            // what is referred to comes later
          }
        };
    BibTeXDatabase database = parser.parse(new StringReader(text.toString()));
    assertEquals(MANY, database.getEntries().size());
    int references = 0;
    for (BibTeXEntry entry : database.getEntries().values()) {
      if (entry.getFields().get(BibTeXEntry.KEY_CROSSREF) instanceof CrossReferenceValue) {
        references++;
      }
    }
    assertEquals(MANY / 5, references);
  }

  @Test
  void accentsAreCommandsInEverySecondEntry() {
    assertEquals(
        "N{\\\"{o}}l {\\'{\\i}} stra{\\ss} \\& {\\o}", InventedBibtex.latex("Nöl í straß & ø"));
  }

  @Test
  void theMarcHasEveryRecordInBothForms() throws Exception {
    ByteArrayOutputStream binary = new ByteArrayOutputStream();
    InventedMarc.write(0, MANY, binary);
    StringWriter xml = new StringWriter();
    InventedMarc.writeXml(0, MANY, xml);
    byte[] xmlBytes = xml.toString().getBytes(StandardCharsets.UTF_8);
    List<String> expected = new ArrayList<>();
    for (int number = 0; number < MANY; number++) {
      expected.add("inv" + number + " " + InventedSource.of(number).title());
    }
    assertEquals(
        expected, titles(new MarcStreamReader(new ByteArrayInputStream(binary.toByteArray()))));
    assertEquals(expected, titles(new MarcXmlReader(new ByteArrayInputStream(xmlBytes))));
  }

  private static List<String> titles(MarcReader reader) {
    List<String> titles = new ArrayList<>();
    while (reader.hasNext()) {
      Record record = reader.next();
      String title =
          record.getDataFields().stream()
              .filter(f -> f.getTag().equals("245"))
              .map(f -> f.getSubfield('a').getData())
              .findFirst()
              .orElseThrow();
      assertEquals(
          40, ((org.marc4j.marc.ControlField) record.getVariableField("008")).getData().length());
      titles.add(record.getControlNumber() + " " + title.substring(0, title.length() - 2));
    }
    return titles;
  }

  @Test
  void theTableHasEveryRow() throws Exception {
    StringWriter text = new StringWriter();
    InventedCsv.write(0, MANY, text);
    try (CSVParser parser = CSVParser.parse(new StringReader(text.toString()), CSVFormat.RFC4180)) {
      assertEquals(MANY + 1, parser.getRecords().size());
    }
  }
}
