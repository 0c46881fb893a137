package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import merese.testing.SmallLibrary;
import org.jsoup.nodes.Document;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Words on more pages than the desk shows at once")
class ManyPagesOnTheDeskTest {
  private static final int BOOKS = 103;
  private static final int PAGES = 102;

  @TempDir private static Path home;
  private static RunningDesk desk;

  /** The first book has many pages, three of them unnumbered; the others have one each. */
  @BeforeAll
  static void start() {
    SmallLibrary library = new SmallLibrary();
    for (int book = 0; book < BOOKS; book++) {
      library.book("Quenby", 1800 + book, "Neck and Stopper, part " + book);
    }
    String[] pages = new String[PAGES + 3];
    for (int page = 0; page < pages.length; page++) {
      pages[page] = "A bladed ring.";
    }
    library.pages("quenby-1800", "1–" + PAGES + " = pp. 1–" + PAGES, pages);
    for (int book = 1; book < BOOKS; book++) {
      library.pages("quenby-" + (1800 + book), "", "The bladed ring, and the collar.");
    }
    desk = RunningDesk.on(library.write(home));
  }

  @AfterAll
  static void stop() {
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  private static Document page(String address) throws Exception {
    return desk.get(address).page();
  }

  private static Elements onPages(Document page, String what) {
    return page.select("section.group:has(h3:containsOwn(Words on the page)) " + what);
  }

  private static int sources(Document page) {
    return onPages(page, "li.entry").size();
  }

  @Test
  void ofMoreThanAHundredSourcesTwentyAreShownAndTheOthersAreALinkAway() throws Exception {
    for (String address : List.of("/?concept=ring-bladed", "/vocabulary/ring-bladed")) {
      Document page = page(address);
      assertEquals(20, sources(page), address);
      String all = onPages(page, "a:containsOwn(" + (BOOKS - 20) + " more: show all)").attr("href");
      assertTrue(all.endsWith("concept=ring-bladed&all=on"), all);
    }
    assertEquals(BOOKS, sources(page("/?concept=ring-bladed&all=on")));
  }

  @Test
  void ofMoreThanAHundredPagesOfOneSourceTwentyAreShownAndTheOthersCounted() throws Exception {
    Document page = page("/?concept=ring-bladed");
    String first = page.select("li.entry:has(a[href^=/note?source=quenby-1800])").last().text();
    assertTrue(first.contains("p. 20"), first);
    assertFalse(first.contains("p. 21"), first);
    assertTrue(first.contains("p. 20 file page 103; file page 104; file page 105"), first);
    assertTrue(first.contains("and 82 pages more"), first);
    String all = page("/?concept=ring-bladed&all=on").text().replace('\u00A0', ' ');
    assertTrue(all.contains("p. 102 file page 103; file page 104; file page 105"), all);
    assertFalse(all.contains("pages more"), all);
  }

  @Test
  void findShowsTwentyPagesSaysHowManyThereAreAndGivesMore() throws Exception {
    Document page = page("/find?words=%22the+collar%22");
    assertEquals(20, page.select("section.group ul.found li").size());
    assertTrue(page.text().contains("102 pages of books in all."), page.text());
    assertEquals(
        "/find?words=%22the%20collar%22&limit=100",
        page.select("a:containsOwn(Show more)").attr("href"));
    assertEquals(
        0,
        page("/find?words=%22the+collar%22&limit=500").select("a:containsOwn(Show more)").size());
    assertFalse(page("/find?words=%22the+collar%22&limit=500").text().contains("in all."));
  }

  @Test
  void onlyWhatIsDoubtfulIsSaidToBe() throws Exception {
    String text = page("/?concept=ring-bladed").text();
    assertFalse(text.contains("may mean something else"), text);
    assertFalse(text.contains("perhaps misread"), text);
  }
}
