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

class WordsPageTest {
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
        "term=ring",
        "term=triple+ring",
        "term=collar",
        "concept=foot-folded&term=stopper"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/words?" + question).page();
    var answer = desk.get("/words?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @Test
  void aWordOfSeveralMeaningsStandsBesideEachOfThem() throws Exception {
    Document page = desk.get("/words?term=triple+ring").page();
    var answer = desk.get("/words?term=triple+ring&as=json").json();
    int meanings = 0;
    for (var word : answer.path("words")) {
      if (word.path("word").asText().equals("triple ring")) {
        meanings = word.path("meanings").size();
      }
    }
    assertTrue(meanings > 1);
    assertEquals(
        meanings,
        page.select("#words-table tr[data-word=\"triple ring\"]:not([data-meaning=\"\"])").size());
  }

  @Test
  void wordsThatAreNotSafeComeFirst() throws Exception {
    Document page = desk.get("/words?term=ring").page();
    List<String> safeties = page.select("#words-table tr[data-safety]").eachAttr("data-safety");
    assertEquals("NOT_SAFE", safeties.get(0));
    assertEquals("SAFE", safeties.get(safeties.size() - 1));
  }

  @Test
  void anUnknownWordIsSaid() throws Exception {
    assertEquals(422, desk.get("/words?term=bladd+rng").status());
  }

  @Test
  void anEmptyPageLeadsToWordsOfSeveralMeanings() throws Exception {
    Document page = desk.get("/words").page();
    var examples = page.select(".empty .words a");
    assertFalse(examples.isEmpty());
    assertEquals(200, desk.get(examples.get(0).attr("href")).status());
  }
}
