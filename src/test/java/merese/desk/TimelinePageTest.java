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

class TimelinePageTest {
  /** How claims stand to what was asked, in the titles of their tables. */
  private static final Set<String> IN_OTHER_WORDS = Set.of("sections/kinds/groups/standing");

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
        "term=target+stopper",
        "term=bladed+ring",
        "concept=foot-folded",
        "term=opaque+twist&year=1765",
        "term=bladed+ring&place=Ireland",
        "term=target+stopper&concept=ring-bladed&year=1790..1800",
        "concept=trail-chain"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/timeline?" + question).page();
    var answer = desk.get("/timeline?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @Test
  void theDatesAreThereForTheDrawingAndCopiesApart() throws Exception {
    Document page = desk.get("/timeline?term=target+stopper").page();
    var dates = page.select("[data-part=CLAIMED] [data-kind=DATE][data-core]");
    assertTrue(dates.eachAttr("data-core").contains("1767/1799"), dates.toString());
    assertTrue(dates.eachAttr("data-core").contains("1780/.."), dates.toString());
    assertEquals(
        List.of("1920/..", "1990/.."),
        page.select("[data-part=COPIES] [data-core]").eachAttr("data-core"));
  }

  @Test
  void whatIsComputedSaysSo() throws Exception {
    Document page = desk.get("/timeline?term=target+stopper").page();
    for (var row : page.select("tr[data-computed=yes]")) {
      assertTrue(row.selectFirst(".years").text().contains("computed"), row.text());
    }
    assertFalse(page.select("tr[data-computed=yes]").isEmpty());
  }

  @Test
  void contradictionsStandInWords() throws Exception {
    Document page = desk.get("/timeline?term=target+stopper").page();
    assertTrue(page.text().contains("Contradictions: 3 pairs"), page.text());
  }

  @Test
  void aYearThatIsNoneComesBackWithWhatWasTyped() throws Exception {
    var answer = desk.get("/timeline?term=target+stopper&year=17x");
    assertEquals(422, answer.status());
    assertEquals("17x", answer.page().selectFirst("input[name=year]").attr("value"));
    assertTrue(answer.page().selectFirst("#problem").text().contains("17x"));
  }

  @Test
  void asksWhichMeaningIsMeantAndKeepsTheYear() throws Exception {
    Document page = desk.get("/timeline?term=triple+ring&year=1790").page();
    assertEquals(3, page.select(".which a").size());
    for (String link : page.select(".which a").eachAttr("href")) {
      assertTrue(link.endsWith("&year=1790"), link);
      assertEquals(200, desk.get(link).status(), link);
    }
  }
}
