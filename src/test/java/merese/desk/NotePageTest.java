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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.imageio.ImageIO;
import merese.desk.RunningDesk.Answer;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.store.LibraryFolder;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotePageTest {
  private static final String WORK = "works/quenby-neck-and-stopper.json";
  private static final String SOURCE = "quenby-1926";
  private static final int NOTES = 17;

  @TempDir private Path home;
  private RunningDesk desk;

  @BeforeEach
  void start() throws IOException {
    desk = RunningDesk.onDemo(home);
  }

  @AfterEach
  void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  /** As it is on the disk. */
  private List<Note> notes() {
    return notes(SOURCE);
  }

  private List<Note> notes(String key) {
    LibraryFolder library = LibraryFolder.open(desk.library().path());
    for (Edition edition : library.readWork(library.path().resolve(WORK)).value().editions()) {
      if (edition.key().equals(key)) {
        return edition.notes();
      }
    }
    throw new AssertionError(key);
  }

  private Note last() {
    List<Note> notes = notes();
    return notes.get(notes.size() - 1);
  }

  private Answer note(String... more) throws Exception {
    List<String> fields = new ArrayList<>(List.of("source", SOURCE, "by", "V"));
    fields.addAll(List.of(more));
    return desk.post("/note", fields.toArray(String[]::new));
  }

  /** Sends a form with a file, as a browser does. */
  private Answer send(String name, byte[] file, String... fields) throws Exception {
    String boundary = "----a-part-of-the-form";
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    List<String> all = new ArrayList<>(List.of("token", desk.token(), "source", SOURCE));
    all.addAll(List.of("by", "V"));
    all.addAll(List.of(fields));
    for (int i = 0; i < all.size(); i += 2) {
      body.writeBytes(
          bytes(
              "--"
                  + boundary
                  + "\r\nContent-Disposition: form-data; name=\""
                  + all.get(i)
                  + "\"\r\n\r\n"
                  + all.get(i + 1)
                  + "\r\n"));
    }
    body.writeBytes(
        bytes(
            "--"
                + boundary
                + "\r\nContent-Disposition: form-data; name=\"photo\"; filename=\""
                + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n"));
    body.writeBytes(file);
    body.writeBytes(bytes("\r\n--" + boundary + "--\r\n"));
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/note"))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    if (answer.status() != 303) {
      return answer;
    }
    return new Answer(200, answer.address(), desk.get(answer.address()).text());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** With words behind its end, which no picture that is encoded anew still has. */
  private static byte[] jpeg() throws IOException {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    image.setRGB(3, 3, 0xFF8800);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(image, "jpg", out));
    out.writeBytes(bytes("taken on the terrace"));
    return out.toByteArray();
  }

  private static String problem(Answer answer) {
    assertEquals(422, answer.status());
    return answer.page().selectFirst("#problem").text();
  }

  private static String value(Document page, String field) {
    Element element = page.selectFirst("form.note-form [name=" + field + "]");
    return element.tagName().equals("textarea") ? element.wholeText() : element.val();
  }

  @Test
  void takesTenNotesInARowWithSourceAndPageKept() throws Exception {
    String at = "p. 41";
    String seen = "";
    for (int i = 1; i <= 10; i++) {
      Answer answer =
          note("at", at, "open", at, "seen", seen, "term", "odd ring no. " + i, "does", "names");
      assertEquals(200, answer.status(), answer.text());
      Document page = answer.page();
      assertEquals(SOURCE, value(page, "source"));
      assertEquals(at, value(page, "at"));
      assertEquals("", value(page, "term"));
      assertTrue(page.selectFirst("#term").hasAttr("autofocus"));
      assertTrue(page.selectFirst("#taken").text().contains("odd ring no. " + i));
      assertTrue(page.select("#noted li").text().contains("odd ring no. " + i));
      assertTrue(page.selectFirst("#last li").text().contains("odd ring no. " + i));
      seen = value(page, "seen");
    }
    assertEquals("p. 41", seen);
    assertEquals(NOTES + 10, notes().size());
    Note last = last();
    assertEquals("odd ring no. 10", last.namings().get(0).printed());
    assertEquals(Optional.empty(), last.namings().get(0).concept());
    assertEquals("V", last.checked().orElseThrow().by());
    assertEquals("2025-03-02", last.checked().orElseThrow().on().orElseThrow().toString());
  }

  @Test
  void aTermOfTheVocabularyHasItsMeaningAndCanBeTakenBack() throws Exception {
    Answer answer = note("at", "p. 44", "term", "bladed ring");
    assertEquals("ring-bladed", last().namings().get(0).concept().orElseThrow());
    String number = answer.page().selectFirst(".done input[name=number]").val();
    desk.post("/undo", "number", number);
    assertEquals(NOTES, notes().size());
  }

  @Test
  void anUnknownTermIsLeftOpenAndWhatItMayMeanIsSaid() throws Exception {
    Answer answer = note("at", "p. 44", "term", "bladed rigns");
    assertEquals(Optional.empty(), last().namings().get(0).concept());
    String remark = answer.page().selectFirst("#taken .remark").text();
    assertTrue(remark.startsWith("No word of the vocabulary is “bladed rigns”"), remark);
    assertTrue(remark.contains("ring-bladed"), remark);
  }

  @Test
  void aHomonymComesBackWithItsMeaningsAndIsTakenWithOne() throws Exception {
    Answer asked =
        note("at", "p. 44", "term", "triple rings", "text", "a triple ring", "does", "caption");
    assertEquals(422, asked.status());
    assertEquals(NOTES, notes().size());
    Document page = asked.page();
    List<String> meanings = page.select("input[name=meaning]").eachAttr("value");
    assertTrue(meanings.size() >= 3, meanings.toString());
    assertTrue(meanings.contains("ring-annulated"), meanings.toString());
    assertEquals("?", meanings.get(meanings.size() - 1));
    for (Element label : page.select(".meaning-choice:has(.definition)")) {
      assertFalse(label.selectFirst(".definition").text().isBlank(), label.text());
    }
    assertEquals("1", page.selectFirst(".meaning-choice").attr("data-key"));
    assertEquals("triple rings", value(page, "term"));
    assertEquals("a triple ring", value(page, "text"));
    assertTrue(page.selectFirst("[name=does][value=caption]").hasAttr("checked"));
    assertEquals(1, page.select("select[name=why], fieldset:has(input[name=why])").size());
    note(
        "at",
        "p. 44",
        "term",
        "triple rings",
        "asked",
        value(page, "asked"),
        "text",
        "a triple ring",
        "does",
        "caption",
        "meaning",
        "ring-annulated",
        "why",
        "picture");
    Note note = last();
    assertEquals("ring-annulated", note.namings().get(0).concept().orElseThrow());
    assertEquals(Why.PICTURE, note.namings().get(0).why().orElseThrow());
    assertEquals(Place.Medium.CAPTION, note.places().get(0).medium());
    note("at", "p. 46", "term", "triple rings", "asked", "triple rings", "meaning", "?");
    assertEquals(Optional.empty(), last().namings().get(0).concept());
  }

  @Test
  void aChoiceBelongsToTheTermThatItWasShownFor() throws Exception {
    note(
        "at", "p. 44", "term", "bladed ring", "asked", "triple rings", "meaning", "ring-annulated");
    assertEquals("ring-bladed", last().namings().get(0).concept().orElseThrow());
  }

  @Test
  void whatIsRarelyNeededIsTakenToo() throws Exception {
    note(
        "at",
        "pl. XV",
        "term",
        "",
        "unnamed",
        "on",
        "does",
        "drawing",
        "as",
        "ring-bladed",
        "why",
        "picture",
        "text",
        "See the\r\nneck.",
        "reading",
        "a plain one",
        "texts",
        "p. 50\np. 51",
        "plates",
        "pl. XVI",
        "claim-date",
        "c. 1790\nabout 1800",
        "claim-copy-warning",
        "often copied",
        "about",
        "object",
        "shows",
        "detail",
        "piece",
        "q9",
        "picture",
        "q-15");
    Note note = last();
    assertEquals("", note.namings().get(0).printed());
    assertEquals("ring-bladed", note.namings().get(0).concept().orElseThrow());
    assertEquals(
        List.of("pl. XV", "pl. XVI", "p. 50", "p. 51"),
        note.places().stream().map(p -> p.locator().printed()).toList());
    assertEquals(Place.Shows.DETAIL, note.places().get(0).shows().orElseThrow());
    assertEquals(Optional.of("q-15"), note.places().get(0).picture());
    assertEquals(Optional.of("q9"), note.places().get(3).piece());
    assertEquals("See the\nneck.", note.quotation().orElseThrow());
    assertEquals("a plain one", note.reading().orElseThrow());
    assertEquals(
        List.of("c. 1790", "about 1800", "often copied"),
        note.claims().stream().map(Claim::words).toList());
    assertEquals(Claim.About.OBJECT, note.claims().get(1).about());
  }

  @Test
  void aPlaceIsReadAsInASitting() throws Exception {
    note("at", "44", "term", "plain ring");
    assertEquals("p. 44", last().places().get(0).locator().printed());
    note("at", "n. 3", "open", "p. 44", "term", "plain ring");
    assertEquals("p. 44, n. 3", last().places().get(0).locator().printed());
  }

  @Test
  void pagesAreTurnedAndWhatWasSeenIsKept() throws Exception {
    Document page = desk.get("/note?source=" + SOURCE + "&at=p.+41").page();
    String next = page.selectFirst("#note-next").attr("href");
    assertEquals("/note?source=quenby-1926&at=p.%2042&seen=pp.%2041%E2%80%9342", next);
    assertEquals(
        "p. 40", value(desk.get(page.selectFirst("#note-back").attr("href")).page(), "at"));
    Answer turned = note("at", "p. 42", "seen", "pp. 41–42", "term", "+");
    assertEquals("p. 43", value(turned.page(), "at"));
    assertEquals(
        "/looked?source=quenby-1926&extent=pp.%2041%E2%80%9343&at=p.%2043",
        turned.page().selectFirst("#note-finish").attr("href"));
    assertEquals(NOTES, notes().size());
  }

  @Test
  void turningThePageByTheTermKeepsWhatWasTyped() throws Exception {
    Document page =
        note(
                "at", "p. 42",
                "term", "+",
                "does", "drawing",
                "reading", "mine\r\nof two lines",
                "claim-date", "c. 1790",
                "unnamed", "on",
                "under", "stopper")
            .page();
    assertEquals("p. 43", value(page, "at"));
    assertEquals("", value(page, "term"));
    assertTrue(page.selectFirst("details.more").hasAttr("open"));
    assertEquals(
        "mine\r\nof two lines", page.selectFirst("[name=reading]").wholeText(), "as it was typed");
    assertEquals("c. 1790", page.selectFirst("[name=claim-date]").wholeText());
    assertEquals("drawing", page.selectFirst("[name=does][checked]").val());
    assertTrue(page.selectFirst("[name=unnamed]").hasAttr("checked"));
    assertEquals("stopper", page.selectFirst("[name=under] [selected]").val());
    assertEquals(NOTES, notes().size());
  }

  @Test
  void whatIsCorrectedMustBeNamed() throws Exception {
    Answer answer = note("at", "p. 42", "term", "plain ring", "does", "corrects");
    assertEquals(422, answer.status());
    Element field = answer.page().selectFirst("[name=corrects]");
    assertEquals("true", field.attr("aria-invalid"));
    assertTrue(field.hasAttr("autofocus"));
    assertTrue(answer.page().selectFirst("details.more").hasAttr("open"));
    assertEquals(NOTES, notes().size());
  }

  @Test
  void besideTheFormStandsWhatIsNotedOfThePage() throws Exception {
    String address = "/note?source=" + SOURCE + "&at=pl.+XII,+fig.+3";
    Document page = desk.get(address).page();
    List<String> noted = page.select("#noted li").eachText();
    assertTrue(noted.get(0).contains("knife-edged rings"), noted.toString());
    var answer = desk.get(address + "&as=json").json();
    assertEquals("pl. XII", answer.get("at").asText());
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
    Document part = desk.get("/note/beside?source=" + SOURCE + "&at=pl.+XII").page();
    assertEquals(noted, part.select("#noted li").eachText());
  }

  @Test
  void suggestsTheSourcesOwnTermsFirst() throws Exception {
    Document page = desk.get("/note/terms/" + SOURCE + "?term=knife").page();
    Element first = page.selectFirst("[role=option]");
    assertEquals("knife-edged rings", first.attr("data-text"));
    assertEquals("printed", first.attr("data-kind"));
    assertFalse(desk.get("/note/terms?term=bladed").page().select("[role=option]").isEmpty());
  }

  @Test
  void theSameNoteIsTakenTwiceOnlyWhereThatIsSaid() throws Exception {
    note("at", "p. 44", "term", "bladed ring");
    Answer twice = note("at", "p. 44", "term", "bladed ring");
    assertTrue(problem(twice).startsWith("this very note is there already (n18)"));
    assertEquals("on", twice.page().selectFirst("#note-again").val());
    assertEquals(NOTES + 1, notes().size());
    note("at", "p. 44", "term", "bladed ring", "again", "on");
    assertEquals(NOTES + 2, notes().size());
  }

  @Test
  void whatCannotBeTakenIsSaidAtItsFieldWithNothingLost() throws Exception {
    String[][] wrong = {
      {"at", "at", "page forty"},
      {"at", "at", ""},
      {"source", "source", "no such book"},
      {"source", "source", "quenby"},
      {"term", "term", ""},
      {"does", "does", "sings"},
      {"texts", "texts", "nowhere"},
      {"as", "as", "no such concept"},
      {"shows", "shows", "detail"},
      {"same", "object", "for its chip"},
      {"corrects", "corrects", "quenby-1949:p. 3"},
      {"about", "about", "weather"},
    };
    for (String[] each : wrong) {
      List<String> fields =
          new ArrayList<>(
              List.of("source", SOURCE, "at", "p. 44", "term", "bladed ring", "by", "V"));
      int at = fields.indexOf(each[0]);
      if (at >= 0) {
        fields.set(at + 1, each[2]);
      } else {
        fields.addAll(List.of(each[0], each[2]));
      }
      fields.addAll(List.of("text", "<words> & \"more\""));
      Answer answer = desk.post("/note", fields.toArray(String[]::new));
      String said = problem(answer);
      Document page = answer.page();
      Element box = page.selectFirst("#problem").parent();
      assertFalse(box.select("[name=" + each[1] + "]").isEmpty(), each[0] + ": " + said);
      assertEquals("<words> & \"more\"", value(page, "text"));
      if (!Set.of("does", "about").contains(each[0])) { // no choice of these
        assertTrue(page.select("[name=" + each[0] + "]").outerHtml().contains(each[2]), each[0]);
      }
      assertTrue(page.selectFirst("form.note-form").hasAttr("data-refused"));
    }
    assertEquals(NOTES, notes().size());
  }

  @Test
  void whatTheLibraryRefusesIsSaidAboveTheForm() throws Exception {
    Answer answer = note("at", "p. 44", "term", "bladed ring", "part", "no-such-part");
    assertTrue(problem(answer).contains("has no part \"no-such-part\""));
    assertEquals("bladed ring", value(answer.page(), "term"));
  }

  @Test
  void whereFilesAreDamagedNothingTypedIsLost() throws Exception {
    for (String file : List.of(WORK, "vocabulary/ring.json", "library.json")) {
      Path path = desk.library().path().resolve(file);
      String sound = Files.readString(path, StandardCharsets.UTF_8);
      Files.writeString(path, "{", StandardCharsets.UTF_8);
      Answer answer =
          note("at", "p. 44", "term", "triple rings", "text", "as it stands", "asked", "");
      Files.writeString(path, sound, StandardCharsets.UTF_8);
      assertEquals(422, answer.status(), file);
      assertEquals("triple rings", value(answer.page(), "term"), file);
      assertEquals("as it stands", value(answer.page(), "text"), file);
    }
  }

  private List<Path> pictures() throws IOException {
    Path folder = desk.library().path().resolve("pictures");
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (var files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aPhotographIsKeptEncodedAnewAndGoesWithItsNote() throws Exception {
    List<Path> before = pictures();
    byte[] original = jpeg();
    Answer answer = send("neck.jpg", original, "at", "pl. XV", "term", "ring", "does", "photo");
    assertEquals(200, answer.status(), answer.text());
    String file = last().places().get(0).photo().orElseThrow();
    assertEquals(before.size() + 1, pictures().size());
    byte[] kept = Files.readAllBytes(desk.library().picture(file));
    assertEquals(40, ImageIO.read(desk.library().picture(file).toFile()).getWidth());
    assertFalse(new String(kept, StandardCharsets.ISO_8859_1).contains("terrace"));
    Document page = answer.page();
    assertEquals("/pictures/" + file, page.selectFirst("#noted .thumb").attr("href"));
    assertEquals(200, desk.get("/pictures/" + file).status());
    desk.post("/undo", "number", page.selectFirst(".done input[name=number]").val());
    assertEquals(NOTES, notes().size());
    assertEquals(before, pictures());
  }

  @Test
  void aFileThatIsNoPictureIsRefusedWithNothingLost() throws Exception {
    List<Path> before = pictures();
    Answer answer =
        send("neck.jpg", bytes("no picture"), "at", "pl. XV", "term", "ring", "does", "photo");
    assertTrue(problem(answer).startsWith("neck.jpg: this is no picture"), problem(answer));
    Document page = answer.page();
    assertEquals("ring", value(page, "term"));
    assertTrue(page.selectFirst("details.more").hasAttr("open"));
    assertEquals(NOTES, notes().size());
    assertEquals(before, pictures());
  }

  @Test
  void aPhotographWaitsForTheChoiceOfAMeaning() throws Exception {
    Answer asked =
        send("neck.jpg", jpeg(), "at", "pl. XV", "term", "triple rings", "does", "photo");
    assertEquals(422, asked.status());
    Document page = asked.page();
    assertTrue(page.selectFirst("#held").text().contains("neck.jpg"));
    note(
        "at",
        "pl. XV",
        "term",
        "triple rings",
        "does",
        "photo",
        "held",
        value(page, "held"),
        "asked",
        "triple rings",
        "meaning",
        "ring-annulated");
    assertTrue(last().places().get(0).photo().isPresent());
    note("at", "pl. XVI", "term", "ring", "does", "photo", "held", value(page, "held"));
    assertEquals(Optional.empty(), last().places().get(0).photo());
  }

  @Test
  void ofTwoWhoNoteInOneSourceAtOnceBothKeepWhatTheyWrote() throws Exception {
    String token = desk.token();
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      List<Callable<Answer>> posts = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        String body =
            "token=" + token + "&source=" + SOURCE + "&at=p.+44&by=V&term=ring+of+hand+" + i;
        posts.add(
            () ->
                desk.send(
                    HttpRequest.newBuilder(desk.uri("/note"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build()));
      }
      for (Future<Answer> answer : both.invokeAll(posts)) {
        assertEquals(303, answer.get().status(), answer.get().text());
      }
    } finally {
      both.shutdown();
    }
    Set<String> printed = new java.util.TreeSet<>();
    Set<String> ids = new java.util.TreeSet<>();
    for (Note note : notes()) {
      ids.add(note.id());
      if (note.namings().get(0).printed().startsWith("ring of hand ")) {
        printed.add(note.namings().get(0).printed());
      }
    }
    assertEquals(12, printed.size());
    assertEquals(NOTES + 12, ids.size());
  }

  @Test
  void withoutItsTokenNothingIsWritten() throws Exception {
    Answer answer =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/note"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "source=" + SOURCE + "&at=p.+44&term=ring&by=V"))
                .build());
    assertEquals(403, answer.status());
    assertEquals(NOTES, notes().size());
  }

  @Test
  void asJsonItAnswersAsTheTerminalDoes() throws Exception {
    var taken =
        desk.post("/note?as=json", "source", SOURCE, "by", "V", "at", "p. 44", "term", "ring")
            .json();
    assertEquals("n18", taken.get("notes").get(0).get("id").asText());
    Answer refused =
        desk.post("/note?as=json", "source", SOURCE, "by", "V", "at", "", "term", "ring");
    assertEquals(422, refused.status());
    assertEquals("at", refused.json().get("wrong").get("field").asText());
  }

  @Test
  void aListOfHeadingsIsTakenWholeOrNotAtAll() throws Exception {
    Document page = desk.get("/list-of-headings?source=" + SOURCE + "&at=p.+24").page();
    assertEquals("p. 24", page.selectFirst("[name=at]").val());
    String[] list = {
      "source",
      SOURCE,
      "at",
      "p. 24",
      "by",
      "V",
      "does",
      "drawing",
      "headings",
      "bladed ring\r\nmilled collar or scored collar\r\ntriple rings\r\n"
    };
    Answer asked = desk.post("/list-of-headings", list);
    assertEquals(422, asked.status());
    assertEquals(NOTES, notes().size());
    String name = asked.page().selectFirst(".choosing input").attr("name");
    assertEquals("meaning:triple rings", name);
    String kept = asked.page().selectFirst("[name=headings]").wholeText();
    assertTrue(kept.contains("milled collar or scored collar"), kept);
    List<String> chosen = new ArrayList<>(List.of(list));
    chosen.addAll(List.of(name, "ring-annulated", "why:triple rings", "text"));
    Answer taken = desk.post("/list-of-headings", chosen.toArray(String[]::new));
    assertEquals(200, taken.status());
    List<Note> notes = notes();
    assertEquals(NOTES + 3, notes.size());
    assertEquals(2, notes.get(NOTES + 1).namings().size());
    assertEquals(Place.Medium.DRAWING, notes.get(NOTES).places().get(0).medium());
    assertEquals(3, taken.page().select("#noted li").size());
    Answer again = desk.post("/list-of-headings", chosen.toArray(String[]::new));
    assertTrue(problem(again).contains("none of the list was written"));
    desk.post("/undo", "number", taken.page().selectFirst(".done input[name=number]").val());
    assertEquals(NOTES, notes().size());
    assertTrue(
        problem(desk.post("/list-of-headings", "source", SOURCE, "at", "p. 24", "by", "V"))
            .contains("has no headings"));
  }
}
