package merese.answer.concordance;

import static merese.testing.SmallLibrary.descended;
import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.link;
import static merese.testing.SmallLibrary.linked;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.model.Edition.Lineage.Form;
import merese.model.Naming.Why;
import merese.model.WorkLink.Kind;
import merese.shelf.Shelf;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole answers, again with names, ids and order shuffled (common practice, no source; names and
 * titles are invented).
 */
class ConcordingTest {
  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, List<String> terms, String expected) {
    ConcordanceQuestion question = new ConcordanceQuestion(terms, Optional.empty());
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      assertEquals(expected, lines(Concording.answer(shelf, question)));
    }
    for (int seed = 1; seed <= 5; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        String answer = lines(Concording.answer(shelf, question));
        assertEquals(expected, shuffled.restore(answer), "seed " + seed);
      }
    }
  }

  private static String lines(Concordance answer) {
    StringJoiner lines = new StringJoiner("\n", "", "\n");
    for (Concordance.Row row : answer.rows()) {
      lines.add(
          row.source().reference()
              + (row.independent() ? "" : " +")
              + row.cells().stream()
                  .map(c -> " | " + c.concept() + ": " + terms(c.terms()))
                  .collect(Collectors.joining()));
    }
    answer.folded().forEach(f -> lines.add(f.source().reference() + " with " + f.witness().key()));
    if (!answer.without().isEmpty()) {
      lines.add("without: " + answer.without().stream().map(h -> h.id()).toList());
    }
    answer
        .apart()
        .forEach(
            a ->
                a.entries()
                    .forEach(
                        e ->
                            lines.add(
                                a.why()
                                    + ": "
                                    + e.source().reference()
                                    + " "
                                    + terms(e.passages()))));
    for (Concordance.Names names : answer.names()) {
      names
          .names()
          .forEach(
              n ->
                  lines.add(
                      names.concept().id()
                          + " = "
                          + n.spellings()
                          + " "
                          + references(n.sources())
                          + " of "
                          + n.independent()));
      if (!names.unnamed().isEmpty()) {
        lines.add(names.concept().id() + " not named by " + references(names.unnamed()));
      }
      if (!names.alsoPrinted().isEmpty()) {
        lines.add(names.concept().id() + " also " + names.alsoPrinted());
      }
    }
    for (Concordance.Word word : answer.words()) {
      lines.add(
          "“"
              + word.word()
              + "” "
              + word.safety()
              + ": "
              + word.meanings().stream()
                  .map(
                      m ->
                          m.concept().id()
                              + " "
                              + references(m.stated())
                              + (m.seen().isEmpty() ? "" : " seen " + references(m.seen()))
                              + (m.byVocabulary() ? " in the vocabulary" : ""))
                  .collect(Collectors.joining(", "))
              + (word.notStated().isEmpty() ? "" : " not stated " + references(word.notStated())));
    }
    Concordance.Agreement agreement = answer.agreement();
    lines.add(
        "agreement: "
            + (agreement.lack().isPresent()
                ? agreement.lack().get()
                : Math.round(agreement.alpha().getAsDouble() * 1000) / 1000.0)
            + ", "
            + agreement.works()
            + " works, "
            + agreement.concepts()
            + " concepts, "
            + agreement.words()
            + " words");
    return lines.toString();
  }

  private static String terms(List<Passage> terms) {
    return terms.stream()
        .map(
            t ->
                t.printed()
                    + (t.pictured().isEmpty() ? "" : " pictured " + t.pictured())
                    + (t.inWords().isEmpty() ? "" : " " + t.inWords())
                    + (t.narrower() ? " narrower" : ""))
        .collect(Collectors.joining("; "));
  }

  private static List<String> references(List<SourceLine> sources) {
    return sources.stream().map(SourceLine::reference).toList();
  }

  @Test
  void aWordOfTwoMeaningsIsNotSafe() {
    assertAnswer(
        new SmallLibrary()
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
                says("annulated ring", "ring-annulated").text("p. 31").photo("pl. 11")),
        List.of("ring-annulated", "ring-set-three"),
        """
        Quenby 1926 | ring-annulated: [triple ring] pictured [pl. XIII] [p. 43]
        Tressick 1954 | ring-set-three: [triple rings] pictured [fig. 64] [p. 90]
        Norrish 1971 | ring-annulated: [annulated ring] pictured [pl. 11] [p. 31]
        MEANING_NOT_STATED: Farrow 1988 [a triple-ringed quart] [p. 7]
        ring-annulated = [annulated ring] [Norrish 1971] of 1
        ring-annulated = [triple ring] [Quenby 1926] of 1
        ring-set-three = [triple rings] [Tressick 1954] of 1
        “annulated ring” SAFE: ring-annulated [Norrish 1971] in the vocabulary
        “triple ring” NOT_SAFE: ring-annulated [Quenby 1926] in the vocabulary,\
         ring-set-three [Tressick 1954] in the vocabulary
        agreement: ONE_CONCEPT, 2 works, 1 concepts, 2 words
        """);
  }

  @Test
  void reprintsAndRepeatsAreFoldedBeforeAgreementIsMeasured() {
    assertAnswer(
        new SmallLibrary()
            .work(
                withEditions(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition(
                        "quenby-1926",
                        1926,
                        says("knife ring", "ring-bladed").text("p. 41"),
                        says("annulated ring", "ring-annulated").text("p. 43")),
                    descended(
                        Form.REVISED,
                        "quenby-1926",
                        edition(
                            "quenby-1949",
                            1949,
                            says("bladed ring", "ring-bladed").photo("pl. 31"),
                            says("plain ring", "ring-plain").text("p. 70")))))
            .work(
                linked(
                    monograph(
                        "Tressick",
                        1954,
                        "Cut and Blown",
                        says("Bladed Rings", "ring-bladed").text("p. 88")),
                    link(Kind.REPEATS, "quenby-1926", "word for word")))
            .book(
                "Norrish",
                1971,
                "The Ringed Decanter",
                says("knife-rings", "ring-bladed").text("p. 9"),
                says("annulated neck ring", "ring-annulated").text("p. 10"),
                new NoteMaker()
                    .naming("plain rings", "ring-plain", Why.TEXT)
                    .naming("single ring", "ring-plain", Why.TEXT)
                    .text("p. 11"))
            .book(
                "Dunlavin",
                1990,
                "Glass of the Two Islands",
                new NoteMaker().naming("", "ring-bladed", Why.PICTURE).photo("fig. 40"))
            .book(
                "Haskeld",
                1983,
                "A Table-Glass Primer",
                says("bladed ring", "ring-bladed").absent("p. 12"),
                says("making the ring", "ring-plain").process("figs 5–7"))
            .work(
                own(
                    monograph(
                        "Ruddick",
                        2016,
                        "Rings at Lantern Street",
                        says("knife ring", "ring-bladed").photo("fig. 2")))),
        List.of("ring-bladed", "ring-annulated", "ring-plain", "ring-wavy"),
        """
        Quenby 1926 | ring-bladed: [knife ring] [p. 41] | ring-annulated: [annulated ring] [p. 43]
        Quenby 1949 + | ring-bladed: [bladed ring] pictured [pl. 31] |\
         ring-plain: [plain ring] [p. 70]
        Tressick 1954 + | ring-bladed: [Bladed Rings] [p. 88]
        Norrish 1971 | ring-bladed: [knife-rings] [p. 9] |\
         ring-annulated: [annulated neck ring] [p. 10] |\
         ring-plain: [plain rings] [p. 11]; [single ring] [p. 11]
        Dunlavin 1990 | ring-bladed: [] pictured [fig. 40]
        Quenby 1949 with quenby-1926
        Tressick 1954 with quenby-1926
        without: [ring-wavy]
        OWN_WORK: Ruddick 2016 [knife ring] pictured [fig. 2]
        SAYS_NOT_SHOWN: Haskeld 1983 [bladed ring] [p. 12]
        HOW_IT_IS_MADE: Haskeld 1983 [making the ring] pictured [figs 5–7]
        ring-bladed = [knife ring, knife-rings] [Quenby 1926, Norrish 1971] of 2
        ring-bladed = [Bladed Rings, bladed ring] [Quenby 1949, Tressick 1954] of 1
        ring-bladed not named by [Dunlavin 1990]
        ring-annulated = [annulated neck ring, annulated ring] [Quenby 1926, Norrish 1971] of 2
        ring-plain = [plain ring, plain rings] [Quenby 1949, Norrish 1971] of 2
        ring-plain also [single ring]
        “annulated ring” SAFE: ring-annulated [Quenby 1926, Norrish 1971] in the vocabulary
        “bladed ring” SAFE: ring-bladed [Quenby 1949, Tressick 1954] in the vocabulary
        “knife ring” SAFE: ring-bladed [Quenby 1926, Norrish 1971]
        “plain ring” SAFE: ring-plain [Quenby 1949, Norrish 1971] in the vocabulary
        “single ring” NOT_SAFE: ring-plain [Norrish 1971] in the vocabulary,\
         ring-milled [] in the vocabulary, ring-set-one [] in the vocabulary
        agreement: 1.0, 2 works, 3 concepts, 6 words
        """);
  }

  @Test
  void whatIsNarrowerStandsUnderTheNearestThatWasAskedAboutAndIsNotCounted() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                says("cut rings", "ring-cut").text("p. 45"),
                says("ringed", "neck-ring").text("p. 46"))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                says("faceted rings", "ring-facet-cut").text("p. 92")),
        List.of("ring-cut", "neck-ring"),
        """
        Quenby 1926 | ring-cut: [cut rings] [p. 45] | neck-ring: [ringed] [p. 46]
        Tressick 1954 | ring-cut: [faceted rings] [p. 92] narrower
        ring-cut = [cut rings] [Quenby 1926] of 1
        neck-ring = [ringed] [Quenby 1926] of 1
        “cut rings” NOT_SAFE: ring-cut [Quenby 1926] in the vocabulary,\
         ring-facet-cut [] in the vocabulary, ring-incised [] in the vocabulary
        “ringed” SAFE: neck-ring [Quenby 1926]
        agreement: ONE_WORK, 0 works, 0 concepts, 0 words
        """);
  }
}
