package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.vocabulary.ConceptNames;
import merese.model.Concept;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VocabularyPageTest {
  /** The noun of a facet stands where its concepts do, and only then. */
  private static final Set<String> NOT_SHOWN = Set.of("facets/headNoun");

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

  private static Optional<Concept> onDisk(String id) {
    try (Shelf shelf = Shelf.open(desk.library(), Watcher.NONE)) {
      return shelf.thesaurus().concept(id);
    }
  }

  /** Less what forms offer to choose from, which would have every label. */
  private static Document withoutChoices(Document page) {
    page.select("datalist").remove();
    return page;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "facet=ring", "find=collar", "find=bladed", "find=blaaded", "find=zzz"})
  void saysAllThatTheTreeHolds(String question) throws Exception {
    Document page = withoutChoices(desk.get("/vocabulary?" + question).page());
    var answer = desk.get("/vocabulary?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, NOT_SHOWN));
  }

  @Test
  void everyConceptOfAFacetStandsBelowWhatIsBroader() throws Exception {
    Document page = desk.get("/vocabulary?facet=ring").page();
    assertFalse(
        page.select("#at-ring-applied #at-ring-bladed").isEmpty(), "bladed is below applied");
    assertEquals(1, page.select("section.facet").size());
  }

  @Test
  void aConceptIsFoundByAWordOfTheUsersOwn() throws Exception {
    Document page = desk.get("/vocabulary?find=sham+ring").page();
    assertEquals("at-ring-false", page.selectFirst(".branch").id());
  }

  @Test
  void aFacetThatIsNotThereIsSaidAndNoFault() throws Exception {
    RunningDesk.Answer answer = desk.get("/vocabulary?facet=nonesuch");
    assertEquals(422, answer.status());
    assertTrue(answer.text().contains("there is no facet"));
  }

  @Test
  void aNewConceptIsOnTheDiskAndIsTakenBack() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary",
            "label",
            "wrythen ring",
            "id",
            "ring-wrythen",
            "definition",
            "Ring twisted before it was laid on.",
            "broader",
            "applied neck ring",
            "alternative",
            "twisted ring\nroped ring",
            "alike",
            "ring-feathered",
            "test",
            "runs on through the join");
    assertEquals(200, answer.status());
    assertTrue(answer.address().startsWith("/vocabulary/ring-wrythen?done="));
    Concept made = onDisk("ring-wrythen").orElseThrow();
    assertEquals("ring", made.facet());
    assertEquals(List.of("ring-applied"), made.broader());
    assertEquals(2, made.alternatives().size());
    assertEquals(Optional.of("runs on through the join"), made.lookAlikes().get(0).test());
    assertTrue(answer.page().select(".done").text().contains("ring-wrythen"));

    desk.takeBack(answer);
    assertTrue(onDisk("ring-wrythen").isEmpty());
  }

  @Test
  void anIdIsMadeOfTheLabelWhereNoneIsWritten() throws Exception {
    String[] fields = {
      "label", "Bladed Rings", "definition", "Thin.", "facet", "ring", "id", "", "scope", "other"
    };
    RunningDesk.Answer answer = desk.post("/vocabulary", fields);
    assertEquals("Bladed Rings", onDisk("ring-bladed-2").orElseThrow().preferred().text());
    desk.takeBack(answer);
    RunningDesk.Answer below =
        desk.post(
            "/vocabulary",
            "label",
            "wrythen ring",
            "definition",
            "Twisted.",
            "broader",
            "applied neck ring");
    assertTrue(below.address().startsWith("/vocabulary/ring-wrythen?done="), below.address());
    desk.takeBack(below);
    assertTrue(onDisk("ring-wrythen").isEmpty());
  }

  @Test
  void whatIsWrongIsWhereTheEyeIs() throws Exception {
    Document lacking = desk.post("/vocabulary", "label", "x ring", "facet", "ring").page();
    Element field = lacking.selectFirst("[autofocus]");
    assertEquals("definition", field.attr("name"));
    assertEquals("true", field.attr("aria-invalid"));
    assertEquals("problem", field.attr("aria-describedby"));
    Document same =
        desk.post(
                "/vocabulary",
                "label",
                "x ring",
                "id",
                "ring-bladed",
                "facet",
                "ring",
                "definition",
                "X.")
            .page();
    assertEquals("problem", same.selectFirst("[autofocus]").id());
    assertTrue(same.selectFirst("#problem").closest("details").hasAttr("open"));
  }

  @Test
  void whatCannotBeTakenIsSaidWithAllThatWasTyped() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary",
            "label",
            "another <ring>",
            "id",
            "ring-bladed",
            "definition",
            "A definition typed at length.",
            "facet",
            "ring",
            "hidden",
            "anothr ring");
    assertEquals(422, answer.status());
    Document page = answer.page();
    assertTrue(page.selectFirst("#problem").text().contains("ring-bladed already"));
    assertEquals("another <ring>", page.selectFirst("input[name=label]").val());
    assertEquals(
        "A definition typed at length.", page.selectFirst("textarea[name=definition]").val());
    assertEquals("anothr ring", page.selectFirst("textarea[name=hidden]").val());
    assertEquals("ring", page.selectFirst("form[method=post] select[name=facet] [selected]").val());
    assertTrue(page.selectFirst("form[data-refused]").closest("details").hasAttr("open"));
  }

  @Test
  void aWordOfSeveralMeaningsIsNotGuessedAt() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary",
            "label",
            "x ring",
            "id",
            "ring-x",
            "definition",
            "X.",
            "broader",
            "collar");
    assertEquals(422, answer.status());
    assertTrue(answer.page().selectFirst("#problem").text().contains("merese ("));
    assertTrue(ConceptNames.of(desk.library()).named("collar").ask());
  }

  @Test
  void nothingIsAddedWithoutTheToken() throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri("/vocabulary"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(
                HttpRequest.BodyPublishers.ofString(
                    "label=y+ring&id=ring-y&definition=Y&facet=ring"))
            .build();
    assertEquals(403, desk.send(request).status());
    assertTrue(onDisk("ring-y").isEmpty());
  }
}
