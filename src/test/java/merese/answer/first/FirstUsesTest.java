package merese.answer.first;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import merese.answer.first.FirstUse.Meaning;
import merese.answer.first.FirstUse.Term;
import merese.answer.first.FirstUse.Use;
import merese.answer.first.FirstUse.Uses;
import merese.model.Edition;
import merese.model.Edition.Lineage.Form;
import merese.model.Mine;
import merese.shelf.Shelf;
import merese.testing.FourEditions;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first use of words (common practice, no source; all names are invented). */
class FirstUsesTest {
  @TempDir private Path folder;

  private void assertFirst(SmallLibrary library, String term, String expected) {
    Shuffles.assertAnswer(folder, library, term, expected, FirstUsesTest::ask);
  }

  @Test
  void theEditionThatPrintsItCountsNotTheFirstThatSaysSomethingElse() {
    assertFirst(
        FourEditions.library(),
        "bladed ring",
        """
        ring-bladed
        first 1949: Quenby 1949, “bladed ring” p. 70
        before 1926: Quenby 1926, “sharp ring” p. 61
        later 1954: Tressick 1954, “bladed ring” p. 88
        """);
  }

  @Test
  void aFacsimileThatRepeatsItsOriginalDatesNothing() {
    Edition facsimile =
        FourEditions.descended(
            edition("quenby-1977", 1977, says("sharp ring", "ring-bladed").text("p. 61")),
            Form.FACSIMILE,
            "quenby-1926",
            List.of());
    assertFirst(
        new SmallLibrary()
            .work(
                FourEditions.with(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition("quenby-1926", 1926, says("sharp ring", "ring-bladed").text("p. 61")),
                    facsimile)),
        "sharp ring",
        """
        ring-bladed
        first 1926: Quenby 1926, “sharp ring” p. 61
        repeats 1926: Quenby 1926, facs. 1977, “sharp ring” p. 61 (repeats Quenby 1926)
        """);
  }

  @Test
  void aReprintWhoseOriginalIsNotHereGivesItsYearAndSaysSo() {
    Edition reprint =
        FourEditions.descended(
            edition("quenby-1977", 1977, says("sharp ring", "ring-bladed").text("p. 61")),
            Form.REPRINT,
            null,
            List.of());
    assertFirst(
        new SmallLibrary()
            .work(FourEditions.with(monograph("Quenby", 1926, "Neck and Stopper"), reprint))
            .book(
                "Tressick", 1954, "Cut and Blown", says("sharp rings", "ring-bladed").text("p. 8")),
        "sharp ring",
        """
        ring-bladed
        first 1926: Quenby 1926, repr. 1977, “sharp ring” p. 61\
         (by the reprint (the original is not in this library))
        later 1954: Tressick 1954, “sharp rings” p. 8
        """);
  }

  @Test
  void whatAReprintMayHaveAddedIsNotGivenToItsOriginal() {
    Edition facsimile =
        edition("quenby-1977", 1977, says("sharp ring", "ring-bladed").text("p. x"))
            .withLineage(
                new Edition.Lineage(
                    Form.FACSIMILE,
                    Optional.of("quenby-1926"),
                    OptionalInt.of(1926),
                    Optional.of("an introduction"),
                    List.of()));
    assertFirst(
        new SmallLibrary()
            .work(
                FourEditions.with(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition("quenby-1926", 1926),
                    facsimile))
            .book(
                "Tressick", 1954, "Cut and Blown", says("sharp rings", "ring-bladed").text("p. 8")),
        "sharp ring",
        """
        ring-bladed
        first 1954: Tressick 1954, “sharp rings” p. 8
        unsettled 1926: Quenby 1926, facs. 1977, “sharp ring” p. x (by the facsimile\
         (Quenby 1926 has no note of it), unless it is in what was added: an introduction)
        """);
  }

  @Test
  void aWordOfSeveralMeaningsHasAFirstUseInEach() {
    assertFirst(
        new SmallLibrary()
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                says("triple rings", "ring-set-three").text("p. 90"))
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                says("triple ring", "ring-annulated").text("p. 43"))
            .book("Farrow", 1988, "Journal", prints("a triple-ringed quart").text("p. 7"))
            .book("Haskeld", 1983, "Primer", says("triple ring", "ring-annulated").absent("p. 12")),
        "triple ring",
        """
        ring-annulated
        first 1926: Quenby 1926, “triple ring” p. 43
        denied 1983: Haskeld 1983, “triple ring” p. 12
        ring-set-three
        first 1954: Tressick 1954, “triple rings” p. 90
        not stated
        first 1988: Farrow 1988, “a triple-ringed quart” p. 7
        """);
  }

  @Test
  void aWordOfTheUsersOwnIsNoUseInPrint() {
    assertFirst(
        new SmallLibrary()
            .mine(
                new Mine(
                    List.of(),
                    List.of(
                        new Mine.Coinage(
                            "spiral neck trail",
                            "ring-spiral-trail",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())),
                    List.of(),
                    List.of(
                        new Mine.Untraced(
                            "spiral neck trails", Optional.empty(), Optional.empty()))))
            .book("Tressick", 1954, "Cut and Blown"),
        "spiral neck trail",
        """
        in the vocabulary ring-spiral-trail
        my term spiral neck trail
        met spiral neck trails
        """);
  }

  private static String ask(Shelf shelf, String term) {
    Term answer = FirstUses.answer(shelf, new FirstQuestion(List.of(term))).terms().get(0);
    StringBuilder text = new StringBuilder();
    for (Meaning meaning : answer.meanings()) {
      text.append(meaning.concept().id()).append('\n');
      uses(text, meaning.uses(), meaning.before());
    }
    if (answer.meaningNotStated().isPresent()) {
      text.append("not stated\n");
      uses(text, answer.meaningNotStated().get(), List.of());
    }
    if (answer.meanings().isEmpty()) {
      answer.inVocabulary().forEach(c -> text.append("in the vocabulary " + c.id() + "\n"));
    }
    answer.mine().forEach(c -> text.append("my term " + c.label() + "\n"));
    answer.met().forEach(m -> text.append("met " + m.word() + "\n"));
    return text.toString();
  }

  private static void uses(StringBuilder text, Uses uses, List<Use> before) {
    add(text, "first", uses.earliest());
    add(text, "before", before);
    add(text, "later", uses.later());
    add(text, "unsettled", uses.unsettled());
    add(text, "undated", uses.undated());
    add(text, "repeats", uses.repeats());
    add(text, "denied", uses.onlyDenied());
    add(text, "own", uses.ownWork());
  }

  private static void add(StringBuilder text, String group, List<Use> uses) {
    for (Use use : uses) {
      text.append(group)
          .append(use.year().isPresent() ? " " + use.year().getAsInt() : "")
          .append(": ")
          .append(use.source().reference())
          .append(", ")
          .append(
              use.terms().stream()
                  .map(
                      t ->
                          "“"
                              + t.term()
                              + "” "
                              + t.locators().stream()
                                  .map(Object::toString)
                                  .collect(Collectors.joining("; ")))
                  .collect(Collectors.joining(", ")))
          .append(use.remark().map(r -> " (" + r + ")").orElse(""))
          .append('\n');
    }
  }
}
