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

class ConcordancePageTest {
  /** Why notes stand apart, and why there is no number, in words of the page. */
  private static final Set<String> IN_OTHER_WORDS = Set.of("apart/why", "agreement/lack");

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
        "term=bladed+ring&term=annulated+ring&term=set+of+three+rings",
        "term=ring-bladed&concept=foot-folded",
        "terms=stopper",
        "concept=trail-chain"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/concordance?" + question).page();
    var answer = desk.get("/concordance?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @Test
  void everySourceHasACellForEveryConcept() throws Exception {
    Document page = desk.get("/concordance?term=bladed+ring&term=foot-folded").page();
    var rows = page.select("#concordance-table tbody tr");
    assertFalse(rows.isEmpty());
    for (var row : rows) {
      assertEquals(2, row.select("td[data-stand][data-href]").size(), row.attr("data-row"));
    }
    assertEquals("PICTURED", page.selectFirst("#quenby-1926--ring-bladed").attr("data-stand"));
  }

  @Test
  void whoWasLookedThroughIsAsTheCoverageHasIt() throws Exception {
    Document page = desk.get("/concordance?term=ring-bladed").page();
    var coverage = desk.get("/?concept=ring-bladed&as=json").json();
    assertFalse(coverage.path("checked").isEmpty());
    for (var checked : coverage.path("checked")) {
      String key = checked.path("source").path("key").asText();
      var cell = page.selectFirst("[data-row=" + key + "] td");
      assertEquals("CHECKED", cell.attr("data-stand"), key);
    }
    for (var not : coverage.path("notChecked")) {
      String key = not.path("source").path("key").asText();
      var cell = page.selectFirst("[data-row=" + key + "] td");
      boolean listed = !page.select("#not-checked a[href=/shelf/" + key + "]").isEmpty();
      assertTrue(listed || cell.attr("data-stand").equals("NOT_CHECKED"), key);
    }
  }

  @Test
  void whatStandsApartHasItsCell() throws Exception {
    Document page = desk.get("/concordance?term=ring").page();
    for (var row : page.select("#concordance-table [data-row]")) {
      int all = row.select("td").size();
      assertTrue(row.select("td[data-stand=NOT_CHECKED]").size() < all, row.attr("data-row"));
    }
  }

  @Test
  void eachStandIsToldApartByALetterOfItsOwn() throws Exception {
    Document page = desk.get("/concordance?term=ring").page();
    List<String> letters = page.select(".legend .key").eachText();
    assertEquals(Set.copyOf(letters).size(), letters.size());
    for (String stand : page.select("#concordance-table td").eachAttr("data-stand")) {
      assertEquals(1, page.select(".legend [data-stand=" + stand + "]").size(), stand);
    }
  }

  @Test
  void aCellLeadsToItsNotesWithAScriptAndWithout() throws Exception {
    Document page = desk.get("/concordance?term=bladed+ring").page();
    String link = page.selectFirst("#quenby-1926--ring-bladed").attr("data-href");
    Document whole = desk.get(link).page();
    assertEquals("Quenby 1926: bladed ring", whole.selectFirst("h1").text());
    assertTrue(whole.text().contains("pl. XII, fig. 3"), whole.text());
    var part = desk.get(link + "&part=on");
    assertFalse(part.text().contains("<html"), part.text());
    assertTrue(part.page().text().contains("“knife-edged rings”"), part.text());
  }

  @Test
  void aCellThatIsNotThereIsSaid() throws Exception {
    assertEquals(
        404, desk.get("/concordance/cell?term=bladed+ring&source=nobody&column=x").status());
  }

  @Test
  void asksWhichMeaningIsMeant() throws Exception {
    Document page = desk.get("/concordance?term=triple+ring&term=bladed+ring").page();
    var links = page.select(".which a");
    assertEquals(3, links.size());
    var answer = desk.get(links.get(0).attr("href") + "&as=json").json();
    assertEquals("annulated ring", links.get(0).text());
    assertEquals("annulated ring", answer.path("concepts").get(0).path("preferred").asText());
    assertEquals("bladed ring", answer.path("asked").get(1).asText());
  }

  @Test
  void anUnknownWordComesBackWithWhatIsNearIt() throws Exception {
    var answer = desk.get("/concordance?term=bladd+rng");
    assertEquals(422, answer.status());
    assertTrue(answer.page().selectFirst("#problem").text().contains("bladd rng"));
    assertEquals("bladd rng", answer.page().selectFirst("fieldset input").attr("value"));
  }

  @Test
  void anEmptyPageLeadsToQuestionsThatHaveAnswers() throws Exception {
    Document page = desk.get("/concordance").page();
    var examples = page.select(".empty .words a");
    assertFalse(examples.isEmpty());
    for (String example : examples.eachAttr("href")) {
      assertEquals(200, desk.get(example).status(), example);
      assertTrue(desk.get(example).page().select(".choice").isEmpty(), example);
    }
  }
}
