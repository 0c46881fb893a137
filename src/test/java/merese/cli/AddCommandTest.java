package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Work;
import merese.store.LibraryFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a new library; all people and titles are invented. */
class AddCommandTest {
  @TempDir private Path home;

  @BeforeEach
  void makeALibrary() {
    LibraryFolder.create(home, "Mine");
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  /** As somebody at the terminal, who types lines. */
  private Ran typing(String typed, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    byte[] in = typed.getBytes(StandardCharsets.UTF_8);
    Map<String, String> terminal = Map.of(Screen.TERMINALS, "out in err");
    int code = Main.run(new ByteArrayInputStream(in), out, err, terminal, home, words);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private Work work(String id) {
    return LibraryFolder.open(home.resolve("library")).findWork(id).orElseThrow().value();
  }

  private Ran add(String... more) {
    List<String> words = new ArrayList<>(List.of("add", "--kind", "web-page", "--title", "Necks"));
    words.addAll(List.of(more));
    return merese(words.toArray(String[]::new));
  }

  @Test
  void whatCannotBeIsRefusedWithTheRightForm() {
    assertTrue(add("--year", "3024").err().contains("3024 is still to come"));
    assertTrue(add("--url", "not a url").err().contains("as in https://glass.example/rings"));
    Ran accessed = add("--url", "https://a.example/b", "--accessed", "yesterday");
    assertTrue(accessed.err().contains("as in 2025-03-02"), accessed.err());
    Ran key = add("--year", "1950", "--key", "../../evil");
    assertTrue(key.err().contains("letters, digits and - _ . : +"), key.err());
    assertEquals(
        0, add("--year", "1950", "--key", "a_b:c.d", "--url", "https://a.example/b").code());
  }

  @Test
  void anAmpersandOrAnAccentMakesNoOtherSource() {
    assertEquals(0, book("Céramic Neck & Stopper", "Ó Dálaigh, Ann").code());
    Ran again = book("Ceramic Neck and Stopper", "O Dalaigh, Ann");
    assertTrue(again.err().contains("the same title and maker"), again.out() + again.err());
    Ran joined = book("Ceramic Neck&Stopper", "O Dalaigh, Ann");
    assertTrue(joined.err().contains("the same title and maker"), joined.out() + joined.err());
  }

  private Ran book(String title, String author) {
    return merese(
        "add", "--kind", "monograph", "--title", title, "--author", author, "--year", "1950");
  }

  @Test
  void goesOnBesideADamagedFileAndSaysSo() throws IOException {
    assertEquals(0, book("Rims", "Oxley, Ann").code());
    Path damaged = home.resolve("library/works/oxley-rims.json");
    Files.writeString(damaged, Files.readString(damaged).replace("\"title\"", "title"));
    Ran ran = book("Stoppers", "Oxley, Ann");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("works/oxley-rims.json:4:"), ran.err());
    Ran sitting = merese("history", "rims");
    assertTrue(sitting.err().contains("no source is called \"rims\""), sitting.err());
    assertTrue(sitting.err().contains("works/oxley-rims.json:4:"), sitting.err());
    assertTrue(sitting.err().contains("merese check says more."), sitting.err());
  }

  private Ran rings() {
    return merese(
        "add",
        "--kind",
        "monograph",
        "--title",
        "Rings and Rims",
        "--author",
        "Oxley, Ann; van der Zwet, Jan",
        "--year",
        "[c. 1952]",
        "--statement",
        "2nd edn, revised",
        "--isbn",
        "0306406152",
        "--shelf-mark",
        "B7");
  }

  @Test
  void aWorkHasItsEditionItsCopyAndAKeyOfNameAndYear() {
    Ran ran = rings();
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("Key   oxley-1952\n"), ran.out());
    assertTrue(ran.out().contains("library/works/oxley-rings-and-rims.json"), ran.out());
    assertTrue(ran.out().contains("merese note oxley-1952"), ran.out());
    Work work = work("oxley-rings-and-rims");
    Edition edition = work.edition("oxley-1952");
    assertEquals("van der Zwet", work.contributors().get(1).name().shortForm());
    assertEquals("[c. 1952]", edition.imprint().yearPrinted().get());
    assertEquals(2, edition.imprint().number().getAsInt());
    // the number is the example of the ISBN Users' Manual (from memory)
    assertEquals("0-306-40615-2", edition.imprint().identifiers().get(0).value());
    assertEquals("B7", edition.copies().get(0).shelfMark().get());
    assertEquals(0, merese("check").code());
  }

