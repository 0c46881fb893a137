package merese.answer.gaps;

import static merese.testing.SmallLibrary.check;
import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.gaps.GapList.Gap;
import merese.answer.gaps.GapList.State;
import merese.model.Check;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.shelf.Shelf;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What nobody has found (common practice, no source; all names are invented). */
class GapsTest {
  @TempDir private Path folder;

  /** A two-turn spiral on a neck, which no book is known to name. */
  private static SmallLibrary spiral(Object... ofTressick) {
    return new SmallLibrary()
        .book(
            "Quenby",
            1926,
            "Neck and Stopper",
            check("ring-spiral-trail", "pp. 38–60", Check.Method.READ))
        .book(
            "Haskeld",
            1983,
            "A Table-Glass Primer",
            check("ring-spiral-trail", null, Check.Method.INDEX_ONLY))
        .book("Tressick", 1954, "Cut and Blown", ofTressick)
        .object(
            new OwnObject(
                "D-17",
                "Bottle",
                Optional.empty(),
                Optional.empty(),
                List.of(
                    new OwnObject.Evidence(
                        "ring-spiral-trail",
                        OwnObject.Evidence.Kind.EXAMPLE,
                        Optional.of("two-turn thread, open ends"),
                        Optional.of("3"))),
                List.of(),
                List.of(new OwnObject.Photograph("3", "objects/d-17/03.jpg", Optional.empty()))))
        .mine(
            new Mine(
                List.of(),
                List.of(
                    new Mine.Coinage(
                        "spiral neck trail",
                        "ring-spiral-trail",
                        Optional.empty(),
                        Optional.of(LocalDate.of(2016, 9, 1)),
                        Optional.empty())),
                List.of(),
                List.of()));
  }

  @Test
  void whatNoBookNamesIsSaidWithWhereItWasLookedFor() {
    Shuffles.assertAnswer(
        folder,
        spiral(),
        "ring-spiral-trail",
        """
        NOTHING
        No note in this library names or pictures it.
        Checked: Quenby 1926, pp. 38–60 (read); Haskeld 1983 (index only).
        Not checked: Tressick 1954.
        “spiral neck trail” (my term), evidence D-17, photo 3
        piece D-17
        """,
        GapsTest::ask);
  }

  @Test
  void aNoteThatIsAssignedLaterIsTheAnswerAndTheLabelStaysAsAVariant() {
    Shuffles.assertAnswer(
        folder,
        spiral(says("thread rings", "ring-spiral-trail").text("p. 99")),
        "ring-spiral-trail",
        """
        NAMED_ONLY
        Named in Tressick 1954, p. 99 (“thread rings”). No note in this library pictures it.
        Checked: Quenby 1926, pp. 38–60 (read); Haskeld 1983 (index only).
        “spiral neck trail” (my term), a variant of mine since 2016-09-01, evidence D-17, photo 3
        piece D-17
        """,
        GapsTest::ask);
  }

  @Test
  void aNoteThatIsNotAssignedLeavesTheGap() {
    Shuffles.assertAnswer(
        folder,
        spiral(prints("thread rings").text("p. 99")),
        "ring-spiral-trail",
        """
        NOTHING
        No note in this library names or pictures it.
        Checked: Quenby 1926, pp. 38–60 (read); Haskeld 1983 (index only).
        Not checked: Tressick 1954.
        “spiral neck trail” (my term), evidence D-17, photo 3
        piece D-17
        """,
        GapsTest::ask);
  }

  @Test
  void aSourceThatOnlySaysNotShownNamesNothing() {
    try (Shelf shelf = spiral(says("spiral", "ring-spiral-trail").absent("p. 12")).open(folder)) {
      Gap gap = gap(shelf, "ring-spiral-trail");
      assertEquals(State.NOTHING, gap.state());
      assertEquals(List.of(), gap.uses());
      assertEquals("Tressick 1954", gap.saysNotShown().get(0).source().reference());
      assertEquals(List.of(), gap.notChecked());
    }
  }

  @Test
  void eachKindOfGapStandsApart() {
    SmallLibrary library =
        new SmallLibrary()
            .book("A", 1901, "One", check("ring-bladed", "pp. 1–9", Check.Method.LEAFED))
            .book("B", 1902, "Two", result(Check.Result.FOUND))
            .book("C", 1903, "Three", result(Check.Result.NOT_IN_LIST))
            .book("D", 1904, "Four", result(Check.Result.NO_LIST))
            .book("E", 1905, "Five", check("neck-ring", null, Check.Method.INDEX_ONLY))
            .book("H", 1905, "Eight", check("neck-ring", "pp. 1–9", Check.Method.WORD_SEARCH))
            .book("F", 1906, "Six", says("ringed neck", "neck-ring").text("p. 1"))
            .book("G", 1907, "Seven", says("bladed ring", "ring-bladed").process("fig. 1"));
    try (Shelf shelf = library.open(folder)) {
      Gap gap = gap(shelf, "bladed ring");
      assertEquals(
          List.of(
              "No note in this library names or pictures it.",
              "Checked: A 1901, pp. 1–9 (leafed); C 1903 (read; not in its list);"
                  + " D 1904 (read; has no list); E 1905 (index only); H 1905, pp. 1–9 (only a word"
                  + " search in its page text, which misses misread words).",
              "Found, not yet noted: B 1902.",
              "Not checked: F 1906."),
          gap.wording());
    }
  }

  @Test
  void whatIsLeftToDoIsInShelfOrder() {
    List<String> found = new ArrayList<>();
    try (Shelf shelf = spiral().open(folder)) {
      Gaps.answer(shelf, new GapsQuestion(List.of("spiral neck trail"), true))
          .tasks()
          .forEach(
              t ->
                  found.add(
                      t.shelfMark().orElse("")
                          + " "
                          + t.source().reference()
                          + " "
                          + t.notChecked().size()
                          + " "
                          + t.indexOnly().size()));
    }
    assertEquals(List.of("A1 Tressick 1954 1 0", "A1 Haskeld 1983 0 1"), found);
  }

  private static Check result(Check.Result result) {
    return new Check(
        "ring-bladed",
        Optional.empty(),
        Check.Method.READ,
        result,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Gap gap(Shelf shelf, String term) {
    return Gaps.answer(shelf, new GapsQuestion(List.of(term), false)).gaps().get(0);
  }

  private static String ask(Shelf shelf, String term) {
    Gap gap = gap(shelf, term);
    StringBuilder text = new StringBuilder(gap.state() + "\n");
    gap.wording().forEach(w -> text.append(w).append('\n'));
    gap.myWording().forEach(w -> text.append(w).append('\n'));
    gap.pieces().forEach(p -> text.append("piece " + p.ref() + "\n"));
    return text.toString();
  }
}
