package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PullPageTest {
  @TempDir private static Path home;
  private static RunningDesk desk;
  private static String talk;

  @BeforeAll
  static void start() throws IOException {
    desk = RunningDesk.onDemo(home);
    talk = RunningDesk.encoded(Files.readString(Path.of("examples/talk.txt")));
  }

  @AfterAll
  static void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "term=bladed+ring&concept=ring-annulated",
        "concept=ring-spiral-trail",
        "concept=foot-folded",
        "term=air+twist",
        "script="
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    String asked = question.equals("script=") ? question + talk : question;
    Document page = desk.get("/pull?" + asked).page();
    JsonNode answer = desk.get("/pull?" + asked + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
  }

  @Test
  void everyBookHasABoxToTickInBothOrders() throws Exception {
    Document page = desk.get("/pull?script=" + talk).page();
    JsonNode answer = desk.get("/pull?script=" + talk + "&as=json").json();
    int inOrder = answer.get("inOrder").size();
    assertEquals(inOrder, page.select("section[aria-labelledby=in-order] input.tick").size());
    assertEquals(answer.get("byShelf").size(), page.select(".by-shelf input.tick").size());
    assertEquals(
        List.of("In the order of the script", "As they stand on the shelf"),
        page.select("h2").eachText());
  }

  @Test
  void theOrderOfNeedFollowsThatOfTheFeatures() throws Exception {
    Document page = desk.get("/pull?concept=foot-folded&concept=ring-bladed").page();
    String first = page.selectFirst(".take strong").text();
    String up = page.select(".chosen li").get(1).selectFirst("a[aria-label$=up]").attr("href");
    Document moved = desk.get(up).page();
    assertEquals("/pull?concept=ring-bladed&concept=foot-folded", up);
    assertTrue(!moved.selectFirst(".take strong").text().equals(first), first);
  }

  @Test
  void whatIsAmbiguousIsAskedBesideTheForm() throws Exception {
    RunningDesk.Answer answer = desk.get("/pull?term=bladed+ring&term=triple+ring");
    Document page = answer.page();
    assertEquals(422, answer.status());
    assertTrue(page.selectFirst("#problem").text().contains("triple ring"));
    assertEquals(
        List.of("bladed ring", "triple ring"),
        page.select("input[type=hidden][name=term]").eachAttr("value"));
    assertEquals(3, page.select(".several a").size());
    assertEquals(200, desk.get(page.selectFirst(".several a").attr("href")).status());
  }

  @Test
  void anEmptyPageSaysWhatToDo() throws Exception {
    assertTrue(desk.get("/pull").page().selectFirst(".empty").text().contains("script of a talk"));
  }
}
