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

class LookUpPageTest {
  /** Which group it is, and a reason that is one of the recorded ones, in words of the page. */
  private static final Set<String> IN_OTHER_WORDS =
      Set.of("sections/groups/group", "sections/heading/reason");

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

  @Test
  void aHomonymHasItsMeaningsSideBySide() throws Exception {
    Document page = desk.get("/?term=triple+ring").page();
    assertEquals(
        List.of("A annulated ring", "B set of three rings", "C annulated knop"),
        page.select(".meanings > .meaning h2").eachText());
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
