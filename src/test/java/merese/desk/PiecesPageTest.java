package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Observation.Sense;
import merese.model.OwnObject.Photograph;
import merese.store.Stored;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PiecesPageTest {
  private static final String BOUNDARY = "----------merese-test";

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

  private static Optional<OwnObject> onDisk(String ref) {
    return desk.library().findObject(ref).map(Stored::value);
  }

  private static OwnObject piece(String ref) {
    return onDisk(ref).orElseThrow();
  }

  private static void assertRefused(RunningDesk.Answer answer, String form, String says) {
    assertEquals(422, answer.status());
    Document page = answer.page();
    assertTrue(page.selectFirst("#" + form + " #problem").text().contains(says), page.text());
    assertTrue(page.getElementById(form).hasAttr("open"));
    assertTrue(page.selectFirst("#" + form + " form").hasAttr("data-refused"));
  }

  @Test
  void everyPieceIsListed() throws Exception {
    Document page = desk.get("/pieces").page();
    var answer = desk.get("/pieces?as=json").json();
    assertEquals(10, answer.size());
    for (var piece : answer) {
      String said = page.text();
      assertTrue(said.contains(piece.get("ref").asText() + ": " + piece.get("title").asText()));
    }
    assertEquals(answer.size(), page.select(".shelfful img").size(), "each has a picture");
  }

  @ParameterizedTest
  @ValueSource(strings = {"c-4", "d-17", "d-9", "d-3", "w-5"})
  void saysAllThatIsRecordedOfAPiece(String ref) throws Exception {
    Document page = desk.get("/pieces/" + ref).page();
    page.select(".concept-changes, datalist").remove();
    var answer = desk.get("/pieces/" + ref + "?as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
  }

  @Test
  void aNoteThatIsLinkedToThePieceStandsWithIt() throws Exception {
    int linked = 0;
    for (var piece : desk.get("/pieces?as=json").json()) {
      Document page = desk.get("/pieces/" + piece.get("ref").asText()).page();
      linked += page.select("section[aria-labelledby=notes] li a[href^=/shelf/]").size();
    }
    assertTrue(linked > 0, "some note of the demo speaks of one of the pieces");
  }

  @Test
  void whatWasLookedForInVainIsSaidSo() throws Exception {
    Element row = desk.get("/pieces/c-4").page().selectFirst("tr.in-vain");
    assertTrue(row.text().contains("matching number looked for, not found"), row.text());
  }

  @Test
  void aPieceThatIsNotThereHasNoPage() throws Exception {
    assertEquals(404, desk.get("/pieces/nonesuch").status());
    assertEquals(404, desk.post("/pieces/nonesuch/describe", "title", "x").status());
    assertEquals(404, desk.post("/pieces/d-9/nonesuch").status());
  }

  @Test
  void aPieceIsAdded() throws Exception {
    RunningDesk.Answer answer =
        desk.post(
            "/pieces",
            "ref",
            "d-90",
            "title",
            "Quart decanter with two rings",
            "measurements",
            "height 240 mm",
            "provenance",
            "A market stall.",
            "place",
            "cabinet 9");
    assertEquals("Quart decanter with two rings", piece("d-90").title());
    assertEquals(Optional.of("cabinet 9"), piece("d-90").place());
    desk.takeBack(answer);
    assertTrue(onDisk("d-90").isEmpty());
    RunningDesk.Answer refused =
        desk.post("/pieces", "ref", "d-9", "title", "kept <title>", "provenance", "kept words");
    assertRefused(refused, "add", "there is a piece d-9 already");
    assertEquals("kept <title>", refused.page().getElementById("add-title").val());
    assertEquals("kept words", refused.page().getElementById("add-provenance").val());
    RunningDesk.Answer bad = desk.post("/pieces", "ref", "../x", "title", "kept");
    assertEquals(422, bad.status());
  }

  @Test
  void aPieceIsDescribed() throws Exception {
    OwnObject before = piece("d-9");
    RunningDesk.Answer answer =
        desk.post("/pieces/d-9/describe", "title", before.title(), "place", "cabinet 7");
    assertEquals(Optional.of("cabinet 7"), piece("d-9").place());
    assertEquals(before.provenance(), piece("d-9").provenance());
    desk.takeBack(answer);
    assertEquals(before, piece("d-9"));
    RunningDesk.Answer refused =
        desk.post("/pieces/d-9/describe", "title", " ", "place", "kept place");
    assertRefused(refused, "describe", "say in a line");
    assertEquals("kept place", refused.page().getElementById("describe-place").val());
  }

  @Test
  void anObservationIsRecordedAndReadByTheKey() throws Exception {
    OwnObject before = piece("d-9");
    RunningDesk.Answer answer =
        desk.post(
            "/pieces/d-9/observe",
            "part",
            "ring, front",
            "character",
            "join",
            "sense",
            "felt",
            "found",
            "there");
    assertTrue(
        piece("d-9")
            .observations()
            .contains(
                new Observation(
                    "ring, front", "join", Optional.empty(), Sense.FELT, true, Optional.empty())));
    String told = answer.page().select(".told").text();
    assertTrue(told.contains("the key reads join: felt on the outside"), told);
    desk.takeBack(answer);
    assertEquals(before, piece("d-9"));

    RunningDesk.Answer refused =
        desk.post(
            "/pieces/d-9/observe",
            "part",
            "kept part",
            "character",
            "seam",
            "value",
            "two",
            "found",
            "no",
            "sense",
            "felt");
    assertRefused(refused, "observe", "has no value");
    assertEquals("kept part", refused.page().getElementById("observe-part").val());
    assertEquals("felt", refused.page().selectFirst("input[name=sense][checked]").val());
    assertEquals("no", refused.page().selectFirst("input[name=found][checked]").val());
  }

  @Test
  void whatCameOfItMustBeSaidAndIsNeverGuessed() throws Exception {
    OwnObject before = piece("d-9");
    for (String found : List.of("like", "", "perhaps")) {
      RunningDesk.Answer refused =
          desk.post("/pieces/d-9/observe", "part", "ring", "character", "join", "found", found);
      assertRefused(refused, "observe", found.equals("like") ? "what it is like" : "what came of");
      Element focus = refused.page().selectFirst("[autofocus]");
      assertEquals(found.equals("like") ? "value" : "found", focus.attr("name"));
      assertTrue(focus.closest("details").hasAttr("open"));
    }
    assertEquals(before, piece("d-9"));
  }

  @Test
  void whatTheKeyDoesNotReadIsSaid() throws Exception {
    RunningDesk.Answer answer =
        desk.post("/pieces/d-9/observe", "part", "base", "character", "zodiac sign", "found", "no");
    assertTrue(answer.page().select(".told").text().contains("the key does not read this"));
    assertFalse(piece("d-9").observations().get(piece("d-9").observations().size() - 1).found());
    desk.takeBack(answer);
  }

  @Test
  void whatAPieceShowsIsRecorded() throws Exception {
    OwnObject before = piece("d-9");
    RunningDesk.Answer answer =
        desk.post(
            "/pieces/d-9/evidence",
            "concept",
            "wavy ring",
            "as",
            "counter-example",
            "words",
            "runs straight");
    assertTrue(
        piece("d-9")
            .evidence()
            .contains(
                new Evidence(
                    "ring-wavy",
                    Evidence.Kind.COUNTER_EXAMPLE,
                    Optional.of("runs straight"),
                    Optional.empty())));
    desk.takeBack(answer);
    assertEquals(before, piece("d-9"));
    RunningDesk.Answer refused =
        desk.post("/pieces/d-9/evidence", "concept", "collar", "words", "kept words");
    assertRefused(refused, "evidence", "may mean several things");
    assertEquals("kept words", refused.page().getElementById("evidence-words").val());
  }

  private static byte[] jpeg() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
    return bytes.toByteArray();
  }

  /** Sends a form with a file, as a browser does. */
  private static RunningDesk.Answer send(
      String path, String token, String name, byte[] file, String... fields) throws Exception {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    field(body, "token", token);
    for (int i = 0; i < fields.length; i += 2) {
      field(body, fields[i], fields[i + 1]);
    }
    write(
        body,
        "--"
            + BOUNDARY
            + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\""
            + name
            + "\"\r\nContent-Type: application/octet-stream\r\n\r\n");
    body.write(file);
    write(body, "\r\n--" + BOUNDARY + "--\r\n");
    RunningDesk.Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri(path))
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    if (answer.status() != 303) {
      return answer;
    }
    RunningDesk.Answer next = desk.get(answer.address());
    return new RunningDesk.Answer(next.status(), answer.address(), next.text());
  }

  private static void field(ByteArrayOutputStream body, String name, String value) {
    write(
        body,
        "--"
            + BOUNDARY
            + "\r\nContent-Disposition: form-data; name=\""
            + name
            + "\"\r\n\r\n"
            + value
            + "\r\n");
  }

  private static void write(ByteArrayOutputStream body, String text) {
    body.writeBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aPhotographThatIsSentIsKeptAndShown() throws Exception {
    OwnObject before = piece("c-4");
    RunningDesk.Answer answer =
        send(
            "/pieces/c-4/photograph",
            desk.token(),
            "back.jpg",
            jpeg(),
            "words",
            "the back",
            "turn",
            "half round",
            "name",
            "");
    Photograph made = piece("c-4").photographs().get(1);
    assertEquals(
        new Photograph("p2", made.file(), Optional.of("the back"), Optional.of("half round")),
        made);
    assertTrue(Files.isRegularFile(desk.library().picture(made.file())));
    Element shown = answer.page().select("figure a[data-enlarge] > img").get(1);
    assertEquals("the back", shown.attr("alt"));
    assertEquals(200, desk.get(shown.attr("src")).status());

    RunningDesk.Answer named =
        send(
            "/pieces/d-3/photograph",
            desk.token(),
            "",
            new byte[0],
            "name",
            made.file(),
            "id",
            "px");
    assertEquals(
        made.file(),
        piece("d-3").photographs().stream()
            .filter(p -> p.id().equals("px"))
            .findFirst()
            .orElseThrow()
            .file());
    desk.takeBack(named);
    desk.takeBack(answer);
    assertEquals(before, piece("c-4"));
  }

  @Test
  void whatIsNoPictureIsRefusedUnderItsOwnName() throws Exception {
    RunningDesk.Answer refused =
        send(
            "/pieces/c-4/photograph",
            desk.token(),
            "list.txt",
            "no picture".getBytes(StandardCharsets.UTF_8),
            "words",
            "kept words");
    assertRefused(refused, "photograph", "list.txt: this is no picture that can be read");
    assertEquals("kept words", refused.page().getElementById("photograph-words").val());
    RunningDesk.Answer outside =
        send("/pieces/c-4/photograph", desk.token(), "", new byte[0], "name", "../library.json");
    assertRefused(outside, "photograph", "there is no picture");
    RunningDesk.Answer neither =
        send("/pieces/c-4/photograph", desk.token(), "", new byte[0], "name", "");
    assertRefused(neither, "photograph", "choose a file");
  }

  @Test
  void nothingIsRecordedWithoutTheToken() throws Exception {
    OwnObject before = piece("c-4");
    assertEquals(
        403, send("/pieces/c-4/photograph", "wrong", "back.jpg", jpeg(), "words", "x").status());
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri("/pieces/c-4/describe"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("title=other"))
            .build();
    assertEquals(403, desk.send(request).status());
    assertEquals(before, piece("c-4"));
  }
}
