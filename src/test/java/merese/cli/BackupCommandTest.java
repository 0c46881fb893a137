package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupCommandTest {
  @TempDir private Path folder;
  private Path home;

  @BeforeEach
  void makeALibrary() {
    home = new Shelves(folder).of("rings");
  }

  private Ran ask(String... args) {
    return Ran.in(home, Map.of("COLUMNS", "200"), args);
  }

  @Test
  void whatIsRestoredAnswersAsBefore() {
    Ran backup = ask("backup", "shelf.zip");
    assertEquals(0, backup.code(), backup.err());
    assertTrue(
        backup
            .out()
            .matches(
                "Wrote shelf\\.zip: \\d+ files, [\\d,]+ bytes, in a zip of"
                    + " [\\d,]+ bytes\\. It was read back and is whole\\.\n"),
        backup.out());
    Ran restore = ask("restore", "shelf.zip", "again");
    assertEquals(0, restore.code(), restore.err());
    assertTrue(restore.out().startsWith("Made the library again/library: "), restore.out());
    assertEquals(
        ask("covers", "bladed ring").out(),
        ask("covers", "bladed ring", "--library", "again").out());
    assertTrue(ask("restore", "shelf.zip", "again").err().contains("not empty"));
    assertEquals(1, ask("restore", "shelf.zip", "again").code());
  }

  @Test
  void aFileThatIsThereIsReplacedOnlyWhenAsked() throws IOException {
    Path there = Files.writeString(home.resolve("shelf.zip"), "precious");
    Ran refused = ask("backup", "shelf.zip");
    assertEquals(1, refused.code());
    assertEquals("precious", Files.readString(there));
    assertEquals(0, ask("backup", "shelf.zip", "--replace").code());
    assertFalse(Files.size(there) < 100);
  }

  @Test
  void aDamagedLibraryIsKeptAndTheUserIsTold() throws IOException {
    Files.writeString(home.resolve("library/works/dunlavin-1990.json"), "{");
    Ran backup = ask("backup", "shelf.zip");
    assertEquals(0, backup.code(), backup.err());
    assertTrue(
        backup
            .out()
            .endsWith(
                "The library has 1 error, and is in the backup as it is; merese check says which.\n"),
        backup.out());
  }

  @Test
  void jsonIsWhatWasWritten() {
    assertTrue(ask("backup", "shelf.zip", "--json").out().contains("\"files\""));
    assertTrue(ask("restore", "shelf.zip", "again", "--json").out().contains("\"files\""));
  }
}
