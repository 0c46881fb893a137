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

/** Sittings from a script, and at a terminal that cannot be steered. */
class SittingCommandTest {
  @TempDir private Path folder;
  private Path shelf;

  @BeforeEach
  void makeTheShelf() {
    shelf = new Shelves(folder).of("rings");
  }

  @Test
  void aScriptNotesLineByLineAndLogsWhatItWasFor() throws IOException {
    Ran ran =
        Ran.piped(
            """
            p. 38

            sharp ring
            +
            pl. XIII | annulated ring | "thrice | ridged" --pictured --date c. 1790–1810
            undo
            +
            knife ring --drawing
            """,
            shelf,
            "sitting",
            "quenby-1926",
            "--for",
            "neck-ring",
            "--read");
    assertEquals("", ran.err());
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("p. 39: nothing noted yet."), ran.out());
    assertTrue(ran.out().contains("Taken back: pl. XIII (photo)"), ran.out());
    assertTrue(
        ran.out().contains("Quenby 1926, pp. 38–40, read for neck ring: 2 notes"), ran.out());
    String file = Files.readString(shelf.resolve("library/works/quenby-1926.json"));
    assertTrue(file.contains("\"knife ring\""), file);
    assertFalse(file.contains("thrice"), file);
    assertTrue(file.contains("\"extent\": \"pp. 38–40\""), file);
  }

  @Test
  void aLineThatIsRefusedIsNumberedAndTheOthersAreNoted() {
    Ran ran =
        Ran.piped(
            "p. 38\ncollar\nring --dte 1795\nfig. 3 --pictured\nsharp ring\n",
            shelf,
            "sitting",
            "quenby-1926");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("line 2: “collar”: the word is used"), ran.err());
    assertTrue(ran.errAsShown().contains("    merese (merese): "), ran.err());
    assertTrue(ran.errAsShown().contains("line 3: there is no option --dte"), ran.err());
    assertTrue(ran.errAsShown().contains("line 4: what is it called there?"), ran.err());
    assertTrue(ran.out().contains("1 note taken"), ran.out());
    assertTrue(ran.out().contains("--for TERM --read does it"), ran.out());
  }

  @Test
  void aWordThatSomebodyMayMeanForACommandIsNotedAfterABarAlone() throws IOException {
    Ran ran = Ran.piped("p. 38\nexit\nredo\n| exit\n", shelf, "sitting", "quenby-1926");
    assertEquals(1, ran.code());
    String said = ran.err().replaceAll("\\s+", " ");
    assertTrue(
        said.contains(
            "line 2: “exit” is no command here; end ends the sitting. To note it as a term, write"
                + " it after a bar: | exit"),
        said);
    assertTrue(said.contains("line 3: “redo” is no command here"), said);
    assertFalse(said.contains("Mend the line"), said);
    assertTrue(ran.out().contains("1 note taken"), ran.out());
    String file = Files.readString(shelf.resolve("library/works/quenby-1926.json"));
    assertTrue(file.contains("\"printed\": \"exit\""), file);
  }

  @Test
  void whatThePagesWereLookedThroughForNeedsTheHow() {
    assertEquals(2, Ran.piped("", shelf, "sitting", "quenby-1926", "--for", "neck-ring").code());
    assertEquals(2, Ran.piped("", shelf, "sitting", "quenby-1926", "--read").code());
  }

  @Test
  void aLineFitsTheScreen() {
    for (int width : new int[] {80, 60, 40}) {
      Ran ran =
          Ran.run(
              "p. 41\nhelp\ncollar --as neck-ring\ncut rings --unassigned\nhere\n",
              shelf,
              Map.of("COLUMNS", Integer.toString(width)),
              "sitting",
              "quenby-1926");
      for (String line : ran.out().lines().toList()) {
        assertTrue(Wrap.columns(line) <= width, line);
      }
      Ran.in(shelf, Map.of(), "undo");
      Ran.in(shelf, Map.of(), "undo");
    }
  }
}
