package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

class WitnessesPageTest {
  private static final Set<String> IN_OTHER_WORDS = Set.of();

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
        "term=folded+foot",
        "concept=ring-bladed",
        "term=target+stopper&term=folded+foot",
        "concept=trail-chain"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/witnesses?" + question).page();
    var answer = desk.get("/witnesses?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @Test
  void whoFollowsWhomIsThereForTheDrawing() throws Exception {
    Document page = desk.get("/witnesses?term=folded+foot").page();
    var pendry = page.selectFirst("tr[data-source=pendry-1976]");
    assertEquals("imberry-1934", pendry.attr("data-witness"));
    assertEquals("Imberry 1934", pendry.selectFirst("[data-step=REPEATS]").attr("data-to"));
    assertTrue(page.selectFirst(".count").text().startsWith("15 sources cover it; 12 speak"));
  }

  @Test
  void asksWhichMeaningIsMeant() throws Exception {
    Document page = desk.get("/witnesses?term=triple+ring").page();
    assertEquals(3, page.select(".which a").size());
    assertFalse(desk.get(page.selectFirst(".which a").attr("href")).page().select("h2").isEmpty());
  }
}
