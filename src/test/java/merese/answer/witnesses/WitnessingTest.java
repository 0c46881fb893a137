package merese.answer.witnesses;

import static merese.testing.SmallLibrary.descended;
import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.link;
import static merese.testing.SmallLibrary.linked;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import merese.answer.witnesses.Witnesses.Mention;
import merese.answer.witnesses.Witnesses.Section;
import merese.model.Edition.Lineage.Form;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.Work;
import merese.model.WorkLink.Kind;
import merese.shelf.Shelf;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole answers, again with names, ids and order shuffled; names and titles are invented. */
class WitnessingTest {
  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, String expected) {
    WitnessesQuestion question = new WitnessesQuestion(List.of("bladed ring"), Optional.empty());
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      assertEquals(expected, lines(Witnessing.answer(shelf, question)));
    }
    for (int seed = 1; seed <= 5; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        String answer = lines(Witnessing.answer(shelf, question));
        assertEquals(expected, shuffled.restore(answer), "seed " + seed);
      }
    }
  }

  private static String lines(Witnesses answer) {
    Section section = answer.sections().get(0);
    StringJoiner lines = new StringJoiner("\n", "", "\n");
    lines.add(section.independent() + " of " + section.sources());
    for (Witnesses.Witness witness : section.witnesses()) {
      lines.add(witness.first().source().reference());
      for (Witnesses.Folded folded : witness.folded()) {
        lines.add("+ " + folded.source().source().reference() + ": " + why(folded.why()));
      }
    }
    section
        .pictures()
        .forEach(
            p ->
                lines.add(
                    p.picture()
                        + ": "
                        + p.printings().stream()
                            .map(i -> i.source().reference() + " " + i.locator().get())
                            .collect(Collectors.joining("; "))));
    section.citations().forEach(m -> lines.add(mention("cites", m)));
    section.borrowings().forEach(m -> lines.add(mention("borrows", m)));
    section.ownWorks().forEach(e -> lines.add("own: " + e.source().reference()));
    return lines.toString();
  }

  private static String why(List<Dependence> steps) {
    return steps.stream()
        .map(s -> s.kind() + " " + s.reference() + s.evidence().map(e -> ", " + e).orElse(""))
        .collect(Collectors.joining("; "));
  }

  private static String mention(String verb, Mention mention) {
    return mention.by().reference()
        + " "
        + verb
        + " "
        + mention.of().reference()
        + mention.evidence().map(e -> ", " + e).orElse("");
  }

  private static NoteMaker blade(String page) {
    return says("bladed ring", "ring-bladed").text(page);
  }

  private static NoteMaker picture(String locator, String picture) {
    return says("bladed ring", "ring-bladed")
        .place(locator, Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, picture);
  }

  private static Work book(String family, int year, Object... notes) {
    return monograph(family, year, family + " on Glass", notes);
  }

  @Test
  void reprintsFacsimilesTwinsAndRepeatsAreNoWitnesses() {
    Work quenby =
        withEditions(
            book("Quenby", 1926),
            edition("quenby-1926", 1926, blade("p. 41")),
            descended(Form.REVISED, "quenby-1926", edition("quenby-1949", 1949, blade("p. 70"))),
            descended(Form.FACSIMILE, "quenby-1926", edition("quenby-1977", 1977, blade("p. 41"))));
    Work varnell =
        withEditions(
            book("Varnell", 1938),
            edition("varnell-1938", 1938, blade("p. 5")),
            descended(Form.TWIN, "varnell-1938", edition("varnell-1939", 1939, blade("p. 5"))),
            descended(Form.REPRINT, "varnell-1938", edition("varnell-1950", 1950, blade("p. 5"))));
    assertAnswer(
        new SmallLibrary()
            .work(quenby)
            .work(varnell)
            .work(
                linked(
                    book("Tressick", 1954, blade("p. 88")),
                    link(Kind.REPEATS, "quenby-1926", "word for word")))
            .work(
                linked(
                    book("Hoeck", 1961, blade("p. 57")),
                    link(Kind.TRANSLATES, "tressick-1954", "says so")))
            .work(
                linked(
                    book("Farrow", 1988, blade("p. 7")), link(Kind.CITES, "quenby-1926", "n. 4")))
            .work(
                own(
                    linked(
                        book("Ruddick", 2016, blade("p. 2")),
                        link(Kind.CITES, "quenby-1926", "n. 1"))))
            .book(
                "Haskeld",
                1983,
                "A Table-Glass Primer",
                says("bladed ring", "ring-bladed").absent("p. 12")),
        """
        3 of 9
        Quenby 1926
        + Quenby 1949: REVISED Quenby 1926
        + Tressick 1954: REPEATS Quenby 1926, word for word
        + Hoeck 1961: TRANSLATION Tressick 1954, says so; REPEATS Quenby 1926, word for word
        + Quenby 1977: FACSIMILE Quenby 1926
        Varnell 1938
        + Varnell 1939: TWIN Varnell 1938
        + Varnell 1950: REPRINT Varnell 1938
        Farrow 1988
        Farrow 1988 cites Quenby 1926, n. 4
        own: Ruddick 2016
        """);
  }

  @Test
  void twoWorksAreAsIndependentWhenAThirdRepeatsBoth() {
    assertAnswer(
        new SmallLibrary()
            .work(book("Quenby", 1926, blade("p. 41")))
            .work(book("Varnell", 1938, blade("p. 5")))
            .work(
                linked(
                    book("Tressick", 1954, blade("p. 88")),
                    link(Kind.REPEATS, "varnell-1938", "a"),
                    link(Kind.REPEATS, "quenby-1926", "b"))),
        """
        2 of 3
        Quenby 1926
        + Tressick 1954: REPEATS Quenby 1926, b
        Varnell 1938
        """);
  }

  @Test
  void twoWorksThatFollowAnAbsentOneAreOneWitness() {
    assertAnswer(
        new SmallLibrary()
            .work(book("Quenby", 1926))
            .work(
                linked(
                    book("Tressick", 1954, blade("p. 88")), link(Kind.REPEATS, "quenby-1926", "a")))
            .work(
                linked(
                    book("Norrish", 1971, blade("p. 3")),
                    link(Kind.SAME_WORK_ABROAD, "tressick-1954x", "b")))
            .work(
                linked(
                    book("Haskeld", 1983, blade("p. 9")), link(Kind.REPEATS, "quenby-1926", "c")))
            .work(monograph("Tressick", 1955, "Twin").withId("tressick-1954x")),
        """
        2 of 3
        Tressick 1954
        + Haskeld 1983: REPEATS Quenby 1926, c; SAME_ORIGIN Tressick 1954
        Norrish 1971
        """);
  }

  @Test
  void worksThatRepeatEachOtherAreOneWitnessUnderTheEarlier() {
    assertAnswer(
        new SmallLibrary()
            .work(
                linked(
                    book("Quenby", 1926, blade("p. 1")), link(Kind.REPEATS, "tressick-1954", "a")))
            .work(
                linked(
                    book("Tressick", 1954, blade("p. 2")), link(Kind.REPEATS, "quenby-1926", "b"))),
        """
        1 of 2
        Quenby 1926
        + Tressick 1954: REPEATS Quenby 1926, b
        """);
  }

  @Test
  void aSourceWithOnlyThePictureOfAnotherIsNoWitness() {
    assertAnswer(
        new SmallLibrary()
            .work(book("Quenby", 1926, picture("pl. XXIV", "quenby-a")))
            .work(book("Tressick", 1954, picture("fig. 61", "quenby-a")))
            .work(
                linked(
                    book("Norrish", 1971, picture("pl. 9", "quenby-a"), blade("p. 30")),
                    link(Kind.REUSES_PICTURE, "quenby-1926", "credited")))
            .work(book("Haskeld", 1983, picture("fig. 1", "quenby-a"), picture("fig. 2", "other"))),
        """
        3 of 4
        Quenby 1926
        + Tressick 1954: SAME_PICTURE Quenby 1926
        Norrish 1971
        Haskeld 1983
        quenby-a: Quenby 1926 pl. XXIV; Tressick 1954 fig. 61; Norrish 1971 pl. 9;\
         Haskeld 1983 fig. 1
        Norrish 1971 borrows Quenby 1926, credited
        """);
  }
}
