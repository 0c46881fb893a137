package merese.change.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.change.LibraryCheck;
import merese.exchange.Aspect;
import merese.exchange.bibtex.BibtexReader;
import merese.model.Edition;
import merese.model.Edition.Lineage.Form;
import merese.model.Work;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All books are invented. */
class SourceImportTest {
  private static final String BOOK =
      """
      @book{quenby-1949,
        author = {Quenby, Mabel},
        title = {Neck and Stopper},
        publisher = {Aldwick Press},
        address = {London},
        year = 1949,
        isbn = {0-306-40615-2},
        shelfnote = {bought in Bath}
      }
      """;

  @TempDir private Path folder;

  private LibraryFolder library;

  @BeforeEach
  void makeALibrary() {
    library = LibraryFolder.create(folder, "Test");
  }

  private ImportResult previewed(String bib, ImportOptions options) throws IOException {
    return read(bib, options, false).result();
  }

  private ImportResult applied(String bib, ImportOptions options) throws IOException {
    return read(bib, options, true).apply(n -> {});
  }

  private ImportResult applied(String bib) throws IOException {
    return applied(bib, ImportOptions.NONE);
  }

  private SourceImport read(String bib, ImportOptions options, boolean toApply) throws IOException {
    SourceImport importing = new SourceImport(library, options, toApply);
    BibtexReader reader = new BibtexReader();
    reader.read(
        "list.bib", new ByteArrayInputStream(bib.getBytes(StandardCharsets.UTF_8)), importing);
    importing.endOfFile("list.bib", reader.wrapping());
    return importing;
  }

