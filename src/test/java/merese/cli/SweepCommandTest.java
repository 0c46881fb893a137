package merese.cli;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A sweep through the pages of books")
class SweepCommandTest {
  @TempDir Path home;

  @BeforeEach
  void aBookWithItsPages() {
    new SmallLibrary()
        .book(
            "Quenby",
            1926,
            "Neck and Stopper",
            says("knife-edged rings", "ring-bladed").text("p. 41"))
        .pages(
            "quenby-1926",
            "1–3 = pp. 41–43",
            "Three knife-edged rings.",
            "The bladed ring is felt by a wet hand.\nA \"triangular ring\" is a bladed ring too.",
            "Of blaclecl rings, and a collar.",
            "The bladed ring.",
            "")
        .write(home);
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  private Edition edition() {
    LibraryFolder library = LibraryFolder.open(home.resolve("library"));
    return library.readWork(library.resolve("works/quenby-1926.json")).value().editions().get(0);
  }

  private List<Note> notes() {
    return edition().notes();
  }

  private List<String> log() {
    return edition().checks().stream()
        .map(
            c ->
                c.concept()
                    + " "
                    + c.extent().map(Locator::printed).orElse("-")
                    + " "
                    + c.method().code()
                    + " "
                    + c.result().code())
        .toList();
  }

  @Test
  void theCheckLogSaysThatThePagesWereSearchedAndNotRead() {
    String before = merese("covers", "ring-annulated").out();
    assertTrue(before.contains("Not checked\n    Quenby 1926\n"), before);

    Ran ran = merese("sweep", "ring-annulated", "--log");
    assertEquals(1, ran.code(), "nothing is found");
    assertTrue(
        ran.out()
            .endsWith(
                """

                Logged: only a word search in its page text, which misses misread words
                  Quenby 1926, pp. 41–43 (and 1 page of quenby-1926.txt without a known number):
                  nothing found
                merese undo takes it back.
                """),
        ran.out());
    assertEquals(List.of("ring-annulated pp. 41–43 word-search none"), log());
    String covers = merese("covers", "ring-annulated").out();
    assertTrue(
        covers.contains(
            """
            Checked, without a note
                Quenby 1926  pp. 41–43 (only a word search in its page text, which misses
                             misread words): nothing found; and 1 page of quenby-1926.txt
                             without a known number
            """),
        covers);
    assertFalse(covers.contains("Not checked"), covers);
    String gaps = merese("gaps", "ring-annulated").out();
    assertTrue(gaps.contains("pp. 41–43 (only a word search in its page text"), gaps);
    assertEquals(0, merese("check").code());
  }

  @Test
  void aLaterSearchOfTheSamePagesTakesThePlaceOfTheEarlierOne() {
    merese("looked", "quenby-1926", "pp. 41–43", "--for", "ring-annulated", "--read");
    merese("sweep", "ring-annulated", "--log");
    merese("sweep", "ring-annulated", "--log");
    merese("sweep", "ring-bladed", "--log");

    assertEquals(
        List.of(
            "ring-annulated pp. 41–43 read none",
            "ring-annulated pp. 41–43 word-search none",
            "ring-bladed pp. 41–43 word-search found"),
        log());
  }

  @Test
  void theLinesOfAllSourcesAreOneChange(@TempDir Path other) {
    new SmallLibrary()
        .book("Quenby", 1926, "Neck and Stopper")
        .pages("quenby-1926", "", "A plain foot.", "A bladed ring.")
        .book("Tressick", 1954, "Cut and Blown")
        .pages("tressick-1954", "1–2 = openings 2–5", "", "A folded foot.")
        .write(other);
    Map<String, String> wide = Map.of("COLUMNS", "140");

    String logged = Ran.in(other, wide, "sweep", "ring-bladed", "--log").out();
    assertTrue(
        logged.contains(
            """
              Quenby 1926 (2 pages of quenby-1926.txt without a known number alone): found
              Tressick 1954, pp. 4–5: nothing found
            """),
        logged);
    String covers = Ran.in(other, wide, "covers", "ring-bladed").out();
    assertTrue(
        covers.contains("Tressick 1954  pp. 4–5 (only a word search in its page text"), covers);
    assertTrue(covers.contains("misread words): found, not yet noted; 2 pages of"), covers);
    assertEquals(0, Ran.in(other, wide, "undo").code());
    assertFalse(Ran.in(other, wide, "covers", "ring-bladed").out().contains("word search in"));
  }

  @Test
  void atATerminalOneIsAskedWhetherToLogIt() {
    assertTrue(
        Ran.typing("n\n", home, "sweep", "ring-annulated", "--log").err().contains("not read"));
    assertEquals(List.of(), log());
    Ran.typing("", home, "sweep", "ring-annulated", "--log");
    assertEquals(List.of(), log(), "the input ends");
    Ran.typing("q\ny\n", home, "sweep", "ring-bladed", "--log");
    assertEquals(List.of("ring-bladed pp. 41–43 word-search found"), log());
    merese("sweep", "ring-annulated");
    assertEquals(1, log().size(), "nothing is logged unasked");
  }

  @Test
  void printsTheCommandThatNotesEachPlace() {
    Ran ran = merese("sweep", "bladed", "ring");

    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        """
        bladed ring
        Looked at 5 pages of 1 attached text (1 without text). A name of it stands in 4
        places that are not noted, and in 1 noted already.

        Words on the page, not yet noted
        Quenby 1926 (quenby-1926)
          p. 42: “The «bladed ring» is felt by a wet hand. A "triangular ring" is a
            bladed ring too.”
            merese note quenby-1926 "p. 42" "bladed ring"
          p. 42: “The bladed ring is felt by a wet hand. A "«triangular ring»" is a
            bladed ring too.”
            merese note quenby-1926 "p. 42" "triangular ring"
          p. 43 (perhaps misread): “Of «blaclecl rings», and a collar.”
            In the command put the term as it is printed:
            merese note quenby-1926 "p. 43" "blaclecl rings"
          file page 4: “The «bladed ring».”
            In the command put the place for LOCATOR, as a footnote has it:
            merese note quenby-1926 LOCATOR "bladed ring"
        """,
        ran.out());
    assertEquals(1, notes().size(), "nothing is noted unasked");
  }

