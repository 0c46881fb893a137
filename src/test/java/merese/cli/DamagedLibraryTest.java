package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every answer from a damaged library says, on standard error, that it is incomplete. */
class DamagedLibraryTest {
  @TempDir private Path folder;
  private Path home;

  @BeforeEach
  void makeALibrary() {
    home = new Shelves(folder).of("rings");
  }

  private Ran ask(String... args) {
    return Ran.in(home, Map.of("COLUMNS", "200"), args);
  }

  private void cut(String file, int length) throws IOException {
    Path path = home.resolve("library").resolve(file);
    Files.writeString(path, Files.readString(path).substring(0, length));
  }

  @Test
  void theAnswerIsGivenWithItsExitCodeAndTheFileIsNamedWithItsPlace() throws IOException {
    Ran sound = ask("covers", "bladed ring");
    cut("works/dunlavin-1990.json", 40);
    Ran ran = ask("covers", "bladed ring");
    assertEquals(0, ran.code());
    assertTrue(sound.out().contains("Dunlavin 1990"), sound.out());
    assertTrue(ran.out().contains("4 sources cover it"), ran.out());
    assertFalse(ran.out().contains("Dunlavin"), ran.out());
    List<String> said = ran.err().lines().toList();
    assertEquals("This answer is incomplete:", said.get(0));
    assertTrue(said.get(1).startsWith("  library/works/dunlavin-1990.json:3:"), ran.err());
    assertTrue(ran.err().contains("(nothing of this file is in it)"), ran.err());
    assertEquals("  merese check says what to do.", said.get(said.size() - 1));
  }

  @Test
  void aLinkOutOfTheLibraryIsNotReadAndTheRestAnswers() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secretword");
    for (String link : List.of("works/link.json", "objects/link.json", "vocabulary/link.json")) {
      Files.createSymbolicLink(home.resolve("library").resolve(link), secret);
    }
    Files.deleteIfExists(home.resolve("library/mine.json"));
    Files.createSymbolicLink(home.resolve("library/mine.json"), secret);
    Ran covers = ask("covers", "bladed ring");
    assertEquals(0, covers.code());
    assertTrue(covers.out().contains("4 sources cover it"), covers.out());
    Ran check = ask("check");
    String said = covers.err() + check.out() + ask("edit", "works/link").err();
    assertFalse(said.contains("secretword"), said);
    for (String link : List.of("works/link", "objects/link", "vocabulary/link", "mine")) {
      assertTrue(
          check
              .out()
              .contains(
                  "library/"
                      + link
                      + ".json: this is a link that leads out of the library, and is not followed;"
                      + " put the file itself there"),
          check.out());
    }
  }

  @Test
  void aLibraryThatIsReachedThroughALinkIsWhole() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("by-link"), home.resolve("library"));
    assertEquals(0, ask("check", "--library", link.toString()).code());
  }

  @Test
  void aDamagedChangeOfTheHistoryIsNamedAndTheOthersAreListed() throws IOException {
    assertEquals(
        0, ask("add", "--kind", "monograph", "--title", "Stoppers", "--year", "1950").code());
    Path entry = home.resolve("library/.history/00000007.json");
    Files.writeString(entry, "{ junk");
    Ran history = ask("history");
    assertEquals(0, history.code(), history.err());
    assertTrue(history.out().contains("add “Stoppers”"), history.out());
    assertTrue(history.out().contains("00000007.json:1:3: warning: change 7"), history.out());
    Ran check = ask("check");
    assertEquals(0, check.code(), check.out());
    assertTrue(check.out().contains("library/.history/00000007.json:1:3: warning:"), check.out());
    assertEquals(0, ask("undo", "1").code());
  }

  @Test
  void jsonIsTheAnswersOwnRecordAndTheErrorStreamSaysWhatItLacks() throws IOException {
    String sound = ask("covers", "ring-plain", "--json").out();
    cut("works/dunlavin-1990.json", 40);
    Ran ran = ask("covers", "ring-plain", "--json");
    assertTrue(ran.out().startsWith("{") && !ran.out().contains("incomplete"), ran.out());
    assertFalse(sound.isEmpty());
    assertTrue(ran.err().contains("dunlavin-1990.json:3:"), ran.err());
  }

  @Test
  void aQuestionThatFailsSaysItToo() throws IOException {
    cut("vocabulary/ring.json", 40);
    Ran ran = ask("covers", "ring", "--facet", "nothing");
    assertEquals(ask("covers", "ring", "--facet", "nothing").code(), ran.code());
    assertFalse(ran.code() == 0);
    assertTrue(ran.err().startsWith("merese covers: there is no facet"), ran.err());
    assertTrue(ran.err().contains("library/vocabulary/ring.json:"), ran.err());
    assertTrue(ran.err().contains("(what this file said before is used)"), ran.err());
  }

  @Test
  void everyCommandThatAnswersSaysIt() throws IOException {
    cut("works/dunlavin-1990.json", 40);
    for (List<String> asked :
        List.of(
            List.of("covers", "bladed ring"),
            List.of("fewest", "bladed ring"),
            List.of("concordance", "bladed ring"),
            List.of("witnesses", "bladed ring"),
            List.of("editions", "quenby-1926"),
            List.of("first", "bladed ring"),
            List.of("gaps"),
            List.of("pull", "bladed ring"),
            List.of("claims", "bladed ring"),
            List.of("identify", "join=felt"),
            List.of("quote", "bladed ring"),
            List.of("rights", "bladed ring"),
            List.of("literature", "bladed ring"),
            List.of("find", "ring"),
            List.of("reading-list", "bladed ring"),
            List.of("cite", "quenby-1926"),
            List.of("export"))) {
      Ran ran = ask(asked.toArray(String[]::new));
      assertTrue(ran.err().contains("This answer is incomplete:"), asked + ": " + ran);
    }
  }

  @Test
  void atMostFiveFilesAreNamed() throws IOException {
    List<String> files =
        List.of("calloway-2003", "dunlavin-1990", "farrow-1988", "haskeld-1983", "norrish-1971");
    for (String file : files) {
      cut("works/" + file + ".json", 40);
    }
    assertTrue(ask("covers", "bladed ring").err().endsWith("merese check says what to do.\n"));
    cut("works/tressick-1954.json", 40);
    cut("works/ruddick-2016.json", 40);
    Ran ran = ask("covers", "bladed ring");
    assertEquals(0, ran.code());
    for (String file : files) {
      assertTrue(ran.err().contains(file), ran.err());
    }
    assertFalse(ran.err().contains("tressick"), ran.err());
    assertTrue(
        ran.err().endsWith("  and 2 more; merese check lists them all, and what to do\n"),
        ran.err());
  }
}
