package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import merese.store.LibraryFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An import of records that describe no source")
class ImportTextTest {
  private static final String PERSON =
      """
      <record xmlns="http://www.loc.gov/MARC21/slim"><leader>00000nz  a2200000n  4500</leader>
      <controlfield tag="001">n1</controlfield><datafield tag="100" ind1="1" ind2=" ">
      <subfield code="a">Crouch, Ida</subfield></datafield></record>
      """;

  @TempDir private Path folder;

  @BeforeEach
  void makeALibrary() throws IOException {
    LibraryFolder.create(folder, "Test");
    Files.writeString(folder.resolve("people.xml"), PERSON);
  }

  private String imported(String... options) {
    String[] words = {"import", "people.xml", "--all"};
    String[] all = Stream.concat(Stream.of(words), Stream.of(options)).toArray(String[]::new);
    return Ran.in(folder, Map.of("COLUMNS", "80"), all).out();
  }

  @Test
  void saysHowManyAreKept() {
    assertEquals(
        """
        Kept word for word, describing no source: 1 record

        Nothing has been written. With --apply, this is done.
        """,
        imported());
  }

  @Test
  void doesNotCallAFileEmptyWhoseRecordsAreThere() {
    imported("--apply");
    assertEquals("Nothing to do: the library has all of it.\n", imported());
  }
}
