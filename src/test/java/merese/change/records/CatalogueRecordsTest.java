package merese.change.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import merese.exchange.marc.MarcXmlReader;
import merese.model.ReceivedRecord;
import merese.store.LibraryFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A control number (001) is a record's in the catalogue of one library, which 003 names (MARC 21
 * Format for Bibliographic Data, 001 and 003). All books, people and libraries are invented.
 */
@DisplayName("Records of catalogues that have the same number")
class CatalogueRecordsTest {
  private static final String AMBREY = control("003", "XxAmb");
  private static final String HARROW = control("003", "XxHar");

  @TempDir private Path folder;
  private LibraryFolder library;

  @BeforeEach
  void makeALibrary() {
    library = LibraryFolder.create(folder, "Test");
  }

  private static String control(String tag, String text) {
    return "<controlfield tag=\"" + tag + "\">" + text + "</controlfield>";
  }

  private static String data(String tag, String text) {
    return "<datafield tag=\""
        + tag
        + "\" ind1=\"1\" ind2=\"0\"><subfield code=\"a\">"
        + text
        + "</subfield></datafield>";
  }

  private static String record(String type, String fields) {
    return "<record><leader>00000n" + type + " a2200000 a 4500</leader>" + fields + "</record>";
  }

  private static String person(String library, String name) {
    return record("z ", control("001", "n1") + library + data("100", name));
  }

  private static String book(String library, String author, String date) {
    String year = "<datafield tag=\"260\" ind1=\" \" ind2=\" \"><subfield code=\"c\">" + date;
    String fields = data("100", author) + data("245", "Old Glass") + year;
    return record("am", control("001", "77") + library + fields + "</subfield></datafield>");
  }

  private ImportResult applied(String... records) throws IOException {
    SourceImport importing = new SourceImport(library, ImportOptions.NONE, true);
    byte[] file = String.join("\n", records).getBytes(StandardCharsets.UTF_8);
    MarcXmlReader reader = new MarcXmlReader();
    reader.read("list.xml", new ByteArrayInputStream(file), importing);
    importing.endOfFile("list.xml", reader.wrapping());
    return importing.apply(n -> {});
  }

  private List<String> people() {
    return library.readKept().value().stream()
        .map(ReceivedRecord::fields)
        .map(fields -> fields.get(fields.size() - 1).value())
        .toList();
  }

  @Test
  void areAllKeptWhereTheyDescribeNoSource() throws IOException {
    String[] both = {person("", "Crouch, Ida"), person("", "Pike, Tom")};
    assertEquals(2, applied(both).kept());
    assertEquals(List.of("$aCrouch, Ida", "$aPike, Tom"), people());
    assertEquals(0, applied(both).kept());
  }

  @Test
  void aNewWordOfOneOfThemTakesThePlaceOfTheOldOne() throws IOException {
    applied(person("", "Crouch, Ida"), person("", "Pike, Tom"));
    assertEquals(1, applied(person("", "Crouch, Ida"), person("", "Pike, Thomas")).kept());
    assertEquals(List.of("$aCrouch, Ida", "$aPike, Thomas"), people());
  }

  @Test
  void ofTwoLibrariesAreNeverOneAnew() throws IOException {
    applied(person(AMBREY, "Crouch, Ida"));
    applied(person(HARROW, "Pike, Tom"));
    assertEquals(List.of("$aCrouch, Ida", "$aPike, Tom"), people());
  }

  @Test
  void areTwoSourcesWhereTheyAreOfTwoLibraries() throws IOException {
    applied(book(AMBREY, "Pike, Tom", "1950"));
    ImportResult other = applied(book(HARROW, "Wren, Ada", "1978"));
    assertEquals(List.of("77-b"), other.added().stream().map(Item::key).toList());
  }

  @Test
  void areOneSourceWhereTheyAreOfOneLibrary() throws IOException {
    applied(book(AMBREY, "Pike, Tom", "1950"));
    Item again = applied(book(AMBREY, "Pike, Thomas", "1951")).items().get(0);
    assertEquals(List.of("same key and title"), assertInstanceOf(Item.There.class, again).why());
  }
}
