package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import merese.change.LibraryCheck;
import merese.model.Edition;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RemoveCommandTest {
  @TempDir private Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  private LibraryFolder library() {
    return LibraryFolder.open(home.resolve("library"));
  }

  private Edition edition(String work, String key) {
    return library().findWork(work).orElseThrow().value().edition(key);
  }

  /** Whatever is taken out, no reference is left that leads nowhere. */
  private void assertSound() {
    assertEquals(0, LibraryCheck.of(library()).errors());
  }

  @Test
  void withoutApplyNothingHappens() {
    Ran ran = merese("remove", "quenby-1949", "n1");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("--apply"), ran.out());
    assertFalse(Files.exists(home.resolve("library/.lock")), "not even the lock is taken");
  }

  @Test
  void aNoteGoesByItsPlaceAndNothingElse() {
    int notes = edition("quenby-neck-and-stopper", "quenby-1949").notes().size();
    Ran ran = merese("remove", "quenby-1949", "pl. 31", "--apply");
    assertEquals(0, ran.code(), ran.err());
    Edition now = edition("quenby-neck-and-stopper", "quenby-1949");
    assertEquals(notes - 1, now.notes().size());
    assertTrue(now.notes().stream().noneMatch(note -> note.id().equals("n1")));
    assertSound();
  }

  @Test
  void aPlaceOfSeveralNotesNamesThem() {
    Ran ran = merese("remove", "quenby-1968", "p. 84", "--apply");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("n4 (“diamond-cut rings”"), ran.err());
  }

  @Test
  void anEditionThatIsNeededStaysUnlessItsReferencesAreCleared() {
    Ran refused = merese("remove", "quenby-1926", "--apply");
    assertEquals(1, refused.code());
    assertTrue(refused.err().contains("facsimile of quenby-1926"), refused.err());
    Ran cleared = merese("remove", "quenby-1926", "--clear-references", "--apply");
    assertEquals(0, cleared.code(), cleared.err());
    assertTrue(
        edition("quenby-neck-and-stopper", "quenby-1977").lineage().get().parent().isEmpty());
    assertSound();
  }

  @Test
  void aWorkGoesWithItsFileAndTheLinksToIt() {
    Ran ran = merese("remove", "tressick-cut-and-blown", "--clear-references", "--apply");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("tressick-1954 with 22 notes, 2 copies, 5 checks"), ran.out());
    assertTrue(library().findWork("tressick-cut-and-blown").isEmpty());
    assertSound();
  }

  @Test
  void theOnlyEditionOfAWorkIsTheWork() {
    assertEquals(
        merese("remove", "tressick-cut-and-blown").out(), merese("remove", "tressick-1954").out());
  }

  @Test
  void aPieceIsTakenOutOfTheNotesThatAreOfIt() {
    assertEquals(1, merese("remove", "d-3", "--apply").code());
    assertEquals(0, merese("remove", "d-3", "--clear-references", "--apply").code());
    assertTrue(library().findObject("d-3").isEmpty());
    assertSound();
  }

  @Test
  void aCheckAndACopyGoAlone() {
    Edition before = edition("one-foot-on-the-table", "osmere-1988");
    assertEquals(0, merese("remove", "osmere-1988", "--check", "knop-acorn", "--apply").code());
    assertEquals(
        0,
        merese("remove", "osmere-1988", "--copy", "osmere-1988-a", "--clear-references", "--apply")
            .code());
    Edition now = edition("one-foot-on-the-table", "osmere-1988");
    assertEquals(before.checks().size() - 1, now.checks().size());
    assertEquals(before.copies().size() - 1, now.copies().size());
    assertEquals(before.notes(), now.notes());
    assertSound();
  }

  @Test
  void somebodyAtTheTerminalIsAsked() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            new ByteArrayInputStream("y\n".getBytes(StandardCharsets.UTF_8)),
            out,
            err,
            Map.of(Screen.TERMINALS, "out in err"),
            home,
            "remove",
            "quenby-1949",
            "n1");
    assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("Remove it?"));
    assertTrue(out.toString(StandardCharsets.UTF_8).endsWith("Done: 1 file written or deleted.\n"));
  }

  @Test
  void whatWasTakenOutComesBackByteForByte() throws IOException {
    Map<String, String> before = files();
    for (String[] words :
        new String[][] {
          {"remove", "quenby-1926", "--clear-references", "--apply"},
          {"remove", "d-3", "--clear-references", "--apply"},
          {"remove", "tressick-cut-and-blown", "--clear-references", "--apply"},
          {"remove", "norrish-1971", "n1", "--apply"}
        }) {
      assertEquals(0, merese(words).code());
      assertEquals(0, merese("undo").code());
      assertEquals(before, files(), () -> String.join(" ", words));
    }
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    for (LibraryFile file : library().scan()) {
      files.put(file.relative(), Files.readString(file.path()));
    }
    return files;
  }
}