  private Edition edition(String key) {
    return works().stream()
        .flatMap(work -> work.editions().stream())
        .filter(edition -> edition.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private List<Work> works() {
    List<Work> works = new ArrayList<>();
    library.scan().stream()
        .filter(file -> file.relative().startsWith("works/"))
        .forEach(file -> works.add(library.readWork(file.path()).value()));
    return works;
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(library.path())) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (!file.getFileName().toString().equals(".lock")) {
          files.put(file.toString(), Files.readString(file));
        }
      }
    }
    return files;
  }

  private static List<String> keys(List<? extends Item> items) {
    return items.stream().map(Item::key).toList();
  }

  @Nested
  @DisplayName("A source that the library does not have")
  class New {
    @Test
    void comesInAsAWorkWithItsKey() throws IOException {
      assertEquals(List.of("quenby-1949"), keys(applied(BOOK).added()));
      Work work = works().get(0);
      assertEquals("quenby-neck-and-stopper", work.id());
      assertEquals("Neck and Stopper", work.title());
      assertEquals(List.of("London"), edition("quenby-1949").imprint().places());
    }

    @Test
    void keepsAFieldWithoutAHomeUnderItsOwnName() throws IOException {
      applied(BOOK);
      assertEquals(
          "bought in Bath",
          edition("quenby-1949").received().get(0).field("shelfnote").orElseThrow());
    }

    @Test
    void isOnlySaidWhereNothingIsToBeDone() throws IOException {
      Map<String, String> before = files();
      assertEquals(1, previewed(BOOK, ImportOptions.NONE).added().size());
      assertEquals(before, files());
    }

    @Test
    void getsAnotherKeyWhereItsOwnIsTaken() throws IOException {
      applied(BOOK);
      ImportResult result =
          applied("@book{Quenby-1949, author={Ruddick, Tom}, title={Feet}, year=1950}");
      assertEquals(List.of("Quenby-1949-b"), keys(result.added()));
      assertEquals(List.of("the file calls it \"Quenby-1949\""), result.added().get(0).remarks());
      assertEquals("Feet", works().stream().map(Work::title).sorted().findFirst().orElseThrow());
    }

    @Test
    void getsAKeyThatCanBeTyped() throws IOException {
      assertEquals(
          List.of("Quenby-1949-x"),
          keys(applied("@book{Quenby#1949'x, title={Neck}, year=1949}").added()));
    }
  }

  @Nested
  @DisplayName("A second import of a file")
  class Again {
    @Test
    void changesNothing() throws IOException {
      applied(BOOK);
      Map<String, String> before = files();
      assertTrue(applied(BOOK).changesNothing());
      assertEquals(before, files());
    }

    @Test
    void changesNothingWhereTwoOfItsEntriesAreMuchAlike() throws IOException {
      String twice = BOOK + BOOK.replace("quenby-1949", "q2").replace("Bath", "Wells");
      assertEquals(2, applied(twice).added().size());
      Map<String, String> before = files();
      assertTrue(applied(twice).changesNothing());
      assertEquals(before, files());
    }

    @Test
    void leavesWhatTheUserHasChangedMeanwhile() throws IOException {
      applied(BOOK);
      Path file = library.path().resolve("works/quenby-neck-and-stopper.json");
      Files.writeString(file, Files.readString(file).replace("\"London\"", "\"Bristol\""));
      Map<String, String> before = files();
      applied(BOOK);
      assertEquals(before, files());
    }

    @Test
    void leavesEntriesThatCannotBeReadInOneFile() throws IOException {
      String broken = BOOK + "\n@book{bad, title = {Unclosed\n\n@book{c, title={C}, year=1900}\n";
      assertEquals(1, applied(broken).refused().size());
      Map<String, String> before = files();
      applied(broken);
      assertEquals(before, files());
    }
  }

  @Nested
  @DisplayName("A source that is there")
  class There {
    @BeforeEach
    void bringInABook() throws IOException {
      applied(BOOK);
    }

    private Item.There found(String bib) throws IOException {
      ImportResult result = previewed(bib, ImportOptions.NONE);
      assertEquals(List.of(), keys(result.added()));
      return (Item.There) result.items().get(0);
    }

    @Test
    void isKnownByItsIsbnInEitherForm() throws IOException {
      Item.There found =
          found("@book{x, title={Neck and Stopper}, isbn={978-0-306-40615-7}, year=1950}");
      assertEquals("quenby-1949", found.key());
      assertEquals(List.of("same ISBN and title"), found.why());
    }

    @Test
    void isKnownByTitleEditionYearAndAuthor() throws IOException {
      Item.There found =
          found("@book{x, title={The Neck \\& Stopper}, author={M. Quenby}, year=1949}");
      assertEquals(List.of("same title, edition, year and author"), found.why());
    }

    @Test
    void isAnotherWhereOnlyTheIsbnIsTheSame() throws IOException {
      String other = "@book{x, title={Feet}, author={Tom Ruddick}, isbn={0306406152}, year=1990}";
      assertEquals(List.of("x"), keys(previewed(other, ImportOptions.NONE).added()));
    }

    @Test
    void isFilledInAndNeverOverwritten() throws IOException {
      applied(
          "@book{quenby-1949, title={Neck and Stopper}, publisher={Thorne}, volumes=2,"
              + " year=1949}");
      assertEquals("Aldwick Press", edition("quenby-1949").imprint().publisher().orElseThrow());
      assertEquals(2, edition("quenby-1949").imprint().volumes().orElseThrow());
    }

    @Test
    void saysWhatTheFileHasOtherwise() throws IOException {
      Item.There found =
          found("@book{quenby-1949, title={Neck and Stopper}, publisher={Thorne}, year=1949}");
      assertEquals(
          List.of(new Difference(Aspect.PUBLISHER, "Aldwick Press", "Thorne", false)),
          found.differences());
    }

    @Test
    void takesTheWordOfTheFileWhereTheUserSaysSo() throws IOException {
      applied(
          "@book{quenby-1949, title={Neck and Stopper}, publisher={Thorne}, year=1949}",
          new ImportOptions(true, Set.of(), false));
      assertEquals("Thorne", edition("quenby-1949").imprint().publisher().orElseThrow());
    }

    @Test
    void isNotFoundTwiceInAFile() throws IOException {
      ImportResult result =
          previewed(
              "@book{a, title={Neck and Stopper}, author={M. Quenby}, year=1949, note={one}}\n"
                  + "@book{b, title={Neck and Stopper}, author={M. Quenby}, year=1949}",
              ImportOptions.NONE);
      assertEquals(List.of("b"), keys(result.added()));
      assertEquals("quenby-1949", result.added().get(0).again().orElseThrow().key());
    }
  }

  @Nested
  @DisplayName("Another edition of a work")
  class Editions {
    private static final String SECOND =
        "@book{q2, title={Neck and Stopper}, author={Quenby, Mabel}, edition={Second},"
            + " year=1955}";

    @BeforeEach
    void bringInABook() throws IOException {
      applied(BOOK);
    }

    @Test
    void isProposedAndComesInAsAWorkOfItsOwn() throws IOException {
      ImportResult result = applied(SECOND);
      Item.Proposal proposal = result.added().get(0).proposal().orElseThrow();
      assertEquals("quenby-neck-and-stopper", proposal.work());
      assertEquals("quenby-1949", proposal.beside());
      assertEquals(List.of("same title and author"), proposal.why());
      assertEquals(2, works().size());
    }

    @Test
    void joinsItsWorkWhereTheUserSaysSo() throws IOException {
      applied(SECOND, new ImportOptions(false, Set.of("q2"), false));
      assertEquals(1, works().size());
      assertEquals(Form.REVISED, edition("q2").lineage().orElseThrow().form());
      assertEquals("quenby-1949", edition("q2").lineage().orElseThrow().parent().orElseThrow());
    }

    @Test
    void joinsAWorkThatIsNewInTheSameFile() throws IOException {
      applied(
          "@book{r1, title={Feet}, author={Tom Ruddick}, year=1900}\n"
              + "@book{r2, title={Feet}, author={Tom Ruddick}, year=1977, note={A facsimile of"
              + " the first edition}}",
          new ImportOptions(false, Set.of(), true));
      assertEquals(2, works().size());
      assertEquals(Form.FACSIMILE, edition("r2").lineage().orElseThrow().form());
      assertEquals(1900, edition("r2").lineage().orElseThrow().originalYear().orElseThrow());
    }

    @Test
    void mayHaveAnotherTitleAbroad() throws IOException {
      ImportResult result =
          applied(
              "@book{us, title={Bottle Necks}, author={Quenby, Mabel}, year=1950, note={Published"
                  + " in London as Neck and Stopper}}",
              new ImportOptions(false, Set.of(), true));
      assertEquals(
          List.of("the record speaks of the other title"),
          result.added().get(0).proposal().orElseThrow().why());
      assertEquals(Form.TWIN, edition("us").lineage().orElseThrow().form());
      Work work = works().get(0);
      assertEquals("Neck and Stopper", work.title());
      assertEquals(List.of("Bottle Necks"), work.alternateTitles());
      assertEquals("Bottle Necks", work.withOnly(edition("us")).title());
    }

    @Test
    void keepsItsOwnTitleWhenItComesAgainWithMore() throws IOException {
      String record = "@book{us, title={Bottle Necks}, author={Quenby, Mabel}, year=1950";
      applied(
          record + ", note={Published in London as Neck and Stopper}}",
          new ImportOptions(false, Set.of(), true));
      applied(record + ", publisher={Thorne}}");
      Work work = works().get(0);
      assertEquals("Neck and Stopper", work.title());
      assertEquals("Bottle Necks", work.withOnly(edition("us")).title());
      assertEquals(Optional.of("Thorne"), edition("us").imprint().publisher());
    }

    @Test
    void leavesTheLibrarySound() throws IOException {
      applied(SECOND, new ImportOptions(false, Set.of(), true));
      assertEquals(List.of(), LibraryCheck.of(library).problems());
    }
  }

  @Nested
  @DisplayName("What cannot be read")
  class Refused {
    private static final String BROKEN = "@book{bad, title = {Unclosed\n";

    @Test
    void isKeptWordForWord() throws IOException {
      ImportResult result = applied(BROKEN + "\n" + BOOK);
      assertEquals(List.of("quenby-1949"), keys(result.added()));
      assertEquals("list.bib:1:20", result.refused().get(0).place().toString());
      Path kept = library.path().resolve("rejected/list.bib");
      assertEquals(List.of(kept.toString()), result.mend());
      assertEquals(BROKEN.strip(), Files.readString(kept).strip());
    }

    @Test
    void canBeMendedAndBroughtIn() throws IOException {
      applied(BROKEN + "\n" + BOOK);
      String mended =
          Files.readString(library.path().resolve("rejected/list.bib")).strip() + "}, year=1960}";
      assertEquals(List.of("bad"), keys(applied(mended).added()));
    }
  }

  @Nested
  @DisplayName("An import that fails")
  class Fails {
    @Test
    void leavesTheLibraryAsItWas() throws IOException {
      applied(BOOK);
      SourceImport importing =
          read(
              BOOK.replace("bought in Bath", "given")
                  + "@book{n, title={New}, author={A. Wick}, year=1960}",
              ImportOptions.NONE,
              true);
      Path file = library.path().resolve("works/quenby-neck-and-stopper.json");
      Files.writeString(file, Files.readString(file).replace("London", "Bristol"));
      Map<String, String> before = files();
      assertThrows(LibraryException.class, () -> importing.apply(n -> {}));
      assertEquals(before, files());
    }
  }

  @Test
  void notesStayWithTheirEdition() throws IOException {
    Path other = folder.resolve("other");
    library =
        new SmallLibrary()
            .book(
                "Quenby", 1949, "Neck and Stopper", SmallLibrary.prints("bladed ring").text("p. 3"))
            .write(other);
    applied(
        BOOK
            + "@book{q2, title={Neck and Stopper}, author={Quenby, Mabel}, edition={Second},"
            + " year=1955}",
        new ImportOptions(false, Set.of(), true));
    assertEquals(1, edition("quenby-1949").notes().size());
    assertEquals(0, edition("q2").notes().size());
  }
}
