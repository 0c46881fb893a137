package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.model.Check;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Taking a note")
class NotingTest {
  @TempDir Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
  }

  private Ran merese(String... words) {
    return Ran.in(home, Map.of("COLUMNS", "80"), words);
  }

  private Ran done(String... words) {
    Ran ran = merese(words);
    assertEquals(0, ran.code(), ran.err());
    return ran;
  }

  private Ran refused(int code, String... words) {
    Ran ran = merese(words);
    assertEquals(code, ran.code(), ran.out() + ran.err());
    assertFalse(ran.err().contains("fault in merese"), ran.err());
    assertEquals(List.of(), changes(), "nothing is written");
    return ran;
  }

  private List<String> changes() {
    return merese("history", "--limit", "0")
        .out()
        .lines()
        .filter(l -> l.matches(" *\\d+  .*"))
        .toList();
  }

  private Edition edition(String key) {
    LibraryFolder library = LibraryFolder.open(home.resolve("library"));
    for (var file : library.scan()) {
      if (file.relative().startsWith("works/")) {
        Work work = library.readWork(file.path()).value();
        for (Edition edition : work.editions()) {
          if (edition.key().equals(key)) {
            return edition;
          }
        }
      }
    }
    throw new AssertionError(key);
  }

  private Note last(String key) {
    List<Note> notes = edition(key).notes();
    return notes.get(notes.size() - 1);
  }

  @Test
  void holdsTheTermAsPrintedItsMeaningThePictureAndTheClaims() {
    done(
        "note",
        "quenby-1949",
        "pl. 31, fig. 3",
        "bladed ring",
        "--pictured",
        "--date",
        "c. 1790–1810",
        "--place",
        "mainly Irish");
    Note note = last("quenby-1949");
    assertEquals(
        List.of(new Naming("bladed ring", Optional.of("ring-bladed"), Optional.of(Why.TEXT))),
        note.namings());
    Place place = note.places().get(0);
    assertEquals("pl. 31, fig. 3", place.locator().printed());
    assertEquals(Place.Stance.PICTURES, place.stance());
    assertEquals(Place.Medium.PHOTO, place.medium());
    Claim date = note.claims().get(0);
    assertEquals(Claim.Kind.DATE, date.kind());
    assertEquals("c. 1790–1810", date.words());
    Claim made = note.claims().get(1);
    assertEquals("mainly Irish", made.words());
    assertEquals(Optional.of("mainly"), made.hedge());
    assertEquals("me", note.checked().orElseThrow().by());
  }

  @Test
  void isInTheNextAnswer() {
    String before = done("covers", "bladed ring").out();
    assertFalse(before.contains("p. 77"), before);
    done("note", "haskeld-1983", "p. 77", "bladed ring");
    String after = done("covers", "bladed ring").out();
    assertTrue(after.contains("p. 77"), after);
  }

  @Test
  void findsTheSourceByAnyWordsThatSingleItOut() {
    done("note", "haskeld primer", "p. 77", "bladed ring");
    assertEquals("p. 77", last("haskeld-1983").places().get(0).locator().printed());
    done("note", "QUENBY 1926", "p. 77", "bladed ring");
    assertEquals("p. 77", last("quenby-1926").places().get(0).locator().printed());
  }

  @Test
  void inASourceThatSeveralAreCalledNamesThem() {
    String said = refused(2, "note", "quenby", "p. 77", "bladed ring").err();
    assertTrue(said.contains("“quenby” fits "), said);
    assertTrue(said.contains("(quenby-1926)") && said.contains("(quenby-1949)"), said);
    said = refused(2, "note", "quenbi-1949", "p. 77", "bladed ring").err();
    assertTrue(said.contains("did you mean quenby-1949"), said);
  }

  @Test
  void ofATermThatIsInNoVocabularyIsLeftOpenAndSaysWhatItMayMean() {
    String said = done("note", "haskeld-1983", "p. 77", "laddered ring").out();
    assertTrue(said.contains("meaning left open") || said.contains("meaning\nleft open"), said);
    assertTrue(said.contains("it may mean"), said);
    assertEquals(Optional.empty(), last("haskeld-1983").namings().get(0).concept());
  }

  @Test
  void ofATermThatTheTextOfAFreshNoteGivesAnotherMeaningAsks() {
    done("note", "haskeld-1983", "p. 77", "laddered ring", "--as", "ring-bladed", "--why", "text");
    done("note", "tressick-1954", "p. 77", "laddered ring", "--as", "ring-square", "--why", "text");
    Ran ran = merese("note", "quenby-1949", "p. 77", "laddered ring");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("ring-bladed") && ran.err().contains("ring-square"), ran.err());
  }

  @Test
  void ofAWordWithSeveralMeaningsIsRefusedWhereNobodyCanBeAsked() {
    String said = refused(2, "note", "haskeld-1983", "p. 77", "triple ring").err();
    assertTrue(said.contains("--as") && said.contains("ring-annulated"), said);
    done("note", "haskeld-1983", "p. 77", "triple ring", "--unassigned");
    assertEquals(Optional.empty(), last("haskeld-1983").namings().get(0).concept());
    done("note", "haskeld-1983", "p. 78", "triple ring", "--as", "ring-set-three");
    assertEquals(Optional.of(Why.MY_READING), last("haskeld-1983").namings().get(0).why());
  }

  @Test
  void ofAWordWithSeveralMeaningsAsksWhoeverIsThere() {
    Ran ran = Ran.typing("2\n1\n", home, "note", "haskeld-1983", "p. 77", "triple ring");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("What does that rest on?"), ran.err());
    Naming naming = last("haskeld-1983").namings().get(0);
    assertEquals(Optional.of("ring-set-three"), naming.concept());
    assertEquals(Optional.of(Why.TEXT), naming.why());
  }

  @Test
  void thatIsGivenUpAtTheQuestionWritesNothing() {
    Ran ran = Ran.typing("", home, "note", "haskeld-1983", "p. 77", "triple ring");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("nothing was written"), ran.err());
    assertEquals(List.of(), changes());
  }

  @Test
  void whoseTermIsNotOneLineSaysWhere() {
    String said = refused(1, "note", "haskeld-1983", "p. 77", "bladed\nring").err();
    assertTrue(said.contains("the term has a line break after “bladed”"), said);
    said = refused(1, "note", "haskeld-1983", "p. 77", "\u0007ring").err();
    assertTrue(said.contains("the term has a control character (7 hexadecimal)"), said);
  }

  @Test
  void whoseTermIsBlanksHasNone() {
    done("note", "haskeld-1983", "p. 77", "  ", "--as", "ring-bladed");
    assertEquals("", last("haskeld-1983").namings().get(0).printed());
  }

  @Test
  void whoseTermIsTheIdOfAConceptIsRemarkedOn() {
    String said = done("note", "haskeld-1983", "p. 77", "ring-bladed").out();
    assertTrue(said.contains("“ring-bladed” is the id of bladed ring; --as ring-bladed"), said);
    assertFalse(said.contains("No word of the vocabulary"), said);
    said = done("note", "haskeld-1983", "p. 78", "merese", "--unassigned").out();
    assertFalse(said.contains("is the id of"), said);
  }

  @Test
  void outsideItsArticleIsWarnedOfAsACheckDoes() {
    String said = done("note", "farrow-1988", "p. 900", "bladed ring").out();
    assertTrue(said.contains("p. 900 is not in the article, which has pp. "), said);
    assertTrue(merese("check").out().contains("\"p. 900\" is not in the article, which has pp. "));
  }

  @Test
  void inALibraryOfANewerFormatIsRefusedAtTheStart() throws IOException {
    Path settings = home.resolve("library/library.json");
    String text = Files.readString(settings);
    Files.writeString(settings, text.replaceFirst("\"format\": \\d+", "\"format\": 99"));
    List<Ran> all =
        List.of(
            Ran.piped("p. 41\n", home, "sitting", "quenby-1926"),
            merese("history"),
            merese("remove", "quenby-1926", "n1"));
    for (Ran ran : all) {
      assertEquals(1, ran.code(), ran.out());
      assertEquals("", ran.out());
      assertTrue(ran.err().contains("made by a newer merese"), ran.err());
    }
  }

  @Test
  void twiceIsRefusedUnlessItIsWanted() {
    done("note", "haskeld-1983", "p. 77", "bladed ring");
    Ran ran = merese("note", "haskeld-1983", "p. 77", "bladed ring");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("this very note already"), ran.err());
    done("note", "haskeld-1983", "p. 77", "bladed ring", "--again");
    assertEquals(2, changes().size());
  }

  @Test
  void withWhatContradictsItselfSaysWhat() {
    refused(2, "note", "haskeld-1983", "p. 7", "bladed ring", "--pictured", "--not-shown");
    refused(2, "note", "haskeld-1983", "p. 7", "bladed ring", "--why", "hope");
    refused(1, "note", "haskeld-1983", "p. 7", "bladed ring", "--shows", "detail");
    refused(1, "note", "haskeld-1983", "page the last", "bladed ring");
    refused(1, "note", "haskeld-1983", "p. 7", "bladed ring", "--object", "zz-9");
    refused(1, "note", "haskeld-1983", "p. 7", "bladed ring", "--part", "zz");
    refused(1, "note", "haskeld-1983", "p. 7", "bladed ring", "--corrects", "nobody-1900:p. 4");
    refused(1, "note", "haskeld-1983", "p. 7", "bladed ring", "--as", "ring-blade");
  }

  @Nested
  @DisplayName("of a source's own list")
  class OfAList {
    @Test
    void isOneForEachHeadingAndTwoNamesOfOneHeadingStandTogether() {
      int before = edition("haskeld-1983").notes().size();
      done(
          "list",
          "haskeld-1983",
          "p. 24",
          "ball; cushion; annulated or annular",
          "--under",
          "knop",
          "--drawing");
      List<Note> notes = edition("haskeld-1983").notes();
      assertEquals(before + 3, notes.size());
      Note third = notes.get(before + 2);
      assertEquals(
          List.of("annulated", "annular"), third.namings().stream().map(Naming::printed).toList());
      assertEquals(
          List.of(Optional.of("knop-annulated"), Optional.of("knop-annulated")),
          third.namings().stream().map(Naming::concept).toList());
      assertEquals(Place.Stance.LISTS, third.places().get(0).stance());
      assertEquals(Place.Medium.DRAWING, third.places().get(0).medium());
      assertEquals(1, changes().size(), "all are one change");
    }

    @Test
    void inWhichAHeadingStandsTwiceSaysSo() {
      String list = "ball; cushion; ball";
      String said = refused(1, "list", "haskeld-1983", "p. 24", list, "--under", "knop").err();
      assertTrue(said.contains("the heading “ball” stands twice in the list"), said);
      assertFalse(said.contains("already"), said);
    }

    @Test
    void isNotWrittenInPart() {
      String said = refused(2, "list", "haskeld-1983", "p. 24", "bladed ring; triple ring").err();
      assertTrue(said.contains("triple ring"), said);
    }
  }

  @Nested
  @DisplayName("of what was looked through")
  class OfLooking {
    private Check last(String key) {
      List<Check> checks = edition(key).checks();
      return checks.get(checks.size() - 1);
    }

    @Test
    void saysWhatForHowAndWithWhatResult() {
      done("looked", "quenby-1926", "pp. 3–4", "--for", "spiral neck trail", "--read");
      Check check = last("quenby-1926");
      assertEquals("ring-spiral-trail", check.concept());
      assertEquals("pp. 3–4", check.extent().orElseThrow().printed());
      assertEquals(Check.Method.READ, check.method());
      assertEquals(Check.Result.NONE, check.result());
      assertEquals(Optional.of("me"), check.by());
    }

    @Test
    void countsWhatIsNotedInThePagesAlone() {
      done("note", "haskeld-1983", "p. 77", "spiral neck trail");
      done("looked", "haskeld-1983", "pp. 70–76", "--for", "ring-spiral-trail", "--leafed");
      assertEquals(Check.Result.NONE, last("haskeld-1983").result());
      done("looked", "haskeld-1983", "pp. 70–80", "--for", "ring-spiral-trail", "--leafed");
      assertEquals(Check.Result.FOUND, last("haskeld-1983").result());
    }

    @Test
    void takesSeveralSourcesAndTermsInOneChange() {
      done(
          "looked",
          "haskeld-1983",
          "tressick-1954",
          "--for",
          "bladed ring",
          "--for",
          "square ring",
          "--index",
          "--scope",
          "Irish decanters only");
      assertEquals(1, changes().size());
      assertEquals("ring-square", last("tressick-1954").concept());
      assertEquals("Irish decanters only", last("haskeld-1983").scope().orElseThrow().words());
    }

    @Test
    void takesAPlaceForOneThoughItsNumberIsAWordOfASource() {
      for (String place : List.of("p. 12", "cat. no. 12", "vol. 1949", "frontispiece")) {
        done("looked", "quenby-1949", place, "--for", "bladed ring", "--read");
        assertEquals(place, last("quenby-1949").extent().orElseThrow().printed());
      }
      assertEquals(4, changes().size());
      done("looked", "tressick-1954", "quenby neck 1949", "--for", "bladed ring", "--read");
      assertEquals(Optional.empty(), last("quenby-1949").extent());
    }

    @Test
    void refusesAPlaceThatCannotBeReadAsANoteDoes() {
      String why = "the range \"9–2\" runs backwards; put the smaller number first";
      assertTrue(refused(1, "note", "quenby-1949", "pp. 9–2", "ring").err().contains(why));
      assertTrue(refusedPlace("pp. 9–2").contains(why));
      assertTrue(refusedPlace("1949").contains("write \"p. 1949\" for a page"));
    }

    private String refusedPlace(String place) {
      return refused(1, "looked", "quenby-1949", place, "--for", "bladed ring", "--read").err();
    }

    @Test
    void withBlankWordsForAScopeHasNone() {
      done("looked", "haskeld-1983", "--for", "bladed ring", "--read", "--scope", " ");
      assertEquals(Optional.empty(), last("haskeld-1983").scope());
    }

    @Test
    void withoutAWayOfLookingOrAFeatureIsRefused() {
      refused(2, "looked", "haskeld-1983", "--for", "bladed ring");
      refused(2, "looked", "haskeld-1983", "--read");
      refused(2, "looked", "haskeld-1983", "--read", "--for", "no such thing");
    }
  }

  @Test
  void isTakenBackByUndoToTheByte() throws IOException {
    Path file = home.resolve("library/works/haskeld-table-glass-primer.json");
    byte[] before = Files.readAllBytes(file);
    done("note", "haskeld-1983", "p. 77", "bladed ring");
    assertTrue(done("undo").out().startsWith("Taken back: 1: note “bladed ring” at p. 77"));
    assertEquals(-1, java.util.Arrays.mismatch(before, Files.readAllBytes(file)));
    assertEquals(1, merese("undo").code());
    assertTrue(done("history", "haskeld").out().contains("(taken back)"));
    done("undo", "--redo");
    assertEquals("p. 77", last("haskeld-1983").places().get(0).locator().printed());
  }
}
