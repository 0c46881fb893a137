package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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

class FindPageTest {
  /** Where the marks are; the page shows them, and the roles in words of its own. */
  private static final Set<String> IN_OTHER_WORDS =
      Set.of(
          "hits/heading/marks/start",
          "hits/heading/marks/end",
          "hits/passages/text/marks/start",
          "hits/passages/text/marks/end",
          "hits/passages/role");

  @TempDir private static Path home;
  private static RunningDesk desk;

  @BeforeAll
  static void start() throws IOException {
    desk = RunningDesk.onDemo(home);
  }

  @AfterAll
  static void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "words=join+felt",
        "words=ring&limit=200",
        "words=author%3Anorrish+%22ringed+decanter%22",
        "words=spiral+thread",
        "words=nosuchword"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/find?" + question).page();
    var answer = desk.get("/find?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @Test
  void theWordsAreMarkedWhereTheyStand() throws Exception {
    Document page = desk.get("/find?words=%22wet+hand%22").page();
    assertEquals(List.of("wet hand"), page.select("ol.entries mark").eachText());
    assertTrue(page.selectFirst(".entry .source").attr("href").equals("/shelf/quenby-1926"));
  }

  @Test
  void aQuestionThatCannotBeReadStaysInItsBox() throws Exception {
    RunningDesk.Answer answer = desk.get("/find?words=concept%3Anosuch");
    assertEquals(422, answer.status());
    assertEquals("concept:nosuch", answer.page().selectFirst("#words").val());
    assertTrue(answer.page().selectFirst("#problem").text().contains("nosuch"));
  }
}
