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

class IdentifyPageTest {
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

  /** Less the form, which has every character and value of the key. */
  private static Document answered(String question) throws Exception {
    Document page = desk.get("/identify?" + question).page();
    page.select("form.key").remove();
    return page;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "see=join%3Dfelt&see=ridges%3D3",
        "see=slant%3Dupright&see=slant%3Dslanting",
        "see=seam%3Dnot-found",
        "see=join%3Dfelt&see=bore%3Dhollowed&see=surface%3Dground",
        "object=d-9",
        "object=d-9&part=ring%2C+back",
        "object=c-4",
        "term=bladed+ring&term=step-cut+neck",
        "term=stopper"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    var answer = desk.get("/identify?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, answered(question), Set.of()));
  }

  @Test
  void theCautionStandsAboveEveryAnswer() throws Exception {
    String caution = desk.get("/identify?see=join%3Dfelt").page().select(".caution").text();
    assertTrue(caution.contains("does not say what the piece is"), caution);
  }

  @Test
  void theFormHoldsWhatTheAddressAsks() throws Exception {
    Document page =
        desk.get("/identify?see=slant%3Dupright&see=slant%3Dslanting&see=ridges%3D3&object=d-9")
            .page();
    assertEquals(
        List.of("slant=upright", "slant=slanting"),
        page.select("select[id^=see-slant] option[selected][value~=.]").eachAttr("value"));
    assertEquals("ridges=3", page.selectFirst("#see-ridges option[selected]").val());
    assertEquals("d-9", page.selectFirst("#object option[selected]").val());
    assertFalse(page.select("#part option").isEmpty());
  }

  @Test
  void whatIsLeftToLookAtIsALinkAway() throws Exception {
    Document page = answered("see=join%3Dfelt");
    String next = page.selectFirst(".look .ways a").attr("href");
    assertTrue(next.startsWith("/identify?see=join%3Dfelt&see="), next);
    assertEquals(200, desk.get(next).status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "see=zodiac%3Dx",
        "see=join%3Dx",
        "object=nonesuch",
        "object=d-9&part=nonesuch",
        "term=collar",
        "see=%3D",
        "see=nonesuch"
      })
  void whatCannotBeAskedIsSaidAndTheFormStays(String question) throws Exception {
    RunningDesk.Answer answer = desk.get("/identify?" + question);
    assertEquals(422, answer.status());
    assertFalse(answer.page().selectFirst("#problem").text().isEmpty());
    assertFalse(answer.page().select("form.key select").isEmpty());
  }

  @Test
  void theKeyCanBeEdited() throws Exception {
    assertFalse(desk.get("/identify").page().select("a[href=/edit/key]").isEmpty());
  }
}
