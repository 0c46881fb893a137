package merese.desk;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import merese.testing.SmallLibrary;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Words on the pages of books, on the desk")
class PagesOnTheDeskTest {
  /** As on the pages themselves; where the marks are, the page shows. */
  private static final Set<String> IN_OTHER_WORDS =
      Set.of(
          "sections/groups/group",
          "hits/heading/marks/start",
          "hits/heading/marks/end",
          "hits/passages/text/marks/start",
          "hits/passages/text/marks/end",
          "hits/passages/role",
          "pages/passage/marks/start",
          "pages/passage/marks/end");

  @TempDir private static Path home;
  private static RunningDesk desk;

  @BeforeAll
  static void start() {
    desk =
        RunningDesk.on(
            new SmallLibrary()
                .book(
                    "Quenby",
                    1926,
                    "Neck and Stopper",
                    says("knife-edged rings", "ring-bladed").text("p. 41"))
                .pages(
                    "quenby-1926",
                    "1–2 = pp. 41–42; 3 = unnumbered",
                    "Three knife-edged rings.",
                    "The bladed ring is felt by a wet hand & <b>no</b> other.",
                    "Of blaclecl rings, facet-cut rings and a collar.")
                .book("Tressick", 1931, "Spreads")
                .pages(
                    "tressick-1931",
                    "1–2 = openings pp. 2–5; 3 = p. 6",
                    "Feet and merese knops.",
                    "Of merese knops.",
                    "Two merese knops.")
                .write(home));
  }

  @AfterAll
  static void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/?concept=ring-bladed",
        "/?term=collar",
        "/?concept=ring-cut",
        "/find?words=wet+hand",
        "/find?words=knife-edged",
        "/find?words=ring",
        "/find?words=%22wet+hand%22+OR+collar"
      })
  void allOfTheAnswerIsOnThePage(String question) throws Exception {
    var answer = desk.get(question + "&as=json").json();
    assertTrue(
        answer.path("onPages").size() + answer.path("pages").size() > 0, answer.toPrettyString());
    assertEquals(List.of(), AllShown.missing(answer, desk.get(question).page(), IN_OTHER_WORDS));
  }

  @Test
  void theyStandUnderTheirOwnHeadingInTheSameWordsAsOnTheTerminal() throws Exception {
    for (String address :
        List.of("/?concept=ring-bladed", "/vocabulary/ring-bladed", "/find?words=%22wet+hand%22")) {
      Document page = desk.get(address).page();
      assertTrue(
          page.select("h3").eachText().contains("Words on the page, not yet noted"), address);
    }
    assertEquals(
        "/note?source=quenby-1926&at=p.%2042&term=bladed%20ring",
        desk.get("/?concept=ring-bladed").page().selectFirst("a.in-words").attr("href"));
    String text = desk.get("/?concept=ring-bladed").page().text().replace('\u00A0', ' ');
    assertTrue(text.contains("“blaclecl rings” file page 3, unnumbered perhaps misread"), text);
    assertTrue(
        desk.get("/?concept=neck-ring").page().text().contains("“collar”"), "the narrower too");
  }

  @Test
  void twoPagesOnOnePageOfTheFileAreCitedAsInTheBook() throws Exception {
    String text = desk.get("/?term=merese").page().text().replace('\u00A0', ' ');
    assertTrue(text.contains("“merese” pp. 2–3; pp. 4–5; p. 6"), text);
  }

  @Test
  void whatIsNotedIsApart() throws Exception {
    Document page = desk.get("/find?words=knife-edged").page();
    assertTrue(page.select("h3").eachText().contains("On the page, and noted there"));
    assertEquals(
        List.of("bladed ring", "blaclecl rings"),
        desk.get("/find?words=%22bladed+ring%22").page().select("section.group mark").eachText());
  }
}
