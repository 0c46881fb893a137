package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import merese.model.Work;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RemovePageTest {
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

  private Work work(String id) {
    return desk.library().findWork(id).orElseThrow().value();
  }

  private boolean hasNote(String id) {
    return work("farrow-triple-ringed").editions().get(0).notes().stream()
        .anyMatch(note -> note.id().equals(id));
  }

  /** Sends the form of a page as it stands. */
  private RunningDesk.Answer confirm(Document page, String form) throws Exception {
    Element sent = page.getElementById(form);
    List<String> fields = new ArrayList<>();
    for (Element field : sent.select("input[name]")) {
      if (!field.attr("name").equals("token")) {
        fields.add(field.attr("name"));
        fields.add(field.val());
      }
    }
    return desk.post(sent.attr("action"), fields.toArray(String[]::new));
  }

  @Test
  void aNoteIsShownThenRemovedThenBroughtBack() throws Exception {
    String question = "/remove?name=farrow-1988&note=n1";
    Document page = desk.get(question).page();
    var answer = desk.get(question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of("effects/sort")));
    assertTrue(hasNote("n1"));
    var led = confirm(page, "remove");
    assertTrue(led.address().startsWith("/shelf/farrow-1988?done="), led.address());
    assertFalse(hasNote("n1"));
    desk.takeBack(led);
    assertTrue(hasNote("n1"));
  }

  @Test
  void whatIsNeededIsRefusedUntilItsReferencesGoAsWell() throws Exception {
    Document page = desk.get("/remove?name=quenby-1926").page();
    assertTrue(page.select(".needed li").size() > 0, page.text());
    assertEquals(0, page.select("form#remove").size());
    var forced = desk.post("/remove", "name", "quenby-1926", "seen", "anything");
    assertEquals(409, forced.status());
    Document clearing = desk.get(page.select("a.button[href*=clear=on]").attr("href")).page();
    var led = confirm(clearing, "remove");
    assertTrue(led.address().startsWith("/shelf?done="), led.address());
    assertTrue(
        work("quenby-neck-and-stopper").editions().stream()
            .noneMatch(edition -> edition.key().equals("quenby-1926")));
  }

  @Test
  void aWorkAndACopyGo() throws Exception {
    String copy = work("farrow-triple-ringed").editions().get(0).copies().get(0).id();
    confirm(desk.get("/remove?name=farrow-1988&clear=on&copy=" + copy).page(), "remove");
    assertEquals(List.of(), work("farrow-triple-ringed").editions().get(0).copies());
    Document page = desk.get("/remove?name=farrow-1988&clear=on").page();
    assertTrue(page.select("h1").text().contains("the work farrow-triple-ringed"), page.text());
    confirm(page, "remove");
    assertTrue(desk.library().findWork("farrow-triple-ringed").isEmpty());
  }

  /** A note that was added since would go unseen. */
  @Test
  void whatHasChangedSinceItWasShownIsShownAgain() throws Exception {
    Document page = desk.get("/remove?name=farrow-1988&clear=on").page();
    confirm(desk.get("/remove?name=farrow-1988&note=n1").page(), "remove");
    var again = confirm(page, "remove");
    assertEquals(409, again.status());
    assertTrue(again.page().select("#problem").text().contains("has changed"), again.text());
    assertTrue(desk.library().findWork("farrow-triple-ringed").isPresent());
    assertEquals(200, confirm(again.page(), "remove").status());
    assertTrue(desk.library().findWork("farrow-triple-ringed").isEmpty());
  }

  @Test
  void whatIsNotThereIsSaidAndKept() throws Exception {
    var unknown = desk.get("/remove?name=farrow-1989&note=n1");
    assertEquals(422, unknown.status());
    assertTrue(unknown.page().select("#problem").text().contains("farrow-1988"), unknown.text());
    assertEquals("farrow-1989", unknown.page().select("[name=name]").val());
    assertEquals("n1", unknown.page().select("[name=note]").val());
    assertEquals(200, desk.get("/remove").status());
  }

  @Test
  void worksAreMergedOnceSeen() throws Exception {
    String question = "/merge?keep=farrow-1988&others=varnell-1938";
    Document page = desk.get(question).page();
    var answer = desk.get(question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of("effects/sort")));
    var led = confirm(page, "merge");
    assertEquals(200, led.status());
    assertTrue(
        work("farrow-triple-ringed").editions().stream()
            .anyMatch(edition -> edition.key().equals("varnell-1938")));
    desk.takeBack(led);
    assertEquals(1, work("farrow-triple-ringed").editions().size());
    var refused = desk.get("/merge?keep=farrow-1988&others=no-such-work");
    assertEquals(422, refused.status());
    assertEquals("no-such-work", refused.page().select("[name=others]").text().strip());
  }

  @Test
  void anEditionIsSplitOffOnceSeen() throws Exception {
    String question = "/split?keys=quenby-1968&title=Later+Necks";
    Document page = desk.get(question).page();
    var answer = desk.get(question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of("effects/sort")));
    var led = confirm(page, "split");
    assertTrue(led.address().startsWith("/shelf/quenby-1968?done="), led.address());
    assertEquals("Later Necks", work("quenby-1968").title());
    var refused = desk.get("/split?keys=farrow-1988");
    assertEquals(422, refused.status());
  }

  @Test
  void withoutTokenNothingIsRemoved() throws Exception {
    for (String address : List.of("/remove", "/merge", "/split")) {
      var refused =
          desk.send(
              HttpRequest.newBuilder(desk.uri(address))
                  .header("Content-Type", "application/x-www-form-urlencoded")
                  .POST(HttpRequest.BodyPublishers.ofString("name=farrow-1988"))
                  .build());
      assertEquals(403, refused.status());
    }
  }
}
