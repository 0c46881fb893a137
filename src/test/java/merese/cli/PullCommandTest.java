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

class PullCommandTest {
  @TempDir private Path folder;
  private Path home;

  @BeforeEach
  void prepare() {
    home = new Shelves(folder).of("rings");
  }

  private Ran pull(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "pull";
    System.arraycopy(words, 0, all, 1, words.length);
    return Ran.in(home, Map.of(), all);
  }

  @Test
  void thePageToPrintIsOfThePaperAskedForAndCutsNoBook() {
    Ran ran = pull("ring-bladed", "--html", "--paper", "letter");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("@page { size: Letter; margin: 15mm; }"), ran.out());
    assertTrue(ran.out().contains(".item, .first, .whole { page-break-inside: avoid;"), ran.out());
    assertTrue(pull("ring-bladed", "--html").out().contains("@page { size: A4;"));
  }

  @Test
  void aFileIsWrittenOnceAndNeverOver() throws IOException {
    Path target = home.resolve("list.html");
    assertEquals(0, pull("ring-bladed", "--html", "--out", "list.html").code());
    String written = Files.readString(target);
    Ran again = pull("neck ring", "--html", "--out", "list.html");
    assertEquals(1, again.code());
    assertTrue(again.err().contains("is there already"), again.err());
    assertEquals(written, Files.readString(target));
  }

  @Test
  void theCautionStandsOnceAtTheEnd() {
    String out = pull("ring-bladed").out();
    int at = out.indexOf("usually in copyright");
    assertTrue(at > 0 && at == out.lastIndexOf("usually in copyright"), out);
    assertTrue(out.strip().endsWith("law."), out);
  }

  @Test
  void aScriptTakesNoTermsBesideIt() throws IOException {
    Files.writeString(home.resolve("talk.txt"), "[tressick-1954 fig. 70]");
    assertEquals(2, pull("ring-bladed", "--script", "talk.txt").code());
    Ran ran = pull("--script", "talk.txt");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("“figure seventy, in the nineteen fifty-four book”"), ran.out());
    assertFalse(ran.out().contains("Norrish"), ran.out());
  }

  @Test
  void theWholeAnswerIsThereAsJson() {
    Ran ran = pull("ring-bladed", "--json");
    assertTrue(ran.out().contains("\"byShelf\" : ["), ran.out());
    assertTrue(ran.out().contains("\"spoken\" : \"plate twelve, "), ran.out());
  }
}
