package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;
import merese.store.LibraryFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;

/** What somebody at the desk does, in a real browser and by its keyboard. */
class DeskJourneysIT {
  @TempDir private Path home;
  private RunningDesk desk;
  private Browser browser;

  @BeforeEach
  void start() throws IOException {
    desk = RunningDesk.onDemo(home);
    browser = Browser.open(desk, Files.createDirectory(home.resolve("saved")));
    browser.size(1024, 900);
  }

  @AfterEach
  void stop() {
    if (browser != null) {
      browser.close();
    }
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  @Test
  void looksUpATermWithTheHelpOfSuggestions() {
    browser.go("/");
    browser.type("bladed r");
    browser.find("#term-list [role=option]");
    browser.type(Keys.ARROW_DOWN, Keys.ENTER);
    assertTrue(browser.find(".meaning h2").getText().contains("bladed ring"));
    assertEquals("bladed ring", browser.find("#term").getDomProperty("value"));
    assertTrue(browser.texts(".counted .entry").stream().anyMatch(e -> e.contains("pl. XII")));

    WebElement picture = browser.find(".pictures a[data-enlarge]");
    picture.sendKeys(Keys.ENTER);
    String first = browser.find("dialog img").getDomAttribute("src");
    browser.type(Keys.ARROW_RIGHT);
    browser.awaitTrue(
        "the next picture", () -> !first.equals(browser.find("dialog img").getDomAttribute("src")));
    browser.type(Keys.ARROW_LEFT);
    browser.awaitTrue(
        "the one before", () -> first.equals(browser.find("dialog img").getDomAttribute("src")));
    assertEquals(first, browser.find("dialog a").getDomAttribute("href"));
    browser.type(Keys.ESCAPE);
    browser.awaitTrue("it is closed", () -> browser.all("dialog").isEmpty());
    browser.assertNoComplaints();
  }

  @Test
  void seesTheMeaningsOfAHomonymSideBySide() {
    browser.go("/?term=triple+ring");
    List<WebElement> meanings = browser.all(".meanings > .meaning");
    assertEquals(3, meanings.size());
    assertEquals(meanings.get(0).getRect().y, meanings.get(1).getRect().y);
    assertTrue(meanings.get(0).getRect().x < meanings.get(1).getRect().x);
  }

  @Test
  void opensTheNotesOfACellOfTheConcordance() {
    browser.go("/concordance?term=ring");
    WebElement cell =
        browser.find("#drawing svg .cell[data-source='quenby-1926'][data-concept='ring-bladed']");
    cell.click();
    String said = browser.find("dialog").getText();
    assertTrue(said.contains("knife-edged rings"), said);
    assertTrue(said.contains("pl. XII, fig. 3"), said);
    var dialog = browser.find("dialog").getRect();
    assertEquals(1024 / 2.0, dialog.x + dialog.width / 2.0, 12, "it is in the middle");
    assertEquals(900 / 2.0, dialog.y + dialog.height / 2.0, 12, "it is in the middle");
    browser.assertNoComplaints();
  }

  @Test
  void takesTenNotesFromTheKeyboardAndTakesOneBack() throws Exception {
    int before = notes().size();
    browser.go("/note?source=haskeld-1983&at=p.+90");
    List<String> terms =
        List.of(
            "bladed ring",
            "folded foot",
            "target stopper",
            "firing foot",
            "annulated ring",
            "mushroom stopper",
            "feathered ring",
            "neck ring",
            "square ring",
            "wrong ring");
    for (int i = 0; i < terms.size(); i++) {
      String term = terms.get(i);
      browser.awaitTrue(
          "the cursor is in the field of the term",
          () -> "term".equals(browser.driver().switchTo().activeElement().getDomAttribute("name")));
      browser.enter(term);
      int taken = before + i + 1;
      browser.awaitTrue(
          term + " is on the disk; the page says " + browser.find("main").getText(),
          () -> notes().size() == taken);
      browser.awaitTrue(
          "it is said", () -> browser.find("#taken").getText().contains("“" + term + "”"));
    }
    List<String> noted = new ArrayList<>();
    for (Note note : notes().subList(before, before + terms.size())) {
      assertEquals("p. 90", note.places().get(0).locator().printed());
      noted.add(note.namings().get(0).printed());
    }
    assertEquals(terms, noted);

    browser.find(".done button").sendKeys(Keys.ENTER);
    browser.awaitTrue("one is taken back", () -> notes().size() == before + terms.size() - 1);
    browser.assertNoComplaints();
  }

  private List<Note> notes() {
    for (LibraryFile file : desk.library().scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        Work work = desk.library().readWork(file.path()).value();
        for (Edition edition : work.editions()) {
          if (edition.key().equals("haskeld-1983")) {
            return edition.notes();
          }
        }
      }
    }
    throw new AssertionError("the source is gone");
  }

