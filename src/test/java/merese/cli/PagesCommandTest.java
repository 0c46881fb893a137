package merese.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against a copy of the demo: five pages of an invented book of 1904, two of them plates. */
class PagesCommandTest {
  private static final String KEY = "norrish-1971";
  private static final String TEXT =
      "THE RINGED DECANTER\f\fOF COLLARS\nThe collar is a ring\fof rings\fPLATE I\fPLATE II\f";

  @TempDir private Path folder;
  private Path library;

  @BeforeEach
  void copyTheDemo() throws IOException {
    library = DemoLibrary.copyTo(folder).path();
    Files.writeString(folder.resolve("scan.txt"), TEXT);
  }

  private Ran ask(String... args) {
    return Ran.in(folder, Map.of("COLUMNS", "200"), args);
  }

  private Path attached() {
    return library.resolve("pages").resolve(KEY).resolve("scan.json");
  }

  private static void contains(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), "no \"" + part + "\" in:\n" + text);
    }
  }

  @Test
  void whatIsAttachedCanBeHeldAgainstTheBook() throws IOException {
    Ran ran =
        ask(
            "pages",
            "norrish 1971",
            "scan.txt",
            "--map",
            "1 = p. [1]; 2 = unnumbered; plates I after 4");
    assertEquals(0, ran.code(), ran.err());
    contains(
        ran.out(),
        "“scan”: 6 pages from scan.txt (plain text), 1 without text (file page 2)",
        "file page 1: p. [1]\n",
        "file page 2: unnumbered\n",
        "file pages 5–6: pl. I to pl. II\n",
        "2 pages are not in it, and are cited as “file page …”",
        "file page 5, pl. I: “PLATE I”",
        "merese undo takes it back.");
    contains(Files.readString(attached()), "\"map\": \"1 = p. [1]; 2 = unnumbered; plates I");
    assertEquals(0, ask("check").code());
    contains(ask("pages").out(), "(norrish-1971)\n  “scan”: 6 pages");
    contains(ask("pages", KEY).out(), "file pages 5–6: pl. I to pl. II\n");
  }

  @Test
  void undoTakesItOffAgain() {
    ask("pages", KEY, "scan.txt");
    assertTrue(Files.exists(attached()));
    Ran undo = ask("undo");
    assertEquals(0, undo.code(), undo.err());
    assertFalse(Files.exists(attached()));
  }

  @Test
  void withoutAMapItSaysHowToGiveOne() {
    Ran ran = ask("pages", KEY, "scan.txt");
    contains(ran.out(), "There is no page map", "merese pages norrish-1971 --map \"7 = p. [1];");
    contains(ran.out(), "file page 1: “THE RINGED DECANTER”");
  }

  @Test
  void aSecondTimeItTakesThePlaceOfTheFirstAndKeepsItsMap() throws IOException {
    ask("pages", KEY, "scan.txt", "--map", "5–6 = pl. I–II");
    Files.writeString(folder.resolve("scan.txt"), TEXT.replace("of rings", "of two rings"));
    Ran again = ask("pages", KEY, "scan.txt");
    contains(again.out(), "Pages attached anew, in place of", "The page map is the one");
    contains(Files.readString(attached()), "of two rings", "\"map\": \"5–6 = pl. I–II\"");
    contains(ask("pages", KEY, "scan.txt").out(), "Nothing was written: it is as it was.");
    Files.writeString(folder.resolve("scan.txt"), "one\ftwo");
    Ran shorter = ask("pages", KEY, "scan.txt");
    assertEquals(1, shorter.code());
    contains(shorter.err(), "\"5–6 = pl. I–II\", but the file has 2 pages");
    contains(Files.readString(attached()), "of two rings");
  }

  @Test
  void anotherMapCanBeGivenLater() throws IOException {
    ask("pages", KEY, "scan.txt");
    Ran mapped = ask("pages", KEY, "--map", "3-4 = 12-13");
    contains(mapped.out(), "New page map", "file pages 3–4: p. 12 to p. 13");
    contains(Files.readString(attached()), "\"map\": \"3–4 = pp. 12–13\"");
    contains(ask("pages", KEY, "--map", "").out(), "There is no page map");
    assertFalse(Files.readString(attached()).contains("\"map\""));
  }

  @Test
  void aFilePageThatShowsAnOpenBookIsCitedWithBothPages() throws IOException {
    ask("pages", KEY, "scan.txt", "--map", "1-6 = 1-6");
    String before = Files.readString(attached());
    Ran mapped = ask("pages", KEY, "--map", "1 = p. [1]; 3-4 = openings 2-5; plates after 4");
    assertEquals(0, mapped.code(), mapped.err());
    contains(
        mapped.out(),
        "file pages 3–4: pp. 2–3 to pp. 4–5\n",
        "file page 3, pp. 2–3: “OF COLLARS / The collar is a ring”");
    contains(Files.readString(attached()), "\"map\": \"1 = p. [1]; 3–4 = openings pp. 2–5; plates");
    contains(ask("find", "rings").out(), "pp. 4–5: “of «rings»”");
    contains(ask("pages", KEY, "--json").out(), "\"first\" : \"pp. 2–3\"");
    assertEquals(0, ask("check").code());
    assertEquals(0, ask("undo").code());
    assertEquals(before, Files.readString(attached()));
    contains(ask("find", "rings").out(), "p. 4: “of «rings»”");
  }

  @Test
  void wordsOnAnOpeningAreCitedAlikeByCoversAndSweep() throws IOException {
    String found = "A bladed ring.\f";
    Files.writeString(folder.resolve("spreads.txt"), found.repeat(5));
    String map = "1 = p. 2; 2 = p. 3; 3-4 = openings 4-7; 5 = p. 8";
    Ran mapped = ask("pages", KEY, "spreads.txt", "--map", map);
    assertEquals(0, mapped.code(), mapped.err());
    contains(
        ask("covers", "bladed ring").out().replace('\u00A0', ' '),
        "“bladed ring”: pp. 2, 3; pp. 4–5; pp. 6–7; p. 8\n");
    contains(
        ask("sweep", "bladed ring").out().replace('\u00A0', ' '),
        "pp. 4–5: “A «bladed ring».”",
        "pp. 6–7: “A «bladed ring».”");
  }

  @Test
  void anOpeningWithAnOddPageOnTheLeftIsRemarkedOn() {
    Ran odd = ask("pages", KEY, "scan.txt", "--map", "3-4 = openings 1-4", "--dry-run");
    assertEquals(0, odd.code(), odd.err());
    contains(odd.out(), "The map has pp. 1–2 side by side, but as a rule the left page");
    Ran even = ask("pages", KEY, "scan.txt", "--map", "3-4 = openings 2-5", "--dry-run");
    assertFalse(even.out().contains("side by side"), even.out());
  }

  @Test
  void aMapThatIsNoneSaysWhereAndChangesNothing() throws IOException {
    ask("pages", KEY, "scan.txt");
    String before = Files.readString(attached());
    for (String map : new String[] {"3-4 = 12-15", "3 = the title", "3–9 = 12–18"}) {
      Ran refused = ask("pages", KEY, "--map", map);
      assertEquals(1, refused.code(), map);
      contains(refused.err(), "; ");
      assertFalse(refused.err().contains("a fault in merese"), refused.err());
      assertEquals(before, Files.readString(attached()));
    }
  }

  @Test
  void severalTextsOfOneSourceAreToldApartByName() {
    ask("pages", KEY, "scan.txt");
    ask("pages", KEY, "scan.txt", "--name", "plates");
    Ran which = ask("pages", KEY, "--remove");
    assertEquals(1, which.code());
    contains(which.err(), "several page texts; say which with --name: plates, scan");
    contains(ask("pages", KEY, "--remove", "--name", "plates").out(), "Pages taken off");
    assertTrue(Files.exists(attached()));
    assertFalse(Files.exists(attached().resolveSibling("plates.json")));
  }

  @Test
  void whatIsRemovedTakesItsPagesAlongAndUndoBringsThemBack() {
    ask("pages", KEY, "scan.txt");
    Ran removed = ask("remove", KEY, "--clear-references", "--apply");
    assertEquals(0, removed.code(), removed.err());
    contains(removed.out(), "the text of 6 pages, from scan.txt");
    assertFalse(Files.exists(attached()));
    assertEquals(0, ask("check").code());
    ask("undo");
    assertTrue(Files.exists(attached()));
  }

  @Test
  void pagesFollowToTheEditionThatStaysInAMerge() throws IOException {
    ask("pages", KEY, "scan.txt", "--map", "3 = p. 9");
    ask("pages", "norrish-1984", "scan.txt");
    Files.writeString(
        attached(), Files.readString(attached()).replace("\"map\"", "\"mine\": 1,\n  \"map\""));
    Ran merged = ask("merge", "norrish-1984", KEY, "--one-edition", "--apply");
    String why = merged.out() + merged.err();
    if (merged.code() != 0) { // one descends from the other: two others, then
      contains(why, "descends");
      merged = ask("merge", "cordwent-1955", KEY, "--one-edition", "--apply");
      assertEquals(0, merged.code(), merged.out() + merged.err());
      contains(ask("pages", "cordwent-1955").out(), "file page 3: p. 9");
      Path moved = library.resolve("pages/cordwent-1955/scan.json");
      contains(Files.readString(moved), "\"source\": \"cordwent-1955\"", "\"mine\": 1");
    }
    assertFalse(Files.exists(attached()));
    assertEquals(0, ask("check").code());
  }

  @Test
  void aDryRunWritesNothing() {
    Ran ran = ask("pages", KEY, "scan.txt", "--dry-run");
    assertEquals(0, ran.code(), ran.err());
    contains(ran.out(), "To be done: pages attached to", "Nothing is written");
    assertFalse(Files.exists(attached()));
  }

  @Test
  void jsonSaysTheSame() {
    Ran ran = ask("pages", KEY, "scan.txt", "--map", "plates after 4", "--json");
    contains(
        ran.out(), "\"outcome\" : \"NEW\"", "\"last\" : \"pl. 2\"", "\"from\" : \"plain text\"");
    contains(ask("pages", "--json").out(), "\"attached\" : [ {");
  }

  @Test
  void whatCannotBeReadIsSaidInWordsAndAttachesNothing() throws IOException {
    Files.write(folder.resolve("bad.txt"), new byte[] {'a', 0, 'b'});
    Files.write(folder.resolve("broken.pdf"), "%PDF-1.4 and no more".getBytes(UTF_8));
    for (String file : new String[] {"bad.txt", "broken.pdf", "none.pdf"}) {
      Ran refused = ask("pages", KEY, file);
      assertEquals(1, refused.code(), file);
      contains(refused.err(), file + ": ");
      assertFalse(refused.err().contains("a fault in merese"), refused.err());
    }
    assertFalse(Files.exists(attached().getParent()));
  }

  @Test
  void wrongUseIsAnsweredWithWhatIsMissing() {
    assertEquals(2, ask("pages", "--remove").code());
    assertEquals(2, ask("pages", KEY, "scan.txt", "--remove").code());
    assertEquals(2, ask("pages", KEY, "--dry-run").code());
    assertEquals(2, ask("pages", "no such source", "scan.txt").code());
    assertEquals(1, ask("pages", KEY, "--map", "1 = p. 1").code());
  }

  @Test
  void aNameMeansTheSameTextWhateverItsCaseAndEnding() throws IOException {
    ask("pages", KEY, "scan.txt", "--name", "Plates");
    Ran again = ask("pages", KEY, "scan.txt", "--name", "plates");
    contains(again.out(), "Pages as they were of", "“Plates”: 6 pages from scan.txt");
    assertTrue(Files.exists(attached().resolveSibling("Plates.json")));
    ask("pages", KEY, "scan.txt");
    contains(ask("pages", KEY, "--remove", "--name", "scan.txt").out(), "Pages taken off");
    Ran none = ask("pages", KEY, "--remove", "--name", "covers");
    contains(none.err(), "has no page texts called \"covers\", but Plates");
  }

  @Test
  void theBeginningsOfSixPagesAreShownWhereverTheMapChanges() throws IOException {
    StringBuilder text = new StringBuilder("\f");
    for (int page = 2; page <= 20; page++) {
      text.append("PAGE ").append(page).append("\nof rings\f");
    }
    Files.writeString(folder.resolve("long.txt"), text);
    String map = "1–4 = pp. 1–4; 5–6 = unnumbered; 7–9 = pp. 7–9; 10 = pl. I; 12–19 = pp. 12–19";
    Ran ran = ask("pages", KEY, "long.txt", "--map", map);
    contains(
        ran.out(),
        "1 without text (file page 1)",
        "file pages 5–6: unnumbered\n",
        "2 pages are not in it, and are cited as",
        "file page 2, p. 2: “PAGE 2 / of rings”",
        "file page 10, pl. I: “PAGE 10 / of rings”",
        "file page 9, p. 9: “PAGE 9 / of rings”");
    assertFalse(ran.out().contains("“PAGE 5"), ran.out());
    assertEquals(6, ran.out().lines().filter(line -> line.contains(": “PAGE ")).count());
    contains(
        ask("pages", KEY, "--map", "1–19 = pp. 1–19").out(),
        "1 page is not in it, and is cited as");
    assertFalse(ask("pages", KEY, "--map", "1–20 = pp. 1–20").out().contains("not in it"));
    Ran unmapped = ask("pages", KEY, "--map", "");
    contains(unmapped.out(), "\n  file page 2: “PAGE 2", "\n  file page 20: “PAGE 20");
  }

  @Test
  void longBeginningsAreCutAndHarmless() throws IOException {
    String words = "A ring round the neck of a decanter is a collar, ";
    Files.writeString(
        folder.resolve("long.txt"),
        words
            + "and a collar is a ring\f"
            + "x".repeat(90)
            + "\fa \u202e ring\f"
            + "\f".repeat(10));
    Ran ran = ask("pages", KEY, "long.txt", "--map", "1 = p. 1; 2 = pl. 1; 3 = p. 2");
    contains(
        ran.out(),
        "10 without text (file pages 4, 5, 6, 7, 8, 9, 10, 11 …)",
        "“" + words + "and a …”",
        "“" + "x".repeat(30) + " …”",
        "“a ");
    assertFalse(ran.out().contains("\u202e"), ran.out());
  }

  @Test
  void whereNothingIsAttachedItSaysHowToDoIt() throws IOException {
    contains(
        ask("pages", KEY).out(),
        "No text of its pages is attached.",
        "merese pages norrish-1971 FILE");
    for (String attached : new String[] {"brackenford-directory-1817", "cruet-frame-1904"}) {
      assertEquals(0, ask("pages", attached, "--remove").code());
    }
    Ran none = ask("pages");
    assertEquals(0, none.code());
    contains(
        none.out(), "No pages are attached to any source. Attach them with: merese pages SOURCE");
  }

  @Test
  void aTextOfAnEditionThatIsGoneIsSaidToBe() throws IOException {
    ask("pages", KEY, "scan.txt");
    Path elsewhere = library.resolve("pages/gone-1900/scan.json");
    Files.createDirectories(elsewhere.getParent());
    Files.writeString(elsewhere, Files.readString(attached()).replace(KEY, "gone-1900"));
    contains(
        ask("pages").out(),
        "gone-1900\n  there is no such edition in the library; see merese check\n  “scan”: 6 pages",
        "(plain text), 1 without text (file page 2); no page map");
  }

  @Test
  void pagesThatFollowTakeAnotherNameWhereTheirsIsTaken() {
    ask("pages", KEY, "scan.txt");
    ask("pages", "cordwent-1955", "scan.txt", "--map", "3 = p. 9");
    Ran merged = ask("merge", "cordwent-1955", KEY, "--one-edition", "--apply");
    assertEquals(0, merged.code(), merged.out() + merged.err());
    contains(merged.out(), "called scan-2 from now on");
    Ran both = ask("pages", "cordwent-1955");
    contains(both.out(), "“scan”: 6 pages", "“scan-2”: 6 pages", "file page 3: p. 9");
    ask("undo");
    assertTrue(Files.exists(attached()));
    assertFalse(ask("pages", "cordwent-1955").out().contains("scan-2"));
  }

  @Test
  void ofManyTextsTheFirstAreShownAndTheOthersCounted() {
    ask("pages", KEY, "scan.txt");
    ask("pages", KEY, "scan.txt", "--name", "second");
    ask("pages", KEY, "scan.txt", "--name", "third");
    Ran three = ask("pages", "--limit", "3"); // two are of the demo
    assertEquals(0, three.code(), three.err());
    contains(three.out(), "brackenford-1817", "“scan”: 6 pages", "And 2 more texts; --limit N");
    assertFalse(three.out().contains("“second”"), three.out());
    assertFalse(ask("pages", "--limit", "5").out().contains("more text"));
    contains(ask("pages", "--limit", "1", "--json").out(), "\"all\" : 5");
    assertEquals(2, ask("pages", "--limit", "0").code());
    assertEquals(2, ask("pages", KEY, "--limit", "3").code());
  }

  @Test
  void damagedPagesAreNamedBesideTheOthers() throws IOException {
    ask("pages", KEY, "scan.txt");
    Files.writeString(attached(), "{");
    Ran all = ask("pages");
    assertEquals(1, all.code());
    contains(all.out(), "scan.json:1", "brackenford-1817");
  }
}
