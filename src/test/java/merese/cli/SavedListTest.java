package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.desk.RunningDesk;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the desk saves is what the terminal writes, letter by letter. */
class SavedListTest {
  @TempDir private static Path home;
  private static RunningDesk desk;

  @BeforeAll
  static void start() throws IOException {
    desk = RunningDesk.onDemo(home);
  }

  @AfterAll
  static void stop() {
    desk.close();
  }

  private static String terminal(String... args) throws IOException {
    Path file = home.resolve("list");
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--library", desk.library().path().toString()));
    all.addAll(List.of("--output", file.toString()));
    Ran ran = Ran.in(home, Map.of(), all.toArray(new String[0]));
    assertEquals(0, ran.code(), ran.err());
    return Files.readString(file);
  }

  @ParameterizedTest
  @CsvSource({
    "text, mhra-notes",
    "markdown, mhra-notes",
    "html, mhra-notes",
    "html, chicago-notes-bibliography",
    "markdown, apa",
    "text, iso690-numeric-en"
  })
  void aListIsSavedAsTheTerminalWritesIt(String form, String style) throws Exception {
    String address = "/reading-list?term=bladed+ring&term=triple+ring&consulted=on&style=" + style;
    Document page = desk.get(address).page();
    String saved = desk.get(page.selectFirst("a[data-save=" + form + "]").attr("href")).text();
    assertEquals(
        terminal(
            "reading-list",
            "bladed ring",
            "triple ring",
            "--consulted",
            "--style",
            style,
            "--as",
            form),
        saved);
  }

  @Test
  void aListForAScriptWithinANumberOfBytesIsTheSame() throws Exception {
    Path talk = Path.of("examples/talk.txt").toAbsolutePath();
    String script = RunningDesk.encoded(Files.readString(talk));
    String saved = desk.get("/reading-list/save?as=text&fit=400&script=" + script).text();
    assertEquals(terminal("reading-list", "--script", talk.toString(), "--fit", "400"), saved);
    String whole = desk.get("/reading-list/save?as=html&script=" + script).text();
    assertEquals(terminal("reading-list", "--script", talk.toString(), "--as", "html"), whole);
  }

  @Test
  void bibtexIsTheSame() throws Exception {
    Document page = desk.get("/reading-list?concept=ring-bladed").page();
    String saved = desk.get(page.selectFirst("a[data-save=bibtex]").attr("href")).text();
    List<String> args = new ArrayList<>(List.of("export", "--as", "bibtex"));
    args.addAll(page.select("input[name=out]").eachAttr("value"));
    assertEquals(terminal(args.toArray(new String[0])), saved);
  }
}
