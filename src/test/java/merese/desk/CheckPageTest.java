package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import merese.desk.RunningDesk.Answer;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckPageTest {
  private static final String WORK = "works/quenby-neck-and-stopper.json";

  /** It comes before the other by its name. */
  private static final String FIRST = "works/imberry-the-stem.json";

  @TempDir private Path home;
  private RunningDesk desk;

  @BeforeEach
  void start() throws IOException {
    desk = RunningDesk.onDemo(home);
  }

  @AfterEach
  void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  private String text(String file) throws IOException {
    return Files.readString(desk.library().path().resolve(file), StandardCharsets.UTF_8);
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(desk.library().path().resolve(file), text, StandardCharsets.UTF_8);
  }

  /** Gives a work another title, twice. */
  private void titleTwice(String file) throws IOException {
    String text = text(file);
    write(
        file,
        text.replaceFirst(
            "(\"subtitle\": [^\n]*\n)", "$1  \"alternateTitles\": [\"Necks\", \"Necks\"],\n"));
  }

  @Test
  void aSoundLibraryHasNothingToMend() throws Exception {
    Path sound = home.resolve("sound");
    Files.createDirectories(sound);
    try (RunningDesk empty =
        RunningDesk.on(merese.store.LibraryFolder.create(sound.resolve("library"), "Empty"))) {
      Document page = empty.get("/check").page();
      assertTrue(page.selectFirst(".empty").text().contains("Nothing to mend"));
      assertEquals(List.of(), empty.faults());
    }
  }

  @Test
  void saysAllThatIsFoundErrorsFirst() throws Exception {
    titleTwice(FIRST);
    write(WORK, text(WORK).replaceFirst("\"kind\": \"[a-z-]+\"", "\"kind\": \"novel\""));
    Document page = desk.get("/check").page();
    var answer = desk.get("/check?as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of("problems/remedy")));
    List<String> headings = page.select(".findings h2").eachText();
    assertEquals(WORK, headings.get(0));
    assertTrue(headings.contains(FIRST), headings.toString());
    assertTrue(page.selectFirst(".findings .finding").text().startsWith("Error line "));
  }

  @Test
  void putsRightWhatIsSafeAsOneChangeThatCanBeTakenBack() throws Exception {
    titleTwice(WORK);
    String wrong = text(WORK);
    Answer answer = desk.post("/check");
    assertEquals(200, answer.status());
    String said = answer.page().selectFirst(".put-right").text();
    assertTrue(said.contains("the other title \"Necks\" stood there twice"), said);
    assertFalse(text(WORK).equals(wrong));
    assertEquals(text(WORK).indexOf("\"Necks\""), text(WORK).lastIndexOf("\"Necks\""));
    String number = answer.page().selectFirst(".done input[name=number]").val();
    desk.post("/undo", "number", number);
    assertEquals(wrong, text(WORK));
  }

  @Test
  void whereNothingIsSafeItSaysSoAndChangesNothing() throws Exception {
    String before = text(WORK);
    Answer answer = desk.post("/check");
    assertTrue(answer.page().selectFirst(".put-right").text().contains("nothing that could be"));
    assertEquals(0, answer.page().select(".done").size());
    assertEquals(before, text(WORK));
  }

  @Test
  void withoutItsTokenNothingIsMended() throws Exception {
    titleTwice(WORK);
    String wrong = text(WORK);
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/check"))
                .POST(HttpRequest.BodyPublishers.noBody())
                .build());
    assertEquals(403, answer.status());
    assertEquals(wrong, text(WORK));
  }

  @Test
  void aFileThatCannotBeReadIsMendedFromWhereItIsNamed() throws Exception {
    String sound = text(WORK);
    for (String file : List.of(WORK, "vocabulary/ring.json", "mine.json", "objects/d-17.json")) {
      String before = text(file);
      write(file, before.substring(0, before.length() - 20));
      Document page = desk.get("/check").page();
      Element finding =
          page.select(".findings").stream()
              .filter(f -> f.selectFirst("h2").text().equals(file))
              .findFirst()
              .orElseThrow();
      String address = finding.selectFirst("a").attr("href");
      assertTrue(
          page.selectFirst(".caution").select("a").eachAttr("href").contains(address)
              || file.startsWith("objects/"),
          address);
      assertFalse(page.text().contains(home.toString()), "no page says where the library is");
      assertTrue(page.selectFirst(".caution").text().contains(file), file);
      Document edit = desk.get(address).page();
      assertEquals(
          before.substring(0, before.length() - 20),
          edit.selectFirst("textarea").wholeText().replaceFirst("^\n", ""),
          address);
      String read = edit.selectFirst("[name=read]").val();
      Answer saved = desk.post(address, "text", before, "read", read);
      assertTrue(saved.status() < 400, saved.text());
      assertEquals(before, text(file));
    }
    assertEquals(sound, text(WORK));
    assertEquals(0, desk.get("/check").page().select(".caution").size());
  }
}
