package merese.answer;

import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.Locator;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.AnswerLines;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The trade's scenarios with their whole answers (common practice, no source; all authors and
 * titles are invented), each again with its names, ids and order shuffled.
 */
class ScenarioTest {
  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, CoverageQuestion question, String expected) {
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      assertEquals(expected, AnswerLines.of(shelf.ask(s -> Covers.answer(s, question))));
    }
    for (int seed = 1; seed <= 5; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        String answer = AnswerLines.of(shelf.ask(s -> Covers.answer(s, question)));
        assertEquals(expected, shuffled.restore(answer), "seed " + seed);
      }
    }
  }

  @Nested
  @DisplayName("Which sources picture a bladed neck ring?")
  class SynonymsNegativeAndCaptionConflict {
    private SmallLibrary library() {
      return new SmallLibrary()
          .book(
              "Quenby",
              1926,
              "Neck and Stopper",
              says("knife-edged rings", "ring-bladed").text("p. 41").photo("pl. XII, fig. 3"))
          .book(
              "Tressick",
              1954,
              "Cut and Blown",
              says("triangular rings", "ring-bladed").text("p. 88").photo("fig. 61"))
          .book(
              "Norrish",
              1971,
              "The Ringed Decanter",
              new NoteMaker()
                  .naming("plain rings", "ring-bladed", Why.MY_READING)
                  .naming("triangular in section", "ring-bladed", Why.TEXT)
                  .place("pl. 9", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, "n1")
                  .place("pl. 9", Stance.NAMES, Medium.CAPTION, null, "plain rings", "n1")
                  .place(
                      "p. 30",
                      Stance.DESCRIBES_UNNAMED,
                      Medium.TEXT,
                      null,
                      "triangular in section",
                      "n1"))
          .book(
              "Haskeld",
              1983,
              "A Table-Glass Primer",
              says("bladed ring", "ring-bladed").absent("p. 12"))
          .book(
              "Dunlavin",
              1990,
              "Glass of the Two Islands",
              says("ringed neck", "neck-ring").photo("fig. 40"));
    }

    private static final String ANSWER =
        """
        ring-bladed “bladed ring”: 3 of 3
        counted: Quenby 1926, pl. XII, fig. 3 (text p. 41) “knife-edged rings” → ring-bladed
        counted: Tressick 1954, fig. 61 (text p. 88) “triangular rings” → ring-bladed
        counted: Norrish 1971, pl. 9 “plain rings”, “triangular in section” → ring-bladed
          ⚠ caption “plain rings” against text p. 30 “triangular in section”
        says not shown: Haskeld 1983, p. 12 in words “bladed ring” → ring-bladed
        general only: Dunlavin 1990, fig. 40 “ringed neck” → neck-ring
        word: “plain rings” also ring-plain
        tell: ring-bladed / ring-step-cut: many ridges, ground
        tell: ring-bladed / knop-bladed: is on a stem
        tell: ring-bladed / cut-step, said there: on a neck
        """;

    @Test
    void threeDo() {
      CoverageQuestion asked = CoverageQuestion.of("bladed neck ring");
      assertAnswer(
          library(),
          asked.with(
              new CoverageQuestion.Narrowing(
                  true,
                  false,
                  java.util.Set.of(),
                  java.util.Optional.empty(),
                  java.util.Optional.empty())),
          ANSWER);
    }
  }

  @Nested
  @DisplayName("Two sources use “triple ring” for two things")
  class Homonym {
    private SmallLibrary library() {
      return new SmallLibrary()
          .book(
              "Quenby",
              1926,
              "Neck and Stopper",
              says("triple ring", "ring-annulated").text("p. 43").photo("pl. XIII"))
          .book(
              "Tressick",
              1954,
              "Cut and Blown",
              says("triple rings", "ring-set-three").text("p. 90").photo("fig. 64"))
          .book(
              "Farrow",
              1988,
              "Cullet Society Journal",
              prints("a triple-ringed quart").text("p. 7"))
          .book(
              "Norrish",
              1971,
              "The Ringed Decanter",
              says("annulated ring", "ring-annulated").text("p. 31").photo("pl. 11"));
    }

    @Test
    void theWordGetsASectionForEachMeaning() {
      assertAnswer(
          library(),
          CoverageQuestion.of("triple ring"),
          """
          asks: the word is used for more than one thing
          A ring-annulated “annulated ring”: 1 of 1
          counted: Quenby 1926, pl. XIII (text p. 43) “triple ring” → ring-annulated
          same feature: Norrish 1971, pl. 11 (text p. 31) “annulated ring” → ring-annulated
          B ring-set-three “set of three rings”: 1 of 1
          counted: Tressick 1954, fig. 64 (text p. 90) “triple rings” → ring-set-three
          meaning not stated: Farrow 1988, p. 7 in words “a triple-ringed quart”
          """);
    }

    @Test
    void theConceptTakesInWhateverItIsCalled() {
      assertAnswer(
          library(),
          CoverageQuestion.ofConcept("ring-annulated"),
          """
          ring-annulated “annulated ring”: 2 of 2
          counted: Quenby 1926, pl. XIII (text p. 43) “triple ring” → ring-annulated
          counted: Norrish 1971, pl. 11 (text p. 31) “annulated ring” → ring-annulated
          not this: Tressick 1954, fig. 64 (text p. 90) “triple rings” → ring-set-three
          meaning not stated: Farrow 1988, p. 7 in words “a triple-ringed quart”
          word: “triple ring” also ring-set-three [Tressick 1954]
          tell: ring-annulated / ring-set-three: bare neck shows between
          tell: ring-annulated / neck-cut-between-rings, said there: one tooled band
          """);
    }
  }

  @Nested
  @DisplayName("Cut rings, and what is narrower")
  class NarrowerTermsAndTheSameWords {
    @Test
    void narrowerFollowsAndTheSameWordsForSomethingElseStandApart() {
      assertAnswer(
          new SmallLibrary()
              .book(
                  "Quenby",
                  1926,
                  "Neck and Stopper",
                  says("cut rings", "ring-cut").text("p. 45").photo("pl. XIV"))
              .book(
                  "Tressick",
                  1954,
                  "Cut and Blown",
                  says("faceted rings", "ring-facet-cut").text("p. 92"))
              .book(
                  "Haskeld",
                  1983,
                  "A Table-Glass Primer",
                  says("diamond-cut rings", "ring-facet-cut").photo("fig. 22"))
              .book(
                  "Dunlavin",
                  1990,
                  "Glass of the Two Islands",
                  says("cut rings", "ring-incised").text("p. 104").photo("fig. 41"))
              .book(
                  "Norrish",
                  1971,
                  "The Ringed Decanter",
                  says("stepped", "ring-step-cut").photo("pl. 12")),
          CoverageQuestion.ofConcept("ring-cut"),
          """
          ring-cut “cut ring”: 3 of 3
          counted: Quenby 1926, pl. XIV (text p. 45) “cut rings” → ring-cut
          counted: Haskeld 1983, fig. 22 “diamond-cut rings” → ring-facet-cut narrower
          counted: Tressick 1954, p. 92 in words “faceted rings” → ring-facet-cut narrower
          not this: Dunlavin 1990, fig. 41 (text p. 104) “cut rings” → ring-incised
          word: “cut rings” also ring-incised [Dunlavin 1990]
          tell: ring-cut / ring-incised: no separate ring ever existed
          tell: ring-cut / ring-incised, said there: has a join and stands beyond the neck line
          tell: ring-facet-cut / ring-milled: soft edges
          tell: ring-facet-cut / ring-square, said there: ground flats meeting at corners
          tell: ring-facet-cut / ring-milled, said there: cold-cut edges are sharp
          tell: ring-facet-cut / ring-hatched-bands, said there: an applied ring
          not checked: Norrish 1971
          """);
    }
  }

  @Nested
  @DisplayName("Which plates show air twists? Sort all.")
  class RangesAndOrder {
    private SmallLibrary library() {
      return new SmallLibrary()
          .book(
              "Norrish",
              1971,
              "The Ringed Decanter",
              says("air twists", "stem-air-twist").photo("pls XXXVIII–XLII except XL"),
              says("three-lobed lip", "lip-tricorn").photo("pl. XL"),
              prints("glasses").text("p. 41").photo("pl. IX").text("p. iv"),
              prints("glass").photo("facing p. 40").photo("frontispiece").text("p. 4"),
              prints("a glass").photo("front endpaper"))
          .book(
              "Saltrey",
              1824,
              "Price list",
              prints("decanters").text("fol. 12v").text("fol. 2v").text("fol. 12r"))
          .book("Cordwent", 1955, "Leaflet", prints("cruets").text("p. [12]"));
    }

    @Test
    void thePlateThatIsExceptedIsNotAmongThem() {
      assertAnswer(
          library(),
          CoverageQuestion.of("air twist"),
          """
          stem-air-twist “air twist”: 1 of 1
          counted: Norrish 1971, pls XXXVIII–XLII except XL “air twists” → stem-air-twist
          not checked: Saltrey 1824
          not checked: Cordwent 1955
          """);
      Locator plates = Locator.parse("pls XXXVIII–XLII except XL");
      assertEquals("pls XXXVIII–XXXIX and XLI–XLII", plates.withExceptionsApplied().toString());
      assertEquals(4, plates.count());
    }

    @Test
    void everyPlaceOfASourceStandsWhereItIsInTheBook() {
      assertEquals(
          List.of(
              "front endpaper, frontispiece, p. iv, p. 4, facing p. 40, p. 41,"
                  + " pls IX, XXXVIII, XXXIX, XL, XLI, XLII",
              "fols 2v, 12r, 12v",
              "p. [12]"),
          library().works().stream().map(ScenarioTest::sorted).toList());
    }
  }

  private static String sorted(Work work) {
    List<Locator> places = new ArrayList<>();
    for (Note note : work.editions().get(0).notes()) {
      for (Place place : note.places()) {
        places.add(place.locator());
      }
    }
    return String.join(", ", Locator.inPhysicalOrder(places));
  }
}
