package merese.answer.fewest;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.fewest.FewestSources.Choice;
import merese.shelf.Shelf;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The trade's eighth scenario, whole (common practice, no source; authors and titles are invented),
 * each answer again with names, ids and order shuffled.
 */
class FewestScenarioTest {
  private static final String[] TOPICS = {
    "ring-bladed",
    "ring-annulated",
    "stopper-target",
    "body-prussian",
    "ring-step-cut",
    "pontil-ground"
  };

  @TempDir private Path folder;

  private static SmallLibrary library() {
    return new SmallLibrary()
        .book(
            "Quenby",
            1926,
            "Neck and Stopper",
            says("bladed ring", TOPICS[0]).photo("pl. XII"),
            says("annulated ring", TOPICS[1]).text("p. 43"),
            says("stepped ring", TOPICS[4]).photo("pl. XVI"))
        .book(
            "Tressick",
            1954,
            "Cut and Blown",
            says("target stopper", TOPICS[2]).photo("fig. 71"),
            says("Prussian body", TOPICS[3]).text("p. 99"),
            says("ground pontil", TOPICS[5]).photo("fig. 90"))
        .book(
            "Norrish",
            1971,
            "The Ringed Decanter",
            says("target stopper", TOPICS[2]).text("p. 36"),
            says("Prussian body", TOPICS[3]).photo("pl. 5"),
            says("ground pontil", TOPICS[5]).photo("pl. 20"))
        .book(
            "Haskeld",
            1983,
            "A Table-Glass Primer",
            says("bladed ring", TOPICS[0]).photo("fig. 18"),
            says("annulated ring", TOPICS[1]).photo("fig. 19"),
            says("target stopper", TOPICS[2]).photo("fig. 30"),
            says("Prussian body", TOPICS[3]).photo("fig. 33"))
        .book(
            "Dunlavin",
            1990,
            "Glass of the Two Islands",
            says("step-cut ring", TOPICS[4]).photo("fig. 47"),
            says("ground pontil", TOPICS[5]).absent("p. 120"));
  }

  private void assertAnswer(FewestQuestion question, String expected) {
    try (Shelf shelf = library().open(folder.resolve("as given"))) {
      assertEquals(expected, lines(Fewest.answer(shelf, question)));
    }
    for (int seed = 1; seed <= 3; seed++) {
      Shuffled shuffled = Shuffle.of(library().works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        assertEquals(expected, shuffled.restore(lines(Fewest.answer(shelf, question))));
      }
    }
  }

  private static String lines(FewestSources answer) {
    StringBuilder lines = new StringBuilder();
    answer.best().ifPresent(best -> lines.append(line(answer, best)));
    answer
        .ties()
        .forEach(
            tie ->
                lines
                    .append("tie: ")
                    .append(references(tie.sources()))
                    .append(", behind by ")
                    .append(tie.behind())
                    .append('\n'));
    answer
        .nowhere()
        .forEach(
            n ->
                lines
                    .append("nowhere: ")
                    .append(n.topic().id())
                    .append(", not shown by ")
                    .append(references(n.saysNotShown()))
                    .append('\n'));
    return lines.append("more ties: ").append(answer.moreTies()).append('\n').toString();
  }

  private static String line(FewestSources answer, Choice best) {
    return (answer.proof().fewest() && answer.proof().ranked() ? "proved " : "not proved ")
        + best.rank().sources()
        + ": "
        + references(best.sources().stream().map(FewestSources.Taken::source).toList())
        + "; in words only: "
        + best.inWordsOnly().stream().map(Heading::id).collect(Collectors.joining(", "))
        + "\n";
  }

  private static String references(List<SourceLine> sources) {
    return sources.stream().map(SourceLine::reference).collect(Collectors.joining(" + "));
  }

  @Test
  void twoCoverAllAndAnotherPairOnlyLosesOnYears() {
    assertAnswer(
        FewestQuestion.of(false, TOPICS),
        """
        proved 2: Quenby 1926 + Tressick 1954; in words only: ring-annulated, body-prussian
        tie: Quenby 1926 + Norrish 1971, behind by YEARS
        more ties: NONE
        """);
  }

  @Test
  void threePictureAllWithThreeAlternatives() {
    assertAnswer(
        FewestQuestion.of(true, TOPICS),
        """
        proved 3: Quenby 1926 + Tressick 1954 + Haskeld 1983; in words only:\s
        tie: Quenby 1926 + Norrish 1971 + Haskeld 1983, behind by YEARS
        tie: Tressick 1954 + Haskeld 1983 + Dunlavin 1990, behind by YEARS
        tie: Norrish 1971 + Haskeld 1983 + Dunlavin 1990, behind by YEARS
        more ties: NONE
        """);
  }

  @Test
  void whatOnlyOneSourceSaysIsNotShownIsNowhere() {
    try (Shelf shelf =
        new SmallLibrary()
            .book("Quenby", 1926, "Necks", says("bladed ring", TOPICS[0]).photo("pl. 1"))
            .book("Tulk", 1930, "Feet", says("ground pontil", TOPICS[5]).absent("p. 2"))
            .open(folder)) {
      FewestSources answer = Fewest.answer(shelf, FewestQuestion.of(false, TOPICS[0], TOPICS[5]));
      assertEquals(
          """
          proved 1: Quenby 1926; in words only:\s
          nowhere: pontil-ground, not shown by Tulk 1930
          more ties: NONE
          """,
          lines(answer));
    }
  }

  @Test
  void aSourceThatMustBeTakenIsAndOneThatMayNotIsNot() {
    try (Shelf shelf = library().open(folder)) {
      FewestQuestion question =
          new FewestQuestion(
              List.of(TOPICS),
              Optional.empty(),
              false,
              false,
              List.of("dunlavin-1990"),
              List.of("quenby-1926"),
              30);
      assertEquals(
          """
          proved 3: Tressick 1954 + Haskeld 1983 + Dunlavin 1990; in words only:\s
          tie: Norrish 1971 + Haskeld 1983 + Dunlavin 1990, behind by YEARS
          more ties: NONE
          """,
          lines(Fewest.answer(shelf, question)));
    }
  }
}
