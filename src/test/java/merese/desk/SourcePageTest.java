package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.testing.HostileLibrary;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourcePageTest {
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
      strings = {"quenby-1926", "quenby-1949", "farrow-1988", "osmere-1988", "yarrowby-1986"})
  void saysAllThatTheAnswerHolds(String key) throws Exception {
    var found = desk.get("/shelf/" + key);
    assertEquals(200, found.status());
    var answer = desk.get("/shelf/" + key + "?as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, found.page(), Set.of()));
  }

  @Test
  void everySourceOfTheDemoHasAPage() throws Exception {
    List<String> keys;
    try (Shelf shelf = Shelf.open(desk.library(), Watcher.NONE)) {
      keys = shelf.sources().stream().map(s -> s.key()).toList();
    }
    for (String key : keys) {
      assertEquals(200, desk.get("/shelf/" + RunningDesk.encoded(key)).status(), key);
    }
  }

  /** R5: front matter, pages, then plates, and roman numbers as numbers. */
  @Test
  void notesStandInPhysicalOrder() throws Exception {
    Document page = desk.get("/shelf/quenby-1926").page();
    List<Locator> first = new ArrayList<>();
    for (Element note : page.select(".note")) {
      String printed = note.selectFirst(".pictured, .in-words").text();
      first.add(Locator.parse(printed));
    }
    assertTrue(first.size() > 5, first.toString());
    for (int i = 1; i < first.size(); i++) {
      assertTrue(first.get(i - 1).compareTo(first.get(i)) <= 0, first.toString());
    }
  }

  @Test
  void aNoteLeadsToItsFileAndToAFurtherNote() throws Exception {
    Element note = desk.get("/shelf/farrow-1988").page().getElementById("note-n1");
    assertEquals("/note?source=farrow-1988&at=p.%207", note.select("a[href^=/note]").attr("href"));
    assertEquals("/edit/source/farrow-1988", note.select("a[href^=/edit]").attr("href"));
  }

  @Test
  void whatCorrectsASourceStandsOnItsPage() throws Exception {
    Document page = desk.get("/shelf/quenby-1926").page();
    String corrections = page.select("section:has(> h2:contains(Corrections of it))").text();
    assertTrue(corrections.contains("Farrow 1988"), corrections);
    assertTrue(corrections.contains("p. 43"), corrections);
  }

  /** A place's photograph, where the file is there; a 1 by 1 picture is enough. */
  @Test
  void ownPhotographsAreShownSmall(@TempDir Path folder) throws Exception {
    try (RunningDesk other = RunningDesk.onDemo(folder)) {
      Path file = other.library().path().resolve("works/farrow-triple-ringed.json");
      String text = Files.readString(file);
      String place = "\"shows\": \"profile\"";
      assertTrue(text.contains(place));
      Files.writeString(
          file, text.replace(place, place + ",\n              \"photo\": \"a & b/fig 2.png\""));
      Path pictures = other.library().path().resolve("pictures/a & b");
      Files.createDirectories(pictures);
      Files.write(pictures.resolve("fig 2.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G'});
      Element picture =
          other.get("/shelf/farrow-1988").page().selectFirst("figure a[data-enlarge] > img");
      assertEquals("/pictures/a%20%26%20b/fig%202.png", picture.attr("src"));
      assertEquals(200, other.get(picture.attr("src")).status());
      assertEquals(List.of(), other.faults());
    }
  }

  @Test
  void aWorkLeadsToItsFirstEdition() throws Exception {
    var led = desk.get("/shelf/quenby-neck-and-stopper?done=7");
    assertEquals(302, led.status());
    assertEquals("/shelf/quenby-1926?done=7", led.address());
  }

  @Test
  void anUnknownKeyNamesThoseLikeIt() throws Exception {
    var answer = desk.get("/shelf/quenby-1948");
    assertEquals(404, answer.status());
    assertTrue(
        answer.page().select("a.near").eachAttr("href").contains("/shelf/quenby-1949"),
        answer.text());
  }

  /** Every field of every kind of source tries to be mark-up. */
  @Test
  void whatALibrarySaysIsNeverMarkUp(@TempDir Path folder) throws Exception {
    try (RunningDesk hostile =
        RunningDesk.on(HostileLibrary.make().write(folder.resolve("library")))) {
      for (String by : List.of("author", "year", "kind", "mark")) {
        assertHarmless(hostile.get("/shelf?by=" + by));
      }
      for (Work work : HostileLibrary.make().works()) {
        Edition edition = work.editions().get(0);
        String key = RunningDesk.encoded(edition.key()).replace("+", "%20");
        assertHarmless(hostile.get("/shelf/" + key));
        assertHarmless(hostile.get("/edit/source/" + work.id()));
        assertHarmless(hostile.get("/remove?name=" + work.id()));
        assertHarmless(hostile.get("/add?edition-of=" + work.id()));
      }
      assertEquals(List.of(), hostile.faults());
    }
  }

  private static void assertHarmless(RunningDesk.Answer answer) {
    assertEquals(200, answer.status(), answer.address());
    Document page = answer.page();
    for (Element script : page.select("script")) {
      assertTrue(script.attr("src").startsWith("/assets/"), answer.address());
    }
    for (Element element : page.getAllElements()) {
      element
          .attributes()
          .forEach(
              attribute -> {
                assertFalse(attribute.getKey().startsWith("on"), attribute.toString());
                assertFalse(attribute.getValue().startsWith("javascript:"), attribute.toString());
              });
    }
    assertEquals(0, page.select("img[src=x]").size(), answer.address());
  }

  @Test
  void onlyAnEditionOfSeveralCanBeSplitOff() throws Exception {
    assertEquals(0, desk.get("/shelf/farrow-1988").page().select("a[href^=/split]").size());
    assertEquals(1, desk.get("/shelf/quenby-1968").page().select("a[href^=/split]").size());
  }
}
