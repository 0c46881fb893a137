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
import merese.model.Work;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesPageTest {
  private static final String WORK = "works/quenby-neck-and-stopper.json";

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

  /** Its other title; as the demo has it, it has none. */
  private String title() {
    List<String> titles = work().value().alternateTitles();
    return titles.isEmpty() ? "none" : titles.get(0);
  }

  private Stored<Work> work() {
    LibraryFolder library = LibraryFolder.open(desk.library().path());
    return library.readWork(library.path().resolve(WORK));
  }

  private int retitle(String title) {
    try (ChangeSet change = desk.library().change("title " + title)) {
      Stored<Work> work = work();
      change.save(work, work.value().withAlternateTitles(List.of(title)));
      change.commit();
      return change.number().orElseThrow();
    }
  }

  /** Sends the form from a page, as a browser does. */
  private Answer undoFrom(String page, String fields) throws Exception {
    String body = "token=" + desk.token() + fields;
    return desk.send(
        HttpRequest.newBuilder(desk.uri("/undo"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Referer", page)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  @Test
  void aLibraryThatNobodyHasChangedSaysSo() throws Exception {
    Document page = desk.get("/changes").page();
    assertTrue(page.selectFirst(".empty").text().contains("No change has been made"));
  }

  @Test
  void aLongLineIsShortAndItsTitleHoldsAll() throws Exception {
    String longTitle = "Neck".repeat(750);
    Answer answer =
        desk.post(
            "/vocabulary",
            "facet",
            "ring",
            "id",
            "ring-long",
            "label",
            longTitle,
            "definition",
            "A ring.");
    assertEquals(200, answer.status());
    Element line = desk.get("/changes").page().selectFirst(".change p span[title]");
    assertTrue(line.attr("title").contains(longTitle), line.attr("title"));
    assertTrue(line.text().length() < 170, line.text());
    assertTrue(line.text().endsWith("…"), line.text());
  }

  @Test
  void takesTheLastChangeBackAndPutsItBack() throws Exception {
    int number = retitle("Neck and Shoulder");
    Answer undone = desk.post("/undo");
    assertEquals("/changes?done=" + (number + 1), undone.address());
    assertEquals("none", title());
    String what = undone.page().selectFirst("#change-" + number + " p").text();
    assertTrue(what.contains("title Neck and Shoulder"), what);
    assertTrue(
        undone
            .page()
            .selectFirst(".done")
            .text()
            .startsWith("Taken back: title Neck and Shoulder"));
    Answer redone = desk.post("/undo", "redo", "on");
    assertTrue(
        redone.page().selectFirst(".done").text().startsWith("Put back: title Neck and Shoulder"));
    assertEquals(List.of(), redone.page().getElementsContainingOwnText("undo of").eachText());
    assertEquals("/changes?done=" + (number + 2), redone.address());
    assertEquals("Neck and Shoulder", title());
  }

  @Test
  void eachChangeHasTheButtonThatFitsIt() throws Exception {
    int first = retitle("One");
    int second = retitle("Two");
    desk.post("/undo", "number", Integer.toString(second));
    assertEquals("One", title());
    Document page = desk.get("/changes").page();
    assertEquals("Put it back", page.selectFirst("#change-" + (second + 1) + " button").text());
    assertEquals(0, page.select("#change-" + second + " button").size());
    assertTrue(page.selectFirst("#change-" + second).text().contains("taken back"));
    assertEquals("Take it back", page.selectFirst("#change-" + first + " button").text());
    desk.post("/undo", "number", Integer.toString(second + 1));
    assertEquals("Two", title());
  }

  @Test
  void leadsBackToThePageOfThisDeskItCameFrom() throws Exception {
    int number = retitle("One");
    Answer answer =
        undoFrom(desk.address() + "shelf/quenby-1926?done=" + number + "&all=on", "&number=1");
    assertEquals(303, answer.status());
    assertEquals("/shelf/quenby-1926?all=on&done=" + (number + 1), answer.address());
  }

  @Test
  void leadsNowhereElse() throws Exception {
    for (String page :
        List.of(
            "http://example.org/shelf",
            "http://127.0.0.1:1/shelf",
            desk.address() + "/example.org/",
            desk.address() + "undo",
            "no address at all")) {
      int number = retitle("From " + page);
      Answer answer = undoFrom(page, "");
      assertEquals("/changes?done=" + (number + 1), answer.address(), page);
    }
  }

  @Test
  void whatWouldLoseLaterWorkIsRefusedAndSaysWhatToDo() throws Exception {
    int first = retitle("One");
    int second = retitle("Two");
    Answer answer = desk.post("/undo", "number", Integer.toString(first));
    assertEquals(422, answer.status());
    String problem = answer.page().selectFirst("#problem").text();
    assertTrue(problem.contains("take back first what came after it: " + second), problem);
    assertFalse(problem.contains(home.toString()), problem);
    Document page = answer.page();
    assertEquals(0, page.select("#change-" + first + " button").size());
    String beside = page.selectFirst("#change-" + first).text();
    assertTrue(beside.contains("take back first what came after it: " + second), beside);
    assertEquals(1, page.select("#change-" + second + " button").size());
    assertEquals("Two", title());
  }

  @Test
  void whatIsTakenBackAlreadyOrIsNoNumberIsRefused() throws Exception {
    int number = retitle("One");
    desk.post("/undo", "number", Integer.toString(number));
    Answer twice = desk.post("/undo", "number", Integer.toString(number));
    assertEquals(422, twice.status());
    assertTrue(twice.page().selectFirst("#problem").text().contains("is taken back already"));
    assertEquals(422, desk.post("/undo", "number", "seven").status());
    assertEquals(422, desk.get("/changes?page=9").status());
  }

  @Test
  void withoutItsTokenNothingIsTakenBack() throws Exception {
    retitle("One");
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/undo"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("number=1"))
                .build());
    assertEquals(403, answer.status());
    assertEquals("One", title());
  }

  @Test
  void aHundredStandOnAPageAndAllThatIsAnsweredIsShown() throws Exception {
    for (int i = 1; i <= 103; i++) {
      retitle("Title " + i);
    }
    Document first = desk.get("/changes").page();
    assertEquals(100, first.select(".changes > li").size());
    assertEquals("/changes?page=2", first.selectFirst("[rel=next]").attr("href"));
    Document second = desk.get("/changes?page=2").page();
    assertEquals(3, second.select(".changes > li").size());
    assertFalse(second.select("[rel=prev]").isEmpty());
    var answer = desk.get("/changes?page=2&as=json").json();
    assertEquals("title Title 1", answer.get("changes").get(2).get("what").asText());
    assertEquals(List.of(), AllShown.missing(answer, second, Set.of("changes/takesBack")));
  }

  @Test
  void aDamagedHistoryIsSaidInWords() throws Exception {
    retitle("One");
    try (var files = Files.walk(desk.library().path().resolve(".history"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.write(file, "{".getBytes(StandardCharsets.UTF_8));
      }
    }
    Document page = desk.get("/changes").page();
    assertTrue(
        page.selectFirst(".wrong").text().contains("change 1 of the history cannot be read"));
  }
}
