package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShowPageTest {
  /** One that is of a piece in the demo, whose folder of pictures is left out of the demo. */
  private static final String PICTURE = "objects/d-17/03.jpg";

  @TempDir private static Path home;
  private static RunningDesk desk;
  private static String talk;

  @BeforeAll
  static void start() throws IOException {
    desk = RunningDesk.onDemo(home);
    talk = RunningDesk.encoded(Files.readString(Path.of("examples/talk.txt")));
    Path kept = desk.library().picture(PICTURE);
    try (Stream<Path> files = Files.walk(desk.library().path().resolve("pictures"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.equals(kept)) {
          Files.delete(file);
        }
      }
    }
  }

  @AfterAll
  static void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "concept=ring-bladed&concept=ring-spiral-trail&concept=foot-folded",
        "term=triple+ring",
        "script="
      })
  void everySlideSaysAllThatTheAnswerHolds(String question) throws Exception {
    String asked = question.equals("script=") ? question + talk : question;
    JsonNode answer = desk.get("/show?" + asked + "&as=json").json();
    JsonNode slides = answer.get("slides");
    assertTrue(slides.size() > 2, question);
    for (int i = 0; i < slides.size(); i++) {
      Document page = desk.get("/show?" + asked + "&at=" + (i + 1)).page();
      assertEquals(List.of(), AllShown.missing(slides.get(i), page, Set.of("feature/reason")));
      assertEquals(slides.get(i).get("heading").asText(), page.selectFirst("#slide h1").text());
      assertEquals((i + 1) + " of " + slides.size(), page.selectFirst("#position").text());
      assertTrue(page.text().contains(answer.get("caution").asText()));
    }
    Document choosing = desk.get("/show?" + asked + "&choose=on").page();
    assertEquals(List.of(), AllShown.missing(answer.get("remarks"), choosing, Set.of()));
  }

  @Test
  void linksLeadFromSlideToSlideInTheOrderOfTheAddress() throws Exception {
    String address = "/show?concept=foot-folded&concept=ring-bladed&concept=ring-annulated";
    List<String> forward = new ArrayList<>();
    Document page = desk.get(address).page();
    assertNull(page.selectFirst("a[rel=prev]"));
    while (true) {
      forward.add(page.selectFirst("#slide h1").text());
      Element next = page.selectFirst("a[rel=next]");
      if (next == null) {
        break;
      }
      page = desk.get(next.attr("href")).page();
    }
    JsonNode slides = desk.get(address + "&as=json").json().get("slides");
    assertEquals(slides.findValuesAsText("heading"), forward);
    assertEquals(3, forward.size());
    Document back = desk.get(page.selectFirst("a[rel=prev]").attr("href")).page();
    assertEquals(forward.get(1), back.selectFirst("#slide h1").text());
    Document leave = desk.get(back.selectFirst("#leave").attr("href")).page();
    assertEquals(3, leave.select(".chosen li").size());
  }

  @Test
  void theUsersOwnTermStandsAboveThoseOfTheBooks() throws Exception {
    JsonNode answer = desk.get("/?concept=ring-bladed&as=json").json();
    String own = answer.at("/sections/0/heading/label").asText();
    assertTrue(answer.at("/sections/0/heading/myTerm").asBoolean());
    Document page = desk.get("/show?concept=ring-bladed").page();
    assertEquals(own, page.selectFirst("#slide h1").text());
    assertEquals(8, page.select(".called li").size(), "those of most books");
    assertTrue(page.selectFirst(".more-words").text().matches("and \\d+ more words"));
  }

  @Test
  void showsThePicturesThatAreThereAndNamesTheOthers() throws Exception {
    Document page = desk.get("/show?concept=ring-spiral-trail").page();
    assertEquals(List.of("/pictures/" + PICTURE), page.select("#slide img").eachAttr("src"));
    assertEquals(200, desk.get(page.selectFirst("#slide img").attr("src")).status());
    assertTrue(page.selectFirst("figcaption").text().startsWith("my piece d-17, p3"));
    Document other = desk.get("/show?concept=ring-bladed").page();
    assertEquals(0, other.select("#slide img").size());
    assertTrue(other.selectFirst("#foot").text().contains("not in the library’s folder"));
  }

  @Test
  void whatCannotBeShownIsSaidBesideTheForm() throws Exception {
    RunningDesk.Answer unknown = desk.get("/show?term=no+such+word");
    assertEquals(422, unknown.status());
    assertTrue(unknown.page().selectFirst("#problem").text().contains("no such word"));
    assertEquals(422, desk.get("/show?concept=no-such-id").status());
    assertEquals(422, desk.get("/show?script=no+mark").status());
    assertEquals(422, desk.get("/show?concept=ring-bladed&at=third").status());
    assertTrue(desk.get("/show").page().selectFirst(".empty").text().contains("Escape"));
  }
}
