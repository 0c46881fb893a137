package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.PageLines;
import merese.model.PageMap;
import merese.model.PageText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The text of an edition's own pages")
class PageTextsTest {
  private static final String SHA = "0".repeat(64);
  private static final String FILE = "pages/EDITION/scan.json";

  @TempDir Path dir;
  private LibraryFolder library;
  private String edition;

  @BeforeEach
  void copyTheFixture() {
    library = Fixture.in(dir);
    edition = library.readWork(library.resolve(Fixture.WORK)).value().editions().get(0).key();
  }

  private static PageLines page(String... lines) {
    return new PageLines(List.of(lines));
  }

  private PageText text(String map, PageLines... pages) {
    return new PageText(
        edition, "a scan.txt", SHA, PageText.Origin.PLAIN_TEXT, PageMap.parse(map), List.of(pages));
  }

  private Path file() {
    return library.resolve(FILE.replace("EDITION", edition));
  }

  private void add(PageText text) {
    try (ChangeSet change = library.change("attach")) {
      change.add(text, "scan");
      change.commit();
    }
  }

  private List<String> found() {
    return library.check().stream()
        .map(p -> p.line() + " " + p.where() + ": " + p.what() + "; " + p.remedy())
        .toList();
  }

  @Test
  void isOneFileThatADiffCanShow() {
    add(text("1 = p. [1]; 2 = unnumbered", page("The ſtem of a wine-", "glaſs “is” not"), page()));
    assertEquals(
        """
        {
          "source": "EDITION",
          "file": "a scan.txt",
          "sha256": "SHA",
          "from": "plain text",
          "map": "1 = p. [1]; 2 = unnumbered",
          "pages": [
            {
              "lines": [
                "The ſtem of a wine-",
                "glaſs “is” not"
              ]
            },
            {
              "lines": []
            }
          ]
        }
        """
            .replace("EDITION", edition)
            .replace("SHA", SHA),
        Fixture.read(file()));
    LibraryFile listed = library.pagesOf(edition).get(0);
    assertEquals(LibraryFile.Kind.PAGES, listed.kind());
    assertEquals(FILE.replace("EDITION", edition), listed.relative());
    assertTrue(library.scan().contains(listed));
    assertEquals(List.of(), found());
  }

  @Test
  void aNewMapChangesOneLineAndKeepsWhatTheUserWroteBeside() {
    add(text("", page("one"), page("two")));
    String mine = Fixture.read(file()).replace("\"pages\": [", "\"mine\": \"x\",\n  \"pages\": [");
    Fixture.write(file(), mine);
    Stored<PageText> read = library.readPages(file());
    try (ChangeSet change = library.change("map")) {
      change.save(read, read.value().withMap(PageMap.parse("plates after 1")));
      change.commit();
    }
    assertEquals(
        mine.replace("\"mine\"", "\"map\": \"plates after 1\",\n  \"mine\""), Fixture.read(file()));
  }

  @Test
  void otherTextTakesThePlaceOfAllPages() {
    add(text("1 = p. 3", page("one"), page("two")));
    Fixture.write(
        file(),
        Fixture.read(file())
            .replace("\"pages\": [", "\"mine\": \"x\",\n  \"pages\": [")
            .replaceFirst("\"lines\"", "\"of the old page\": 1,\n      \"lines\""));
    Stored<PageText> read = library.readPages(file());
    PageText other = text("1–2 = pp. 3–4", page("three"), page("one"), page("two"));
    try (ChangeSet change = library.change("again")) {
      change.replacePages(read, other);
      change.commit();
    }
    assertEquals(other, library.readPages(file()).value());
    String now = Fixture.read(file());
    assertTrue(now.contains("\"mine\": \"x\""), now);
    assertTrue(!now.contains("old page"), now);
  }

  @Test
  void twoOfOneNameAreRefusedWhateverItsCapitals() {
    add(text("", page("one")));
    try (ChangeSet change = library.change("again")) {
      LibraryException refused =
          assertThrows(LibraryException.class, () -> change.add(text("", page("two")), "Scan"));
      assertTrue(refused.getMessage().contains("of this name already"), refused.getMessage());
    }
  }

  /** "a:1" is a key that BibTeX allows, and no name of a folder on every system. */
  @Test
  void aKeyThatNoFolderCanHaveGivesAFolderLikeIt() {
    assertEquals("a-1", PagesFolder.nameFor("a:1"));
    assertEquals("quenby-1949", PagesFolder.nameFor("quenby-1949"));
    assertEquals("x", PagesFolder.nameFor("../x").replace("-", ""));
  }

  @Test
  void checkFindsWhatIsWrong() {
    add(text("1–2 = pp. 1–2", page("one"), page("two")));
    String right = Fixture.read(file());
    Fixture.write(file(), right.replace(edition, edition + "x"));
    List<String> unknown = found();
    assertTrue(unknown.toString().contains("there is no edition"), unknown.toString());
    assertTrue(unknown.toString().contains("stand in another folder"), unknown.toString());
    Fixture.write(file(), right.replace("1–2 = pp. 1–2", "1–2 = pp. 1–3"));
    assertEquals(1, found().size());
    assertTrue(found().get(0).startsWith("6 map: cannot read the page map"), found().get(0));
    Fixture.write(file(), right.replace("1–2 = pp. 1–2", "1–3 = pp. 1–3"));
    assertEquals(
        List.of(
            "1 : the page map says \"1–3 = pp. 1–3\", but the file has 2 pages; "
                + "correct that part of the map"),
        found());
    Fixture.write(file(), right.replace("\"map\"", "\"mpa\""));
    assertEquals(
        List.of("6 : the key \"mpa\" is not known and is kept as it is; did you mean \"map\"?"),
        found());
    Fixture.write(file(), right.replace("\"plain text\"", "\"text\""));
    assertTrue(found().get(0).contains("\"text\" is not a kind of page text"), found().get(0));
  }

  /** A thousand pages of some 3,000 characters: a long book. */
  @Test
  void aLongBookIsWrittenAndReadWithoutTrouble() {
    String line = "the collar of the decanter is drawn out to a blade ſo ";
    List<PageLines> pages = new ArrayList<>();
    for (int page = 1; page <= 1_000; page++) {
      List<String> lines = new ArrayList<>();
      for (int i = 0; i < 55; i++) {
        lines.add(line + page + "." + i);
      }
      pages.add(new PageLines(lines));
    }
    PageText book = text("1–12 = i–xii; 13–1000 = 1–988", pages.toArray(new PageLines[0]));
    add(book);
    Stored<PageText> read = library.readPages(file());
    assertEquals(book, read.value());
    try (ChangeSet change = library.change("again")) {
      change.replacePages(read, book.withMap(PageMap.NONE));
      change.commit();
    }
    assertEquals(book.withMap(PageMap.NONE), library.readPages(file()).value());
  }

  @Test
  void isTakenBackByUndo() {
    add(text("", page("one")));
    History.of(library).undo(1);
    assertEquals(List.of(), library.pagesOf(edition));
  }
}