  @Test
  void whatWasTypedStaysWhereThePageIsLeftAndComeBackTo() {
    browser.go("/note?source=haskeld-1983&at=p.+90");
    browser.awaitTrue(
        "the cursor is in the field of the term",
        () -> "term".equals(browser.driver().switchTo().activeElement().getDomAttribute("name")));
    browser.type("half a word");
    browser.go("/shelf");
    browser.go("/note?source=haskeld-1983&at=p.+90");
    assertEquals("half a word", browser.find("[name=term]").getDomProperty("value"));
    browser.go("/note?source=quenby-1926&at=p.+77");
    assertEquals("", browser.find("[name=term]").getDomProperty("value"));
    browser.go("/note?source=haskeld-1983&at=p.+91");
    assertEquals("p. 91", browser.find("[name=at]").getDomProperty("value"));
    String said = browser.find(".left-over[role=status]").getText();
    assertTrue(said.contains("Left over from before: “half a word”, typed at p. 90"), said);
    browser.find(".left-over button").sendKeys(Keys.ENTER);
    assertEquals("", browser.find("[name=term]").getDomProperty("value"));
    browser.go("/note?source=haskeld-1983&at=p.+90");
    assertEquals("", browser.find("[name=term]").getDomProperty("value"));
    assertEquals(List.of(), browser.all(".left-over"));
  }

  @Test
  void aWordWithoutAnEndWidensNoPage() throws Exception {
    desk.post(
        "/vocabulary",
        "facet",
        "ring",
        "id",
        "ring-long",
        "label",
        "ring".repeat(750),
        "definition",
        "A long one.");
    for (String page : List.of("/changes", "/vocabulary?facet=ring", "/?term=bladed+ring")) {
      browser.go(page);
      assertEquals(List.of(), browser.stickingOut(), page);
    }
  }

  @Test
  void whatIsClosedOnTheScreenIsPrintedOpen() {
    browser.go("/concordance?term=ring");
    assertEquals(0, browser.all("#names[open]").size());
    browser.driver().executeScript("dispatchEvent(new Event('beforeprint'))");
    assertEquals(1, browser.all("#names[open]").size());
    browser.driver().executeScript("dispatchEvent(new Event('afterprint'))");
    assertEquals(0, browser.all("#names[open]").size());
  }

  @Test
  void drawingsFitTheirFrameAndAreSavedWithTheirTitle() throws Exception {
    browser.size(1280, 900);
    for (String page :
        List.of("/timeline?concept=stopper-target", "/witnesses?concept=foot-folded")) {
      browser.go(page);
      browser.find("#drawing svg");
      assertEquals(
          "true",
          String.valueOf(
              browser
                  .driver()
                  .executeScript(
                      "const c = document.querySelector('.canvas');"
                          + "return c.scrollWidth <= c.clientWidth;")),
          page);
    }
    browser.find("[data-save=svg]").sendKeys(Keys.ENTER);
    String svg = Files.readString(browser.await("a file is saved", () -> saved(".svg")));
    assertTrue(svg.contains(">Who repeats whom: folded foot</text>"), svg.substring(0, 900));
  }

  @Test
  void twoWindowsThatChangeOneSourceLoseNothing() throws Exception {
    String first = browser.driver().getWindowHandle();
    browser.go("/edit/source/haskeld-1983");
    browser.driver().switchTo().newWindow(WindowType.TAB);
    browser.go("/edit/source/haskeld-1983");
    replace("\"title\": \"", "\"title\": \"Second ");
    browser.find("#save").click();
    browser.find(".done");

    browser.driver().switchTo().window(first);
    replace("\"title\": \"", "\"title\": \"First ");
    browser.find("#save").click();
    browser.find(".wrong");
    String kept = browser.find("#edit textarea[name=text]").getDomProperty("value");
    assertTrue(kept.contains("\"title\": \"First "), kept);
    assertTrue(browser.find("main").getText().contains("Second "), "what is on the disk is shown");
    assertTrue(title().startsWith("Second "), title());
  }

  private void replace(String what, String by) {
    browser
        .driver()
        .executeScript(
            "const t = document.querySelector('#edit textarea[name=text]');"
                + "t.value = t.value.replace(arguments[0], arguments[1]);",
            what,
            by);
  }

  private String title() {
    return desk.library().findWork("haskeld-table-glass-primer").orElseThrow().value().title();
  }

  @Test
  void makesAReadingListAndSavesItsBibtex() throws Exception {
    browser.go("/reading-list?concept=foot-firing");
    assertTrue(browser.find("#preview").getText().contains("Lutwyck"));
    browser.find("a[data-save=bibtex]").sendKeys(Keys.ENTER);
    Path saved = browser.await("a file is saved", () -> saved(".bib"));
    String bibtex = Files.readString(saved);
    assertTrue(bibtex.contains("@book{lutwyck-1912,"), bibtex);
    assertFalse(bibtex.contains("quenby"), "only what is on the list");
    browser.assertNoComplaints();
  }

  private Path saved(String ending) {
    try (Stream<Path> files = Files.list(browser.downloads())) {
      return files.filter(file -> file.toString().endsWith(ending)).findFirst().orElse(null);
    } catch (IOException e) {
      return null;
    }
  }

  @Test
  void showsOneFeatureAfterAnotherByTheArrowKeys() {
    browser.go("/show?concept=ring-bladed&concept=ring-annulated");
    assertTrue(browser.find("#slide h1").getText().contains("bladed ring"));
    browser.type(Keys.ARROW_RIGHT);
    browser.awaitTrue(
        "the next one", () -> browser.find("#slide h1").getText().contains("annulated ring"));
    browser.type(Keys.ARROW_LEFT);
    browser.awaitTrue(
        "the one before", () -> browser.find("#slide h1").getText().contains("bladed ring"));
    browser.assertNoComplaints();
  }
}
