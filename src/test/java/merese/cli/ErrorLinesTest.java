package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Messages on the error stream fit the screen, and what is to be copied stays whole. */
class ErrorLinesTest {
  private static List<String> lines(String message, int width) {
    return ErrorLines.lines("merese pages:", message, width);
  }

  @Test
  void aMessageIsBrokenBetweenWords() {
    assertEquals(
        List.of(
            "merese pages: the page map says",
            "    that one page of the file is",
            "    two; correct it"),
        lines("the page map says that one page of the file is two; correct it", 34));
  }

  @Test
  void theLinesOfAListKeepTheirMargin() {
    assertEquals(
        List.of(
            "merese pages: it fits two:",
            "  Quenby 1926, Neck and Stopper,",
            "      with plates",
            "  Tressick 1954"),
        lines("it fits two:\n  Quenby 1926, Neck and Stopper, with plates\n  Tressick 1954", 34));
  }

  @Test
  void aLineThatIsPointedIntoStaysAsItIs() {
    String asked = "    ring AND (collar OR band) AND (neck OR lip) AND";
    assertEquals(
        List.of("merese pages: a word is", "    missing", asked, "       ^"),
        lines("a word is missing\n" + asked + "\n       ^", 26));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/home/someone/a library of books/library/works/quenby-neck-and-stopper.json",
        "books/a scan of the first half.pdf",
        "merese pages quenby-1949 --map \"7 = p. [1]; 15–62 = 1–48\" --name \"the plates\"",
        "merese note quenby-1926 \"pp. 42–43\" \"knife-edged rings, three\"",
      })
  void aPathAndACommandStayOnOneLine(String thing) {
    for (String message :
        List.of(
            thing + ": this cannot be read here at all; look at it again, and then once more",
            "this cannot be read by anybody at present: " + thing,
            "try it in another way (" + thing + "), and if it fails look at it by yourself",
            "say it by \"" + thing + "\", or do it in another way by yourself",
            "do it with " + thing + "; that is done in no time and can be taken back")) {
      for (int width = 40; width <= 100; width += 7) {
        List<String> lines = lines(message, width);
        assertEquals(1, lines.stream().filter(l -> l.contains(thing)).count(), lines.toString());
        assertEquals(
            "merese pages: " + message,
            String.join(" ", lines.stream().map(String::strip).toList()));
        int columns = width;
        for (String line : lines) {
          assertTrue(
              line.contains(thing) || line.length() <= columns, width + ": " + lines.toString());
        }
      }
    }
  }

  @Test
  void aRunIsBrokenAtTheTerminalsWidthElseAt80Columns(@TempDir Path folder) throws IOException {
    Path here = Files.createDirectory(folder.resolve("a folder with blanks"));
    for (Map<String, String> screen :
        List.of(
            Map.<String, String>of(),
            Map.of(Screen.TERMINALS, "err", Screen.COLUMNS, "50", "TERM", "dumb"),
            Map.of(Screen.TERMINALS, "err", Screen.COLUMNS, "50", "TERM", "xterm"))) {
      Ran ran = Ran.in(here, screen, "covers", "ring", "--library", "nowhere to be seen/at all");
      int width = screen.isEmpty() ? 80 : 50;
      String shown = ran.errAsShown().replace("\u001B[1;31m", "").replace("\u001B[0m", "");
      assertTrue(shown.contains("nowhere to be seen/at all"), shown);
      List<String> lines = shown.lines().toList();
      assertTrue(lines.size() > 1, shown);
      for (String line : lines) {
        assertTrue(line.length() <= width || line.contains("nowhere to be seen"), shown);
      }
    }
  }
}