  @Test
  void anotherOfTheSameNameAndYearHasAKeyUnlikeIt() {
    rings();
    Ran ran =
        merese(
            "add",
            "--kind",
            "leaflet",
            "--title",
            "Feet",
            "--author",
            "Oxley, B.",
            "--year",
            "1952");
    assertTrue(ran.out().contains("Key   oxley-1952-b\n"), ran.out());
  }

  @Test
  void oneOfTheSameTitleAndMakerIsRefusedUnlessItIsWantedAnyway() {
    rings();
    String[] again = {
      "add", "--kind", "monograph", "--title", "The Rings & Rims", "--author", "Ann Oxley"
    };
    Ran refused = merese(again);
    assertEquals(1, refused.code());
    assertTrue(refused.err().contains("oxley-1952"), refused.err());
    assertTrue(refused.err().contains("--edition-of oxley-1952"), refused.err());
    Ran asked = typing("n\n", again);
    assertEquals(1, asked.code(), asked.out());
    assertEquals(0, typing("y\n", again).code());
  }

  @Test
  void oneOfTheSameIsbnIsRefused() {
    rings();
    Ran ran =
        merese("add", "--kind", "monograph", "--title", "Feet", "--isbn", "978-0-306-40615-7");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("the same ISBN"), ran.err());
  }

  @Test
  void aWrongCheckDigitIsRefusedWithTheRightOne() {
    Ran ran = merese("add", "--kind", "monograph", "--title", "Feet", "--isbn", "0-306-40615-3");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("would be 2"), ran.err());
    assertEquals(
        0,
        merese(
                "add",
                "--kind",
                "monograph",
                "--title",
                "Feet",
                "--isbn",
                "0-306-40615-3",
                "--as-printed")
            .code());
    assertTrue(work("feet").editions().get(0).imprint().identifiers().get(0).wrongInPrint());
  }

  @Test
  void anEditionStandsInItsWorkWithWhatItRevises() {
    rings();
    Ran ran = merese("add", "--edition-of", "oxley-1952", "--year", "1955", "--form", "revised");
    assertEquals(0, ran.code(), ran.err());
    Edition edition = work("oxley-rings-and-rims").edition("oxley-1955");
    assertEquals(Lineage.Form.REVISED, edition.lineage().get().form());
    assertEquals("oxley-1952", edition.lineage().get().parent().get());
  }

  @Test
  void aCopyHasAnIdUnlikeTheOthersOfItsEdition() {
    rings();
    Ran ran = merese("add", "--copy-of", "oxley-rings-and-rims", "--holder", "Town Library");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        "Town Library",
        work("oxley-rings-and-rims").edition("oxley-1952").copies().get(1).holder().get());
    assertEquals("c2", work("oxley-rings-and-rims").edition("oxley-1952").copies().get(1).id());
    assertEquals(2, merese("add", "--copy-of", "oxley-1952", "--title", "Feet").code());
  }

  @Test
  void anArticleIsAskedForItsJournalAndAWrongAnswerAgain() {
    Ran ran =
        typing(
            "journal\n2\nFeet of Tarn\n\nYell, Bo\n\nTarn Papers\n3\n\n19x2\n1962\npp. 9–3\n"
                + "pp. 3–9\n\nD4\n",
            "add");
    assertEquals(0, ran.code(), ran.err());
    Edition edition = work("yell-feet-of-tarn").edition("yell-1962");
    assertEquals("Tarn Papers", edition.container().get().title());
    assertEquals("pp. 3–9", edition.container().get().pages().get().printed());
    assertEquals("D4", edition.copies().get(0).shelfMark().get());
    assertTrue(ran.err().contains("no year of four digits in \"19x2\""), ran.err());
    assertTrue(ran.err().contains("cannot read the locator \"pp. 9–3\""), ran.err());
  }

  @Test
  void whereNobodyIsThereTheOptionsAreNamedAndNothingIsWritten() throws IOException {
    Ran ran = merese("add", "--kind", "monograph");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("--title"), ran.err());
    assertFalse(ran.err().contains("--kind and"), ran.err());
    try (var works = Files.list(home.resolve("library/works"))) {
      assertEquals(0, works.count());
    }
  }

  @Test
  void whatCannotStandAloneSaysWhatItNeeds() {
    Ran ran = merese("add", "--kind", "journal-article", "--title", "Feet", "--pages", "pp. 3–9");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("--pages: needs --in as well"), ran.err());
  }
}
