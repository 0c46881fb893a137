package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The library's records that describe no source")
class KeptRecordsTest {
  @TempDir Path dir;
  private LibraryFolder library;

  @BeforeEach
  void copyTheFixture() {
    library = Fixture.in(dir);
  }

  @Test
  void areNoneWhereThereIsNoFile() {
    assertEquals(List.of(), library.readKept().value());
    assertEquals(List.of(), library.check());
  }

  @Test
  void standInAFileOfTheirOwnWordForWord() {
    ReceivedRecord set =
        new ReceivedRecord(
            "biblatex",
            "set",
            "rings",
            List.of(
                new ReceivedRecord.Field("entryset", "quenby-1949, tressick-1954"),
                new ReceivedRecord.Field("note", "")));
    try (ChangeSet change = library.change("a test")) {
      change.save(library.readKept(), List.of(Changed.preamble(), set));
      change.commit();
    }
    assertEquals(List.of(Changed.preamble(), set), library.readKept().value());
    assertEquals(
        """
        {
          "records": [
            {
              "format": "bibtex",
              "type": "preamble",
              "fields": [
                "value = \\\\newcommand{\\\\x}{}"
              ]
            },
            {
              "format": "biblatex",
              "type": "set",
              "id": "rings",
              "fields": [
                "entryset = quenby-1949, tressick-1954",
                "note = "
              ]
            }
          ]
        }
        """,
        Fixture.read(library.resolve("received.json")));
    assertEquals(
        List.of(LibraryFile.Kind.RECEIVED),
        library.scan().stream()
            .filter(f -> f.relative().equals("received.json"))
            .map(LibraryFile::kind)
            .toList());
    assertEquals(List.of(), library.check());
  }

  @Test
  void areCheckedAsAllFilesAre() {
    Fixture.write(
        library.resolve("received.json"),
        "{\n  \"records\": [{\"type\": \"set\", \"feilds\": []}]\n}\n");
    assertEquals(
        List.of(
            "2:15 records[0] \"format\" is missing",
            "2:31 records[0] the key \"feilds\" is not known and is kept as it is"),
        library.check().stream()
            .map(p -> p.line() + ":" + p.column() + " " + p.where() + " " + p.what())
            .toList());
  }
}