  @Test
  void theCommandThatIsPrintedDoesNoteThePlace() {
    assertEquals(0, merese("note", "quenby-1926", "p. 42", "bladed ring").code());

    assertTrue(merese("sweep", "bladed ring").out().contains("in 3 noted already"));
    assertFalse(merese("covers", "bladed ring").out().contains("“bladed ring”: p. 42"));
  }

  @Test
  void offersEachPlaceToThePersonAtTheTerminal() {
    Ran ran = Ran.typing("y\nn\ny\nbladed rings\ny\nfacing p. 43\n", home, "sweep", "bladed ring");

    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        List.of("p. 41", "p. 42", "p. 43", "facing p. 43"),
        notes().stream().map(n -> n.places().get(0).locator().printed()).toList());
    Note second = notes().get(1);
    assertEquals("bladed ring", second.namings().get(0).printed());
    assertEquals("ring-bladed", second.namings().get(0).concept().orElseThrow());
    assertEquals(Naming.Why.TEXT, second.namings().get(0).why().orElseThrow());
    assertEquals(Place.Medium.TEXT, second.places().get(0).medium());
    assertEquals("bladed rings", notes().get(2).namings().get(0).printed());
    assertTrue(ran.out().endsWith("3 notes taken.\n"), ran.out());
    assertFalse(ran.out().contains("merese note quenby-1926"), ran.out());
  }

  @Test
  void asksWhichPageOfAnOpening() {
    assertEquals(0, merese("pages", "quenby-1926", "--map", "1–4 = openings 40–47").code());
    String printed = merese("sweep", "bladed ring", "--limit", "1").out();
    assertTrue(
        printed.contains(
            "    In the command leave of the two pages the one it is on:\n"
                + "    merese note quenby-1926 \"pp. 42–43\" \"bladed ring\"\n"),
        printed);

    Ran ran = Ran.typing("y\np. 43\ny\n\nq\n", home, "sweep", "bladed ring");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        List.of("p. 41", "p. 43", "pp. 42–43"),
        notes().stream().map(n -> n.places().get(0).locator().printed()).toList());
  }

  @Test
  void showsWhatRunsOverTheEndOfAPageWithTheBreak(@TempDir Path other) {
    new SmallLibrary()
        .book("Quenby", 1926, "Neck and Stopper")
        .pages(
            "quenby-1926",
            "1–2 = pp. 41–42",
            "Of the heavy necks with annu-\n41",
            "THE NECK\nlated rings, more than necks.")
        .write(other);

    String swept = Ran.in(other, Map.of("COLUMNS", "90"), "sweep", "ring-annulated").out();
    assertTrue(
        swept.endsWith(
            """
              p. 41: “Of the heavy necks with «annu-|lated rings», more than necks.”
                merese note quenby-1926 "p. 41" "annulated rings"
            """),
        swept);
    String found = Ran.in(other, Map.of("COLUMNS", "90"), "find", "annulated rings").out();
    assertTrue(
        found.contains(", p. 41: “Of the heavy necks with «annu-|lated rings», more than necks.”"),
        found);
    String necks = Ran.in(other, Map.of("COLUMNS", "90"), "find", "necks is:page").out();
    assertTrue(
        necks.contains(
            """
              Quenby 1926, p. 41: “Of the heavy «necks» with annu-41”
              Quenby 1926, p. 42: “THE «NECK» lated rings, more than «necks».”
            """),
        necks);
    assertTrue(
        Ran.in(other, Map.of("COLUMNS", "90"), "covers", "annulated ring")
            .out()
            .contains("Quenby 1926  “annulated rings”: p. 41\n"));
  }

  @Test
  void stopsWhereThePersonHasEnough() {
    Ran ran = Ran.typing("y\nq\n", home, "sweep", "bladed ring");

    assertEquals(2, notes().size());
    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        2, sizeAfter(Ran.typing("n\nn\n", home, "sweep", "bladed ring")), "the input ends");
  }

  private int sizeAfter(Ran ran) {
    assertEquals(0, ran.code(), ran.err());
    return notes().size();
  }

  @Test
  void eachNoteCanBeTakenBack() {
    Ran.typing("y\nq\n", home, "sweep", "bladed ring");
    assertEquals(2, notes().size());

    assertEquals(0, merese("undo").code());
    assertEquals(1, notes().size());
  }

  @Test
  void saysWhatWasLookedAtWhereNothingIsFound() {
    Ran ran = merese("sweep", "ring-annulated");

    assertEquals(1, ran.code());
    assertTrue(ran.out().contains("No name of it stands"), ran.out());
  }

  @Test
  void saysSoWhereNoTextIsAttached(@TempDir Path other) {
    new SmallLibrary().book("Quenby", 1926, "Neck and Stopper").write(other);
    Ran ran = Ran.in(other, Map.of("COLUMNS", "80"), "sweep", "bladed ring");

    assertEquals(1, ran.code());
    assertTrue(ran.out().contains("merese pages attaches one"), ran.out());
  }

  @Test
  void aWordAShellWouldReadIsQuotedSoThatItIsNot() {
    assertEquals("\"bladed ring\"", SweptText.quoted("bladed ring"));
    assertEquals("'5$ ring'", SweptText.quoted("5$ ring"));
    assertEquals(
        "'a \"plain\" collar''\\'''s'".replace("''\\'''", "'\\''"),
        SweptText.quoted("a \"plain\" collar's"));
    assertEquals("\"ship's\"", SweptText.quoted("ship's"));
  }

  @Test
  void printsTheAnswerAsJson() {
    Ran ran = merese("sweep", "bladed ring", "--json", "--limit", "1");

    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("\"words\" : \"bladed ring\""), ran.out());
    assertTrue(ran.out().contains("\"all\" : 4"), ran.out());
  }

  @Test
  void coversAndFindShowThemApart() {
    String covers = merese("covers", "bladed ring").out();
    assertTrue(
        covers.endsWith(
            """
            Words on the page, not yet noted
                Quenby 1926  “bladed ring”: p. 42; file page 4
                             “triangular ring”: p. 42
                             “blaclecl rings” (perhaps misread): p. 43
            Counted nowhere above; merese sweep shows each in its sentence.
            """),
        covers);
    String find = merese("find", "\"wet hand\"").out();
    assertEquals(
        """
        No note, source or concept has “"wet hand"”.

        Words on the page, not yet noted
          Quenby 1926, p. 42: “The bladed ring is felt by a «wet hand». A "triangular
            ring" is a bladed ring too.”
        """,
        find);
  }
}
