package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Mine.Coinage;
import merese.model.Mine.Preference;
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

class ConceptPageTest {
  /**
   * Which group it is, and a reason or kind that is one of the recorded ones, in other words; and
   * how many there are, which is said where a page shows the first only.
   */
  private static final Set<String> IN_OTHER_WORDS =
      Set.of(
          "coverage/sections/groups/group",
          "coverage/sections/groups/all",
          "coverage/allChecked",
          "coverage/allNotChecked",
          "coverage/allOnPages",
          "coverage/sections/heading/reason",
          "preference/reason",
          "concept/status",
          "concept/matches/kind");

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

  private static Concept concept(String id) {
    return onDisk(id).orElseThrow();
  }

  /** Sends what a page shows first, as its button does. */
  private static RunningDesk.Answer confirm(RunningDesk.Answer shown) throws Exception {
    assertEquals(200, shown.status());
    Element form = shown.page().selectFirst(".shown-first form");
    List<String> fields = new ArrayList<>();
    for (Element field : form.select("input[type=hidden]")) {
      if (!field.attr("name").equals("token")) {
        fields.add(field.attr("name"));
        fields.add(field.val());
      }
    }
    fields.add("confirmed");
    fields.add("yes");
    return desk.post(form.attr("action"), fields.toArray(String[]::new));
  }

