package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingListPageTest {
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
        "concept=ring-bladed",
        "term=triple+ring&consulted=on",
        "term=bladed+ring&term=annulated+ring&by=source&style=chicago-notes-bibliography",
        "term=folded+foot&pictured=on&style=apa",
        "term=bladed+ring&out=quenby-1926&out=quenby-1949&style=iso690-numeric-en",
        "term=no+such+word"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/reading-list?" + question).page();
    JsonNode answer = desk.get("/reading-list?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
  }

  @Test
  void saysAllThatTheListOfAScriptHolds() throws Exception {
    Document page = desk.get("/reading-list?script=" + talk).page();
    JsonNode answer = desk.get("/reading-list?script=" + talk + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
    assertTrue(page.text().contains("[sic] names no source, object or term"), page.text());
  }

  @Test
  void theOrderOfTheFeaturesIsInTheAddress() throws Exception {
    String question = "/reading-list?term=bladed+ring&concept=ring-annulated&term=folded+foot";
    Document page = desk.get(question).page();
    List<String> before = page.select("#preview h3").eachText();
    assertEquals(3, before.size());
    String up = page.select(".chosen li").get(2).selectFirst("a[aria-label$=up]").attr("href");
    Document moved = desk.get(up).page();
    assertEquals(
        List.of(before.get(0), before.get(2), before.get(1)),
        moved.select("#preview h3").eachText());
    String down = moved.select(".chosen li").get(0).selectFirst("a[aria-label$=down]").attr("href");
    assertEquals(
        List.of(before.get(2), before.get(0), before.get(1)),
        desk.get(down).page().select("#preview h3").eachText());
    String away = page.selectFirst("a[aria-label$=remove]").attr("href");
    assertEquals(
        List.of(before.get(1), before.get(2)),
        desk.get(away).page().select("#preview h3").eachText());
  }

  @Test
  void aWordOfSeveralMeaningsCanBeNarrowedToOne() throws Exception {
    Document page = desk.get("/reading-list?term=triple+ring").page();
    assertEquals(3, page.select("#preview h3").size());
    String one = page.selectFirst(".several a").attr("href");
    assertEquals(
        List.of(page.selectFirst(".several a").text()),
        desk.get(one).page().select("#preview h3").eachText());
  }

  @Test
  void whatIsLeftOutIsOutOfTheListAndOfWhatIsSavedAndCanComeBack() throws Exception {
    String question = "concept=ring-bladed";
    Document all = desk.get("/reading-list?" + question).page();
    Document page = desk.get("/reading-list?" + question + "&out=quenby-1926").page();
    int before = all.select("#preview li").size();
    assertEquals(before - 1, page.select("#preview li").size());
    assertTrue(page.selectFirst("input[name=out][value=quenby-1926]").hasAttr("checked"));
    assertFalse(all.selectFirst("input[name=out][value=quenby-1926]").hasAttr("checked"));
    String bib = desk.get(page.selectFirst("a[data-save=bibtex]").attr("href")).text();
    assertTrue(bib.contains("{quenby-1949,"), bib);
    assertFalse(bib.contains("{quenby-1926,"), bib);
  }

  @Test
  void everySourceHasItsNotesWithPlaces() throws Exception {
    Document page =
        desk.get("/reading-list?concept=ring-bladed&style=chicago-notes-bibliography").page();
    var quenby = page.selectFirst(".one-source:has(input[value=quenby-1949]) dl.cited-notes");
    List<String> notes = quenby.select("dd").eachText();
    assertTrue(notes.get(0).contains("Neck and Stopper"), notes.get(0));
    assertTrue(notes.get(0).contains("pl. 31"), notes.get(0));
    assertTrue(notes.get(1).startsWith("Quenby"), notes.get(1));
    assertTrue(notes.get(1).contains("pl. 31"), notes.get(1));
    assertTrue(notes.get(1).length() < notes.get(0).length());
    List<String> copied = new ArrayList<>(page.select("[data-copy]").eachAttr("data-copy"));
    copied.removeIf(id -> page.getElementById(id) != null);
    assertEquals(List.of(), copied);
  }

  @Test
  void fitsIntoANumberOfBytesAndSavesJustThat() throws Exception {
    Document page = desk.get("/reading-list?concept=ring-bladed&fit=300").page();
    String shown = page.selectFirst("pre#preview").wholeText();
    assertTrue(shown.getBytes(StandardCharsets.UTF_8).length <= 300, shown);
    assertTrue(shown.startsWith("Books used:\n"), shown);
    assertTrue(shown.contains(" more"), shown);
    assertEquals(shown, desk.get(page.selectFirst("a[data-save=text]").attr("href")).text());
  }

  @Test
  void aStyleCanBeNamedAndIsChosenFromThenOn() throws Exception {
    Document page = desk.get("/reading-list?concept=ring-bladed&style=apa&other=antiquity").page();
    assertEquals("antiquity", page.selectFirst("#style option[selected]").attr("value"));
    String save = page.selectFirst("a[data-save=markdown]").attr("href");
    assertTrue(save.contains("style=antiquity"), save);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "style=mhra-noets|did you mean mhra-notes",
        "fit=many|no number of bytes",
        "fit=12|not even one source fits in 12 bytes",
        "by=colour|neither feature nor source",
        "script=%5Bterm+no+such+word%5D|line 1: "
      })
  void whatCannotBeAnsweredIsSaidBesideTheFormAndNothingIsLost(String both) throws Exception {
    String question = both.substring(0, both.indexOf('|'));
    RunningDesk.Answer answer = desk.get("/reading-list?concept=ring-bladed&" + question);
    Document page = answer.page();
    assertEquals(422, answer.status());
    String problem = page.selectFirst("#problem").text();
    assertTrue(problem.contains(both.substring(both.indexOf('|') + 1)), problem);
    assertTrue(page.selectFirst("form#question").hasAttr("data-refused"));
    assertEquals("ring-bladed", page.selectFirst("input[name=concept]").attr("value"));
    String typed = question.substring(question.indexOf('=') + 1);
    if (!question.startsWith("by")) {
      String back =
          page.select("#style option[selected], #fit").eachAttr("value")
              + page.selectFirst("#script").val();
      assertTrue(back.contains(java.net.URLDecoder.decode(typed, StandardCharsets.UTF_8)), back);
    }
  }

  @Test
  void aLongScriptStandsInTheAddress() throws Exception {
    String script = RunningDesk.encoded("A word more. ".repeat(5000) + "[term ring-bladed]");
    Document page = desk.get("/reading-list?script=" + script).page();
    assertTrue(page.select("#preview li").size() > 5);
  }

  @Test
  void anEmptyPageSaysWhatToDo() throws Exception {
    RunningDesk.Answer answer = desk.get("/reading-list");
    assertEquals(200, answer.status());
    assertTrue(answer.page().selectFirst(".empty").text().contains("paste a script"));
    assertEquals(422, desk.get("/reading-list/save?as=bibtex").status());
    assertEquals(422, desk.get("/reading-list/save?as=pdf&concept=ring-bladed").status());
    assertEquals(422, desk.get("/reading-list/save?as=bibtex&term=no+such+word").status());
  }

  @Test
  void whatIsSentAsAChangeIsRefused() throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri("/reading-list?concept=ring-bladed"))
            .POST(HttpRequest.BodyPublishers.noBody())
            .build();
    assertEquals(403, desk.send(request).status());
  }
}
