package merese.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import merese.store.History;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditPageTest {
  private static final String ADDRESS = "/edit/source/farrow-1988";

  @TempDir private Path home;
  private RunningDesk desk;
  private Path file;

  @BeforeEach
  void start() throws IOException {
    desk = RunningDesk.onDemo(home);
    file = desk.library().path().resolve("works/farrow-triple-ringed.json");
  }

  @AfterEach
  void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  private static String text(Document page) {
    return page.selectFirst("form#edit textarea[name=text]").wholeText().substring(1);
  }

  private static String read(Document page) {
    return page.select("form#edit [name=read]").val();
  }

  /** As a browser sends it: CR LF at the ends of lines. */
  private RunningDesk.Answer save(String read, String text) throws Exception {
    return desk.post(ADDRESS, "read", read, "text", text.replace("\n", "\r\n"));
  }

  @ParameterizedTest
  @CsvSource({
    "source/farrow-1988, works/farrow-triple-ringed.json",
    "source/farrow-triple-ringed, works/farrow-triple-ringed.json",
    "piece/d-17, objects/d-17.json",
    "vocabulary/ring, vocabulary/ring.json",
    "mine, mine.json",
    "key, vocabulary/characters.json",
    "homonyms, vocabulary/homonyms.json"
  })
  void theFormHoldsTheFileJustAsItIs(String address, String relative) throws Exception {
    var answer = desk.get("/edit/" + address);
    assertEquals(200, answer.status());
    assertEquals(Files.readString(desk.library().path().resolve(relative)), text(answer.page()));
  }

  @Test
  void savesByteForByteAndCanBeTakenBack() throws Exception {
    byte[] before = Files.readAllBytes(file);
    Document page = desk.get(ADDRESS).page();
    String changed =
        text(page).replace("\"title\": \"What Was Triple-Ringed?\"", "\"title\":   \"Né <b> & 1\"");
    var led = save(read(page), changed);
    assertTrue(led.address().startsWith("/shelf/farrow-1988?done="), led.address());
    assertArrayEquals(changed.getBytes(StandardCharsets.UTF_8), Files.readAllBytes(file));
    assertTrue(led.page().select("h1").text().contains("Né <b> & 1"), led.text());
    desk.takeBack(led);
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void aFileWithCarriageReturnsKeepsThem() throws Exception {
    Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
    Document page = desk.get(ADDRESS).page();
    save(read(page), text(page).replace("Triple-Ringed", "Threefold"));
    String now = Files.readString(file);
    assertTrue(now.contains("Threefold"));
    assertEquals(now, now.replace("\r\n", "\n").replace("\n", "\r\n"));
  }

  @Test
  void whatWouldBreakTheLibraryIsSaidWithLineAndColumnAndKept() throws Exception {
    byte[] before = Files.readAllBytes(file);
    Document page = desk.get(ADDRESS).page();
    String broken = text(page).replaceFirst("\"kind\":", "kind:") + "\n<script>typed</script>\n";
    var refused = save(read(page), broken);
    assertEquals(422, refused.status());
    assertTrue(
        refused.page().select(".problems").text().matches("line \\d+, column \\d+: .*"),
        refused.page().select(".problems").text());
    assertEquals(broken, text(refused.page()));
    assertTrue(refused.page().getElementById("edit").hasAttr("data-refused"));
    assertArrayEquals(before, Files.readAllBytes(file));
    String mended = text(refused.page()).replace("\n<script>typed</script>\n", "");
    assertEquals(
        200, save(read(refused.page()), mended.replaceFirst("kind:", "\"kind\":")).status());
  }

  @Test
  void aSecondWindowOverwritesNothingThatItHasNotSeen() throws Exception {
    Document one = desk.get(ADDRESS).page();
    Document two = desk.get(ADDRESS).page();
    String first = text(one).replace("Triple-Ringed", "First & <i>");
    String second = text(two).replace("Triple-Ringed", "Second");
    assertEquals(200, save(read(one), first).status());

    var conflict = save(read(two), second);
    assertEquals(409, conflict.status());
    assertEquals(first, Files.readString(file));
    assertEquals(second, text(conflict.page()));
    Document page = conflict.page();
    assertTrue(page.select(".differences .disk mark").text().contains("First & <i>"));
    assertTrue(page.select(".differences .typed mark").text().contains("Second"));
    assertEquals(1, page.select(".differences .disk").size());

    assertEquals(200, save(read(page), second).status());
    assertEquals(second, Files.readString(file));
  }

  @Test
  void whatWasSeenInAConflictMustStillBeThere() throws Exception {
    Document page = desk.get(ADDRESS).page();
    String mine = text(page).replace("Triple-Ringed", "Mine");
    Files.writeString(file, text(page).replace("Triple-Ringed", "Terminal"));
    var conflict = save(read(page), mine);
    assertEquals(409, conflict.status());
    Files.writeString(file, text(page).replace("Triple-Ringed", "Editor"));
    var again = save(read(conflict.page()), mine);
    assertEquals(409, again.status());
    assertTrue(again.page().select(".differences .disk").text().contains("Editor"));
    assertTrue(Files.readString(file).contains("Editor"));
  }

  @Test
  void ofSavesThatRaceOneIsTakenAndTheOthersAreTold() throws Exception {
    Document page = desk.get(ADDRESS).page();
    String read = read(page);
    String was = text(page);
    String token = desk.token();
    List<CompletableFuture<RunningDesk.Answer>> racing =
        List.of("A", "B", "C", "D").stream()
            .map(name -> was.replace("Triple-Ringed", "Racer " + name))
            .map(text -> CompletableFuture.supplyAsync(() -> send(token, read, text)))
            .toList();
    List<Integer> statuses = racing.stream().map(f -> f.join().status()).sorted().toList();
    assertEquals(List.of(303, 409, 409, 409), statuses);
    long changes =
        History.of(desk.library()).lines().stream()
            .filter(line -> line.entry().paths().contains("works/farrow-triple-ringed.json"))
            .count();
    assertEquals(1, changes);
  }

  private RunningDesk.Answer send(String token, String read, String text) {
    String body = "token=" + token + "&read=" + read + "&text=" + RunningDesk.encoded(text);
    try {
      return desk.send(
          HttpRequest.newBuilder(desk.uri(ADDRESS))
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString(body))
              .build());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aFileThatAPageCannotHoldIsNotOpened() throws Exception {
    byte[] latin = "{\"title\": \"caf\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file, latin);
    Document page = desk.get("/edit/source/farrow-triple-ringed").page();
    assertEquals(0, page.select("textarea").size());
    assertTrue(page.select(".caution").text().contains("not in UTF-8"));
    var refused = desk.post("/edit/source/farrow-triple-ringed", "read", "x", "text", "typed");
    assertEquals(422, refused.status());
    assertTrue(refused.text().contains("typed"));
    assertArrayEquals(latin, Files.readAllBytes(file));
  }

  @Test
  void whatIsNotThereIsSaid() throws Exception {
    var unknown = desk.get("/edit/source/farrow-1989");
    assertEquals(404, unknown.status());
    assertTrue(unknown.text().contains("farrow-1988"), unknown.text());
    assertEquals(404, desk.get("/edit/nothing").status());
    assertEquals(404, desk.get("/edit/source").status());
  }

  @Test
  void withoutTokenNothingIsSaved() throws Exception {
    Document page = desk.get(ADDRESS).page();
    var refused = send("none", read(page), text(page) + " ");
    assertEquals(403, refused.status());
    assertFalse(Files.readString(file).endsWith(" "));
  }
}
