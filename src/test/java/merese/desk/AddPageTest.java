package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import merese.model.Copy;
import merese.model.SourceKind;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.Watcher;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AddPageTest {
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

  private <T> T source(String key, Function<Source, T> of) {
    try (Shelf shelf = Shelf.open(desk.library(), Watcher.NONE)) {
      return of.apply(
          shelf.sources().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow());
    }
  }

  private boolean has(String key) {
    try (Shelf shelf = Shelf.open(desk.library(), Watcher.NONE)) {
      return shelf.sources().stream().anyMatch(s -> s.key().equals(key));
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyKindIsAskedForItsOwnFieldsWithLabels(SourceKind kind) throws Exception {
    Document page = desk.get("/add?kind=" + kind.code()).page();
    for (var field : page.select("#add input:not([type=hidden]), #add textarea, #add select")) {
      boolean labelled =
          !page.select("label[for=\"" + field.id() + "\"]").isEmpty()
              || field.parent().normalName().equals("label");
      assertTrue(labelled, field.outerHtml());
    }
    boolean house = page.select("#add > .columns #field-house").isEmpty();
    assertEquals(kind != SourceKind.SALE_CATALOGUE, house);
  }

  @Test
  void aSourceIsAddedWithItsCopyAndTakenBack() throws Exception {
    var led =
        desk.post(
            "/add",
            "kind",
            "monograph",
            "title",
            "Rings & <Rims>",
            "author",
            "Mossley, Ann\nTarn, Bert",
            "year",
            "[c. 1952]",
            "shelf-mark",
            "Z9");
    assertEquals(200, led.status());
    assertTrue(led.address().startsWith("/shelf/mossley-1952?done="), led.address());
    String key = "mossley-1952";
    assertEquals("Rings & <Rims>", source(key, Source::title));
    assertEquals(2, source(key, s -> s.work().contributors()).size());
    assertEquals(Optional.of("Z9"), source(key, s -> s.edition().copies().get(0)).shelfMark());
    assertEquals("Take it back", led.page().select(".done button").text());
    desk.takeBack(led);
    assertFalse(has(key));
  }

  @Test
  void aFurtherEditionStandsBesideTheOthers() throws Exception {
    var led =
        desk.post(
            "/add",
            "edition-of",
            "quenby-1949",
            "year",
            "1955",
            "statement",
            "4th edn",
            "form",
            "revised");
    assertTrue(led.address().startsWith("/shelf/quenby-1955?done="), led.address());
    String work = source("quenby-1949", Source::workId);
    assertEquals(work, source("quenby-1955", Source::workId));
    assertEquals(
        Optional.of("quenby-1949"),
        source("quenby-1955", s -> s.edition().lineage().orElseThrow().parent()));
  }

  @Test
  void anotherCopyIsAdded() throws Exception {
    int before = source("quenby-1949", s -> s.edition().copies()).size();
    desk.post("/add", "copy-of", "quenby-1949", "holder", "Brackenford Library");
    List<Copy> copies = source("quenby-1949", s -> s.edition().copies());
    assertEquals(before + 1, copies.size());
    assertEquals(Optional.of("Brackenford Library"), copies.get(before).holder());
  }

  @Test
  void aDoubleIsRefusedWithALinkToWhatIsThere() throws Exception {
    String title = source("quenby-1949", Source::title);
    String[] typed = {"kind", "monograph", "title", title, "author", "Quenby, Ada", "year", "1949"};
    String author = source("quenby-1949", s -> s.work().makers().get(0).name().full());
    typed[5] = author;
    var refused = desk.post("/add", typed);
    assertEquals(422, refused.status());
    Document page = refused.page();
    assertEquals(1, page.select("a[href^=/shelf/quenby-]").size(), refused.text());
    assertEquals(title, page.select("#add [name=title]").val());
    assertEquals(1, page.select("#add [name=anyway]").size());
    assertFalse(has("quenby-1949a"));
    String[] anyway = Arrays.copyOf(typed, typed.length + 2);
    anyway[typed.length] = "anyway";
    anyway[typed.length + 1] = "on";
    assertEquals(200, desk.post("/add", anyway).status());
  }

  /** A check digit that is wrong: ISO 2108 would have 2 after 978-0-00-000000. */
  @Test
  void whatCannotBeTakenIsSaidAtItsFieldAndNothingIsLost() throws Exception {
    var refused =
        desk.post(
            "/add",
            "kind",
            "monograph",
            "title",
            "T \"<b>\"",
            "author",
            "One, A\nTwo, B",
            "isbn",
            "978-0-00-000000-3",
            "noted-as",
            "kept");
    assertEquals(422, refused.status());
    Document page = refused.page();
    assertEquals(1, page.select("#wrong-isbn").size(), refused.text());
    assertFalse(page.select("#wrong-isbn").text().contains("--"));
    assertEquals("T \"<b>\"", page.select("[name=title]").val());
    assertEquals("One, A\nTwo, B", page.select("[name=author]").val().strip());
    assertEquals("kept", page.select("[name=noted-as]").val());
    assertTrue(page.getElementById("add").hasAttr("data-refused"));
    var printed =
        desk.post(
            "/add",
            "kind",
            "monograph",
            "title",
            "T",
            "year",
            "1950",
            "isbn",
            "978-0-00-000000-3",
            "as-printed",
            "on");
    assertEquals(200, printed.status());
  }

  @Test
  void whatIsMissingIsSaid() throws Exception {
    var untitled = desk.post("/add", "kind", "leaflet", "year", "1950");
    assertEquals(422, untitled.status());
    assertEquals("1950", untitled.page().select("[name=year]").val());
    var undated = desk.post("/add", "edition-of", "quenby-1949", "statement", "9th edn");
    assertEquals(422, undated.status());
    assertEquals("9th edn", undated.page().select("[name=statement]").val());
    var loose = desk.post("/add", "kind", "monograph", "title", "T", "volume", "3");
    assertEquals(422, loose.status());
    assertTrue(loose.page().select("#wrong-volume").text().contains("Journal"), loose.text());
    assertEquals(404, desk.get("/add?copy-of=no-such-key").status());
  }

  @Test
  void withoutTokenNothingIsAdded() throws Exception {
    var refused =
        desk.send(
            HttpRequest.newBuilder(desk.uri("/add"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("kind=leaflet&title=T&year=1950"))
                .build());
    assertEquals(403, refused.status());
  }

  @Test
  void whatIsWrongIsWhereTheEyeIs() throws Exception {
    Document page = desk.post("/add", "kind", "monograph", "title", " ").page();
    Element field = page.selectFirst("[autofocus]");
    assertEquals("title", field.attr("name"));
    assertEquals("true", field.attr("aria-invalid"));
    assertTrue(page.getElementById("wrong-title").text().contains("needs a title"));
    Document key =
        desk.post("/add", "kind", "monograph", "title", "Necks", "year", "1931", "key", "A B")
            .page();
    assertEquals("key", key.selectFirst("[autofocus]").attr("name"));
  }
}
