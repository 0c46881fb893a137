package merese.desk;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LookUpPageTest {
  /** Which group it is, and a reason that is one of the recorded ones, in words of the page. */
  private static final Set<String> IN_OTHER_WORDS =
      Set.of(
          "sections/groups/group",
          "sections/groups/all",
          "allChecked",
          "allNotChecked",
          "allOnPages",
          "sections/heading/reason");

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
        "term=bladed+ring&pictured=on",
        "term=triple+ring",
        "term=spiral+neck+trail",
        "concept=foot-folded&place=Irish",
        "term=target+stopper&from=1940&to=1970&owned=on",
        "term=no+such+word"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/?" + question).page();
    var answer = desk.get("/?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, IN_OTHER_WORDS));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "term=bladed+ring&from=abc",
        "term=bladed+ring&from=1960&to=1940",
        "term=bladed+ring&kind=leaflets&place=Irish",
        "term=bladed+ring&concept=no-such-thing",
        "from=abc"
      })
  void aQuestionThatIsWrongComesBackWithWhatWasTyped(String question) throws Exception {
    RunningDesk.Answer answer = desk.get("/?" + question);
    assertEquals(422, answer.status());
    Document page = answer.page();
    assertEquals(1, page.select("form.ask .wrong[role=alert]").size());
    for (String part : question.split("&", -1)) {
      String[] typed = part.replace("+", " ").split("=", -1);
      if (!typed[0].equals("kind")) {
        assertEquals(typed[1], page.selectFirst("form.ask [name=" + typed[0] + "]").val());
      }
    }
  }

  @Test
  void aPictureIsNamedByEachTermInItsOwnQuotationMarks() throws Exception {
    RunningDesk.Answer answer = desk.get("/?term=bladed+ring");
    List<String> names = answer.page().select(".pictures img").eachAttr("alt");
    assertFalse(names.isEmpty());
    for (String name : names) {
      assertEquals(
          name.replaceAll("[^“]", "").length(), name.replaceAll("[^”]", "").length(), name);
    }
    assertTrue(names.stream().anyMatch(name -> name.startsWith("“")), names.toString());
  }

  @Test
  void aWordThatNobodyKnowsLeadsOn() throws Exception {
    Document page = desk.get("/?term=no+such+word").page();
    List<String> ways = page.select(".onward a").eachAttr("href");
    assertEquals(
        List.of(
            "/vocabulary?find=no%20such%20word",
            "/find?words=no%20such%20word",
            "/note?term=no%20such%20word",
            "/vocabulary?add=on&label=no%20such%20word#add"),
        ways);
    assertEquals(
        "no such word", desk.get("/note?term=no%20such%20word").page().selectFirst("#term").val());
    String add = desk.get("/vocabulary?add=on&label=no%20such%20word").page().select("form").html();
    assertTrue(add.contains("value=\"no such word\""), add);
  }

  @Test
  void aHomonymSaysHowManyUseTheWordAndHowManyOthersHaveIt() throws Exception {
    Document page = desk.get("/?term=triple+ring").page();
    JsonNode sections = desk.get("/?term=triple+ring&as=json").json().get("sections");
    JsonNode first = sections.get(0);
    int others = 0;
    for (JsonNode group : first.get("groups")) {
      if (group.get("group").asText().equals("SAME_FEATURE")) {
        others += group.get("entries").size();
      }
    }
    assertTrue(others > 1, "others " + others);
    String said = page.selectFirst(".count").text();
    assertTrue(said.startsWith(first.get("count").asInt() + " source"), said);
    assertTrue(said.contains("this word for it"), said);
    assertTrue(said.contains("; " + others + " more have it under another name"), said);
  }

  @Test
  void aNarrowedAnswerShowsPicturesOfWhatCountsAlone() throws Exception {
    Document all = desk.get("/?term=bladed+ring").page();
    assertFalse(all.select(".pictures figure").isEmpty());
    Document none = desk.get("/?term=bladed+ring&place=Nowhere").page();
    assertEquals(List.of(), none.select(".pictures figure").eachText());
  }

  @Test
  void anEmptyLibrarySaysHowToBegin(@TempDir Path other) throws Exception {
    LibraryFolder empty = LibraryFolder.create(other.resolve("empty"), "Nothing yet");
    try (RunningDesk its = RunningDesk.on(empty)) {
      for (String address : List.of("/", "/concordance", "/timeline", "/words", "/witnesses")) {
        Document page = its.get(address).page();
        assertEquals(List.of(), page.select(".empty .words a").eachText(), address);
        assertEquals(List.of("/add", "/note"), page.select(".empty a").eachAttr("href"), address);
      }
      assertEquals(List.of(), its.faults());
    }
    assertFalse(desk.get("/").page().select(".empty .words a").isEmpty());
  }

  @Test
  void ofMoreThanAHundredSourcesTwentyAreShownAndAllOnRequest(@TempDir Path other)
      throws Exception {
    SmallLibrary many = new SmallLibrary();
    for (int i = 0; i < 105; i++) {
      many.book("Quarn" + i, 1900 + i % 100, "Of Glass", says("ring", "ring-bladed").text("p. 1"));
    }
    try (RunningDesk large = RunningDesk.on(many.write(other))) {
      Document page = large.get("/?concept=ring-bladed").page();
      assertEquals(20, page.select(".counted .entry").size());
      Element more = page.selectFirst(".more-of-them a");
      assertEquals("85 more: show all", more.text());
      Document all = large.get(more.attr("href")).page();
      assertEquals(105, all.select(".counted .entry").size());
      assertEquals(0, all.select(".more-of-them").size());
    }
  }

  @Test
  void aHomonymHasItsMeaningsSideBySide() throws Exception {
    Document page = desk.get("/?term=triple+ring").page();
    assertEquals(
        List.of("A annulated ring", "B set of three rings", "C annulated knop"),
        page.select(".meanings > .meaning h2").eachText());
  }

  @Test
  void suggestsTheUsersOwnTermsAndEachConceptBeforeFurtherLabels() throws Exception {
    List<String> texts = desk.get("/suggest?term=ri").page().select("li").eachAttr("data-text");
    assertTrue(texts.contains("bladed ring"), texts.toString());
    List<String> ids =
        desk.get("/suggest?term=ri").page().select("[data-kind=concept]").eachAttr("data-id");
    assertEquals(Set.copyOf(ids).size(), ids.size(), ids.toString());
  }

  @Test
  void theIdOfAConceptFindsIt() throws Exception {
    Document page = desk.get("/?term=ring-bladed").page();
    assertEquals(List.of("bladed ring"), page.select(".meaning h2").eachText());
    assertEquals("ring-bladed", page.selectFirst("#term").val());
  }

  @Test
  void suggestsConceptsTermsAndSources() throws Exception {
    Document page = desk.get("/suggest?term=qu").page();
    assertTrue(page.select("[data-kind=source]").eachAttr("data-id").contains("quenby-1926"));
    Document printed = desk.get("/suggest?term=sharp-ringed+cru").page();
    assertEquals(
        "sharp-ringed cruets", printed.selectFirst("[data-kind=printed]").attr("data-text"));
  }
}