  private static void assertRefused(RunningDesk.Answer answer, String form, String says) {
    assertEquals(422, answer.status());
    Document page = answer.page();
    assertTrue(page.selectFirst("#" + form + " #problem").text().contains(says), page.text());
    assertTrue(page.getElementById(form).hasAttr("open"));
    assertTrue(page.selectFirst("#" + form + " form").hasAttr("data-refused"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ring-bladed",
        "ring-annulated",
        "merese",
        "ring-spiral-trail",
        "ring-false",
        "foot-folded",
        "trail-chain",
        "neck-ring"
      })
  void saysAllThatIsKnownOfAConcept(String id) throws Exception {
    RunningDesk.Answer json = desk.get("/vocabulary/" + id + "?as=json");
    Document page = desk.get("/vocabulary/" + id).page();
    page.select("datalist, .concept-changes").remove();
    assertEquals(List.of(), AllShown.missing(json.json(), page, IN_OTHER_WORDS));
  }

  @Test
  void itsCoverageIsThatOfTheQuestion() throws Exception {
    ObjectNode sheet = (ObjectNode) desk.get("/vocabulary/ring-bladed?as=json").json();
    assertEquals(desk.get("/?concept=ring-bladed&as=json").json(), sheet.get("coverage"));
  }

  @Test
  void aHomonymSaysWhatElseItMayMean() throws Exception {
    String said = desk.get("/vocabulary/merese").page().select(".facts").text();
    assertTrue(said.contains("“collar” is never guessed at"), said);
  }

  @Test
  void aConceptThatIsNotThereHasNoPage() throws Exception {
    assertEquals(404, desk.get("/vocabulary/nonesuch").status());
    assertEquals(404, desk.post("/vocabulary/nonesuch/merge", "into", "merese").status());
    assertEquals(404, desk.post("/vocabulary/merese/nonesuch").status());
  }

  @Test
  void aNarrowerConceptIsAdded() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-bladed/narrower",
            "label",
            "twin-bladed ring",
            "id",
            "ring-twin-bladed",
            "definition",
            "Bladed ring with two edges.",
            "broader",
            "ring-bladed");
    assertEquals(List.of("ring-bladed"), concept("ring-twin-bladed").broader());
    desk.takeBack(answer);
    assertTrue(onDisk("ring-twin-bladed").isEmpty());
    assertRefused(
        desk.post(
            "/vocabulary/ring-bladed/narrower",
            "label",
            "kept words",
            "id",
            "Not An Id",
            "broader",
            "ring-bladed"),
        "narrower",
        "say in a sentence");
  }

  @Test
  void labelsAndDefinitionAreDescribed() throws Exception {
    Concept before = concept("ring-bladed");
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-bladed/describe",
            "definition",
            "Ring drawn out to an edge.",
            "status",
            "uncertain",
            "alternative",
            "blade-like ring",
            "hidden",
            "baldedring",
            "without",
            "angular ring");
    Concept after = concept("ring-bladed");
    assertEquals("Ring drawn out to an edge.", after.definition());
    assertEquals(Concept.Status.UNCERTAIN, after.status());
    assertTrue(after.alternatives().contains(Label.of("blade-like ring")));
    assertTrue(after.hidden().contains(Label.of("baldedring")));
    assertTrue(after.alternatives().stream().noneMatch(l -> l.text().equals("angular ring")));
    desk.takeBack(answer);
    assertEquals(before, concept("ring-bladed"));

    RunningDesk.Answer refused =
        desk.post(
            "/vocabulary/ring-bladed/describe",
            "definition",
            "Typed & kept.",
            "status",
            "common",
            "without",
            "bladed ring",
            "alternative",
            "kept too");
    assertRefused(refused, "describe", "bladed ring");
    assertEquals("Typed & kept.", refused.page().getElementById("describe-definition").val());
    assertEquals("kept too", refused.page().getElementById("describe-alternative").val());
  }

  @Test
  void aPreferredLabelChangesAtOnce() throws Exception {
    Concept before = concept("ring-square");
    RunningDesk.Answer answer =
        desk.post("/vocabulary/ring-square/rename", "label", "flat ring", "id", "ring-square");
    assertEquals("flat ring", concept("ring-square").preferred().text());
    desk.takeBack(answer);
    assertEquals(before, concept("ring-square"));
    assertRefused(
        desk.post(
            "/vocabulary/ring-square/rename",
            "label",
            before.preferred().text(),
            "id",
            "ring-square"),
        "rename",
        "already");
  }

  @Test
  void anotherIdIsShownBeforeItIsGiven() throws Exception {
    RunningDesk.Answer shown =
        desk.post(
            "/vocabulary/ring-bladed/rename",
            "label",
            concept("ring-bladed").preferred().text(),
            "id",
            "ring-blade");
    assertTrue(shown.page().select(".shown-first").text().contains("Nothing is changed yet"));
    assertTrue(shown.page().select(".shown-first .effects").text().contains("notes"));
    assertTrue(onDisk("ring-blade").isEmpty());
    RunningDesk.Answer done = confirm(shown);
    assertTrue(done.address().startsWith("/vocabulary/ring-blade?"));
    assertTrue(onDisk("ring-bladed").isEmpty());
    assertTrue(done.page().select(".told").text().contains("Look at"));
    desk.takeBack(done);
    assertTrue(onDisk("ring-blade").isEmpty());
    assertTrue(onDisk("ring-bladed").isPresent());
  }

  @Test
  void aConceptMovesBelowAnother() throws Exception {
    Concept before = concept("ring-square");
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-square/move",
            "how",
            "also",
            "broader",
            "ring-false",
            "facet",
            before.facet());
    List<String> both = new ArrayList<>(before.broader());
    both.add("ring-false");
    assertEquals(both, concept("ring-square").broader());
    desk.takeBack(answer);
    assertEquals(before, concept("ring-square"));
    RunningDesk.Answer refused =
        desk.post(
            "/vocabulary/neck-ring/move",
            "how",
            "instead",
            "broader",
            "ring-bladed",
            "facet",
            "ring");
    assertRefused(refused, "move", "circle");
    assertEquals("ring-bladed", refused.page().getElementById("move-broader").val());
  }

  @Test
  void anotherFacetIsShownBeforeItIsTaken() throws Exception {
    Concept before = concept("merese");
    RunningDesk.Answer shown =
        desk.post(
            "/vocabulary/merese/move", "how", "stay", "newFacet", "collars", "noun", "collar");
    assertEquals(before, concept("merese"));
    RunningDesk.Answer done = confirm(shown);
    assertEquals("collars", concept("merese").facet());
    desk.takeBack(done);
    assertEquals(before, concept("merese"));
  }

  @Test
  void aLookAlikeGetsItsTest() throws Exception {
    Concept before = concept("ring-square");
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-square/look-alike",
            "other",
            "ring-spiral-trail",
            "test",
            "closes on itself");
    assertTrue(
        concept("ring-square")
            .lookAlikes()
            .contains(new LookAlike("ring-spiral-trail", Optional.of("closes on itself"))));
    assertTrue(answer.page().select(".tell").text().contains("closes on itself"));
    desk.takeBack(answer);
    assertEquals(before, concept("ring-square"));
    RunningDesk.Answer refused =
        desk.post(
            "/vocabulary/ring-square/look-alike", "other", "ring-square", "test", "kept words");
    assertRefused(refused, "look-alike", "itself");
    assertEquals("kept words", refused.page().getElementById("look-alike-test").val());
  }

  @Test
  void aMergeIsShownBeforeItIsDone() throws Exception {
    RunningDesk.Answer shown = desk.post("/vocabulary/ring-square/merge", "into", "ring-plain");
    assertTrue(onDisk("ring-square").isPresent());
    assertEquals("ring-plain", shown.page().getElementById("merge-into").val());
    RunningDesk.Answer done = confirm(shown);
    assertTrue(onDisk("ring-square").isEmpty());
    assertTrue(done.address().startsWith("/vocabulary/ring-plain?"));
    desk.takeBack(done);
    assertTrue(onDisk("ring-square").isPresent());
    RunningDesk.Answer refused = desk.post("/vocabulary/ring-square/merge", "into", "zzzz ring");
    assertRefused(refused, "merge", "neither the id nor a label");
    assertEquals("zzzz ring", refused.page().getElementById("merge-into").val());
    // a look-alike of one would be broader than the other: SKOS Reference, S27
    assertRefused(
        desk.post("/vocabulary/ring-vertical/merge", "into", "ring-milled"), "merge", "S27");
  }

  @Test
  void aSplitIsShownWithTheNotesThatStay() throws Exception {
    RunningDesk.Answer shown =
        desk.post(
            "/vocabulary/ring-bladed/split",
            "label",
            "blade collar",
            "id",
            "ring-blade-collar",
            "printed",
            "sharp-edged collars",
            "test",
            "set on its own");
    Element stays = shown.page().selectFirst(".shown-first input[name=note]");
    assertFalse(stays.val().isEmpty());
    assertTrue(onDisk("ring-blade-collar").isEmpty());
    RunningDesk.Answer done = confirm(shown);
    assertTrue(onDisk("ring-blade-collar").isPresent());
    try (Shelf shelf = Shelf.open(desk.library(), Watcher.NONE)) {
      boolean led =
          shelf.sources().stream()
              .flatMap(source -> shelf.notesOf(source).stream())
              .flatMap(note -> note.note().namings().stream())
              .anyMatch(
                  n -> n.printed().equals("sharp-edged collars") && n.means("ring-blade-collar"));
      assertTrue(led, "the naming went over");
    }
    desk.takeBack(done);
    assertTrue(onDisk("ring-blade-collar").isEmpty());
    RunningDesk.Answer refused =
        desk.post(
            "/vocabulary/ring-bladed/split",
            "label",
            "kept",
            "id",
            "ring-kept",
            "source",
            "nonesuch");
    assertRefused(refused, "split", "no source nonesuch");
    assertEquals("ring-kept", refused.page().getElementById("split-id").val());
  }

  @Test
  void aWordIsPreferredWithItsReason() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-bladed/prefer",
            "label",
            "knife-edged ring",
            "reason",
            "usage",
            "aside",
            "razor ring = nobody knows it\nblade-edge ring");
    Preference made = preference("ring-bladed");
    assertEquals("knife-edged ring", made.label());
    assertEquals("knife-edged ring", answer.page().selectFirst("h1").text());
    assertTrue(answer.page().title().startsWith("knife-edged ring"), answer.page().title());
    assertEquals(Optional.of("usage"), made.reason());
    assertEquals(Optional.of(LocalDate.of(2025, 3, 2)), made.on());
    assertTrue(
        made.setAside().stream().anyMatch(s -> s.reason().equals(Optional.of("nobody knows it"))));
    desk.takeBack(answer);
    assertEquals("bladed ring", preference("ring-bladed").label());
    RunningDesk.Answer refused =
        desk.post(
            "/vocabulary/ring-bladed/prefer", "label", "quite unheard of", "aside", "kept line");
    assertRefused(refused, "prefer", "is no label of ring-bladed");
    assertEquals("kept line", refused.page().getElementById("prefer-aside").val());
  }

  private static Preference preference(String concept) {
    return desk.library().readMine().value().preferences().stream()
        .filter(p -> p.concept().equals(concept))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aWordIsCoinedWithItsEvidence() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/vocabulary/ring-square/coin",
            "label",
            "parcel ring",
            "object",
            "d-9",
            "evidence",
            "photo 2",
            "by",
            "V",
            "on",
            "");
    assertTrue(
        coinages()
            .contains(
                new Coinage(
                    "parcel ring",
                    "ring-square",
                    Optional.of("V"),
                    Optional.of(LocalDate.of(2025, 3, 2)),
                    Optional.of("object d-9: photo 2"))));
    desk.takeBack(answer);
    assertTrue(coinages().stream().noneMatch(c -> c.label().equals("parcel ring")));
    RunningDesk.Answer refused =
        desk.post("/vocabulary/ring-square/coin", "label", "kept word", "on", "yesterday");
    assertRefused(refused, "coin", "say what the word rests on");
    assertEquals("kept word", refused.page().getElementById("coin-label").val());
  }

  private static List<Coinage> coinages() {
    return desk.library().readMine().value().coinages();
  }

  @Test
  void nothingChangesWithoutTheToken() throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri("/vocabulary/ring-vertical/merge"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("into=ring-milled&confirmed=yes"))
            .build();
    assertEquals(403, desk.send(request).status());
    assertTrue(onDisk("ring-vertical").isPresent());
  }
}
