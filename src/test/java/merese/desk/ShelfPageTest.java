package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import merese.testing.SmallLibrary;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfPageTest {
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
      strings = {
        "by=author",
        "by=year",
        "by=kind",
        "by=mark",
        "by=author&find=quen+19",
        "by=mark&find=no+such+source"
      })
  void saysAllThatTheAnswerHolds(String question) throws Exception {
    Document page = desk.get("/shelf?" + question).page();
    var answer = desk.get("/shelf?" + question + "&as=json").json();
    assertEquals(List.of(), AllShown.missing(answer, page, Set.of()));
  }

  @Test
  void filesByAuthorWithoutParticleAndByYear() throws Exception {
    Document page = desk.get("/shelf").page();
    List<String> keys = page.select(".shelved .source").eachAttr("href");
    assertTrue(keys.indexOf("/shelf/quenby-1926") < keys.indexOf("/shelf/quenby-1949"));
    String hoeck = page.selectFirst("section:has(a[href*=hoeck-1961]) > h2").text();
    assertTrue(hoeck.startsWith("H "), hoeck);
  }

  @Test
  void yearsStandInDecadesWithTheirCount() throws Exception {
    Document page = desk.get("/shelf?by=year").page();
    for (var section : page.select(".shelf-section")) {
      String heading = section.selectFirst("h2").text();
      assertTrue(heading.endsWith(many(section.select("li").size())), heading);
    }
    assertEquals("Undated", page.select(".divisions a").last().text());
  }

  private static String many(int number) {
    return number + (number == 1 ? " source" : " sources");
  }

  /** "A2" stands before "A10" on a shelf; what is lent is not there. */
  @Test
  void marksStandInNaturalOrderAndWhatIsAwaySaysWhere() throws Exception {
    Document page = desk.get("/shelf?by=mark").page();
    List<String> a = page.select("section:has(h2:matchesOwn(^A$|^A )) .mark").eachText();
    assertTrue(a.size() > 1, a.toString());
    int before = 0;
    for (String mark : a) {
      int number = Integer.parseInt(mark.substring(1).replaceAll("[^0-9].*", ""));
      assertTrue(number >= before, a.toString());
      before = number;
    }
    assertTrue(
        page.select("section:has(h2:contains(Not on the shelf)) .away").size() > 0, page.text());
  }

  @Test
  void manyWorksComeInPagesWithTheirInitials(@TempDir Path folder) throws Exception {
    SmallLibrary library = new SmallLibrary();
    for (int i = 0; i < 450; i++) {
      String family = (char) ('A' + i % 26) + "ell" + (char) ('a' + i / 26);
      library.book(family, 1900 + i % 90, "Necks " + i);
    }
    try (RunningDesk many = RunningDesk.on(library.write(folder.resolve("library")))) {
      Document first = many.get("/shelf").page();
      assertEquals(200, first.select(".shelved li").size());
      assertEquals(26, first.select(".divisions a").size());
      Document last = many.get("/shelf?page=3").page();
      assertEquals(50, last.select(".shelved li").size());
      String z = first.select(".divisions a").last().attr("href");
      assertEquals(
          "Z",
          many.get(z.substring(0, z.indexOf('#')))
              .page()
              .getElementById(z.substring(z.indexOf('#') + 1))
              .ownText());
      assertEquals(List.of(), many.faults());
    }
  }

  @Test
  void anUnknownOrderIsRefusedInWords() throws Exception {
    var answer = desk.get("/shelf?by=colour");
    assertEquals(422, answer.status());
    assertTrue(answer.text().contains("author, year, kind and mark"));
  }
}
