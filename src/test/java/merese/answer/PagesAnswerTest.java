package merese.answer;

import static merese.testing.SmallLibrary.check;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.Coverage.Group;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Years;
import merese.answer.Found.Mark;
import merese.answer.Found.PageLine;
import merese.model.Check;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words on the pages of books: shown apart, never counted, and not where a note is already. */
class PagesAnswerTest {
  @TempDir private Path folder;
  private Shelf shelf;

  @BeforeEach
  void threeBooksTwoOfThemWithPages() {
    shelf =
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                says("knife-edged rings", "ring-bladed").text("p. 41"),
                says("merese", "merese").photo("pl. XII, fig. 3"))
            .book(
                "Tressick", 1954, "Cut and Blown", check("ring-cut", "pp. 1–9", Check.Method.READ))
            .book("Norrish", 1971, "The Ringed Decanter")
            .pages(
                "quenby-1926",
                "1–3 = pp. 41–43; 4 = pl. XII; 5 = unnumbered",
                "Three knife-edged rings. Of the wet hand nothing.",
                "Knife-edged\nrings again, and bladed rings.\nThe blown glafs of the time was thin.",
                "KNIFE-EDGED RINGS at the head; a collar below.",
                "A merese above a knop.",
                "A facet-cut ring, and a bladed ring.")
            .pages("tressick-1954", "", "The bladed ring, the annulatecl ring.")
            .open(folder);
  }

  @AfterEach
  void close() {
    shelf.close();
  }

  private Coverage covers(String concept) {
    return covers(concept, Narrowing.NONE);
  }

  private Coverage covers(String concept, Narrowing narrowing) {
    return Covers.answer(shelf, CoverageQuestion.ofConcept(concept).with(narrowing));
  }

  private static List<String> lines(Coverage coverage) {
    List<String> lines = new ArrayList<>();
    for (OnPages source : coverage.onPages()) {
      for (OnPages.Name name : source.names()) {
        lines.add(
            source.source().reference()
                + " “"
                + name.words()
                + "”"
                + (name.narrower() ? " narrower" : "")
                + (name.mayMeanElse() ? " doubtful" : "")
                + (name.loose() ? " loose" : "")
                + " "
                + name.at()
                + name.unnumbered());
      }
    }
    return lines;
  }

  @Test
  void coverageShowsWordsOnPagesBySourceAndSpellingWhereNoNoteIs() {
    assertEquals(
        List.of(
            "Quenby 1926 “Knife-edged rings” [p. 42, p. 43][]",
            "Quenby 1926 “bladed rings” [p. 42][]",
            "Quenby 1926 “bladed ring” [][file page 5, unnumbered]",
            "Tressick 1954 “bladed ring” [][file page 1]"),
        lines(covers("ring-bladed")));
  }

  @Test
  void theyAreCountedNowhereAndTakeNoSourceOutOfThoseNotChecked() {
    Coverage coverage = covers("ring-bladed");
    Coverage.Section section = coverage.sections().get(0);

    assertEquals(1, section.count());
    assertEquals(1, section.groups().size());
    assertEquals(1, section.group(Group.COUNTED).size());
    assertEquals(
        List.of("tressick-1954", "norrish-1971"),
        coverage.notChecked().stream().map(n -> n.source().key()).toList());
  }

  @Test
  void aSourceThatWasLookedThroughStaysSo() {
    Coverage coverage = covers("ring-cut");

    assertEquals(1, coverage.checked().size());
    assertEquals(
        List.of("Quenby 1926 “facet-cut ring” narrower [][file page 5, unnumbered]"),
        lines(coverage));
  }

  @Test
  void aPageIsNotedWhereANoteOfItIsAtTheVeryPlaceOrAtSomethingOnIt() {
    assertEquals(
        List.of(), lines(covers("merese")).stream().filter(l -> l.contains("“merese”")).toList());
  }

  @Test
  void aWordOfSeveralMeaningsIsMarkedSo() {
    assertTrue(
        lines(covers("metal-collar")).contains("Quenby 1926 “collar” doubtful [p. 43][]"),
        lines(covers("metal-collar")).toString());
    Coverage byWord = Covers.answer(shelf, CoverageQuestion.of("collar"));
    assertTrue(byWord.ask().isPresent());
    assertTrue(lines(byWord).contains("Quenby 1926 “collar” doubtful [p. 43][]"));
  }

  @Test
  void lettersTakenForOthersAreMarkedSo() {
    assertEquals(
        List.of("Tressick 1954 “annulatecl ring” loose [][file page 1]"),
        lines(covers("ring-annulated")));
  }

  @Test
  void aNarrowingHoldsForThemToo() {
    Narrowing late =
        new Narrowing(
            false,
            false,
            Set.of(),
            Optional.of(new Years(OptionalInt.of(1950), OptionalInt.empty())),
            Optional.empty());

    assertEquals(
        List.of("Tressick 1954 “bladed ring” [][file page 1]"), lines(covers("ring-bladed", late)));
  }

  private static String text(PageLine line) {
    StringBuilder text = new StringBuilder(line.passage().words());
    for (int i = line.passage().marks().size() - 1; i >= 0; i--) {
      Mark mark = line.passage().marks().get(i);
      text.insert(mark.end(), '»').insert(mark.start(), '«');
    }
    return line.source().key()
        + ", "
        + line.cited()
        + (line.noted() ? " (noted)" : "")
        + ": "
        + text;
  }

  private List<String> find(String question) {
    return Find.answer(shelf, question, 20).pages().stream().map(PagesAnswerTest::text).toList();
  }

  @Test
  void findShowsTheWordsOfAPageInTheirSentenceAsTheyStand() {
    assertEquals(
        List.of("quenby-1926, p. 41: Three knife-edged rings. Of the «wet hand» nothing."),
        find("wet hand"));
    assertEquals(
        List.of(
            "quenby-1926, p. 42: Knife-edged rings again, and bladed rings. The «blown glafs» of"
                + " the time was thin."),
        find("\"blown glass\""));
  }

  @Test
  void findSaysWhichPagesAreNoted() {
    List<String> found = find("knife-edged");
    assertTrue(
        found.get(0).startsWith("quenby-1926, p. 41 (noted): Three «knife-edged» rings."),
        found.toString());
    assertTrue(
        found.get(1).startsWith("quenby-1926, p. 42: «Knife-edged» rings again"), found.toString());
    assertTrue(find("merese").get(0).startsWith("quenby-1926, pl. XII (noted): A «merese»"));
  }

  @Test
  void pagesAreInNoCountOfFind() {
    Found found = Find.answer(shelf, "knop", 20);
    assertEquals(0, found.hits().stream().filter(h -> h.kind() == Found.Kind.NOTE).count());
    assertEquals(1, found.allPages());
    assertEquals(0, Find.answer(shelf, "\"wet hand\"", 20).withAll());
    assertEquals(Optional.empty(), Find.answer(shelf, "\"wet hand\"", 20).didYouMean());
  }

  @Test
  void conceptsAreFoundOnPagesByTheirNames() {
    assertEquals(
        List.of("tressick-1954, file page 1: The bladed ring, the «annulatecl ring»."),
        find("concept:ring-annulated"));
  }

  private static String text(Swept.Place place) {
    return place.source().key()
        + ", "
        + place.cited()
        + " “"
        + place.words()
        + "”"
        + (place.narrower() ? " narrower" : "")
        + (place.mayMeanElse() ? " doubtful" : "")
        + (place.loose() ? " loose" : "");
  }

  @Test
  void aSweepGivesEachPlaceOnceAndSaysWhatWasLookedAt() {
    Swept swept = Sweep.answer(shelf, "bladed ring", 50, false);

    assertEquals(2, swept.texts());
    assertEquals(6, swept.pages());
    assertEquals(0, swept.withoutText());
    assertEquals(1, swept.noted());
    assertEquals(
        List.of(
            "quenby-1926, p. 42 “Knife-edged rings”",
            "quenby-1926, p. 42 “bladed rings”",
            "quenby-1926, p. 43 “KNIFE-EDGED RINGS”",
            "quenby-1926, file page 5, unnumbered “bladed ring”",
            "tressick-1954, file page 1 “bladed ring”"),
        swept.places().stream().map(PagesAnswerTest::text).toList());
    assertEquals(5, swept.all());
    assertEquals(Optional.of(Locator.parse("p. 42")), swept.places().get(0).locator());
  }

  @Test
  void aSweepIsCutToALimitAndCountsAll() {
    Swept swept = Sweep.answer(shelf, "ring-bladed", 2, false);

    assertEquals(2, swept.places().size());
    assertEquals(5, swept.all());
  }

  @Test
  void aSweepForAFamilyTakesInWhatIsNarrowerAndSaysSo() {
    List<String> places =
        Sweep.answer(shelf, "ring-cut", 50, false).places().stream()
            .map(PagesAnswerTest::text)
            .toList();
    assertEquals(List.of("quenby-1926, file page 5, unnumbered “facet-cut ring” narrower"), places);
  }

  @Test
  void aSweepDoesNotGuessAtAWordOfSeveralMeanings() {
    TermException refused =
        assertThrows(TermException.class, () -> Sweep.answer(shelf, "collar", 50, false));
    assertTrue(refused.getMessage().contains("metal-collar"), refused.getMessage());
  }
}
