package merese.answer.pull;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.Script;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.OwnObject;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole answers on small libraries; all authors and titles are invented. */
class PullsTest {
  @TempDir private Path folder;

  private static Copy copy(String id, String mark) {
    return new Copy(
        id, Optional.empty(), Optional.of(mark), Optional.empty(), false, Optional.empty());
  }

  private static Copy lent(String id, String mark) {
    return new Copy(
        id, Optional.empty(), Optional.of(mark), Optional.of("Ann"), false, Optional.empty());
  }

  private static Copy missing(String id, String mark) {
    return new Copy(
        id, Optional.empty(), Optional.of(mark), Optional.empty(), true, Optional.empty());
  }

  private static Copy elsewhere(String id, String mark) {
    return new Copy(
        id,
        Optional.of("Town Library"),
        Optional.of(mark),
        Optional.empty(),
        false,
        Optional.empty());
  }

  private static Edition with(Edition edition, Copy... copies) {
    return new Edition(
        edition.key(),
        edition.imprint(),
        edition.lineage(),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope(),
        edition.parts(),
        List.of(copies),
        edition.notes(),
        edition.checks(),
        edition.received());
  }

  private static Work book(String family, int year, NoteMaker note, Copy... copies) {
    Work work = monograph(family, year, family + "'s Book", note);
    return work.withEditions(List.of(with(work.editions().get(0), copies)));
  }

  private static NoteMaker photo(String printed, String locator, String picture) {
    return says(printed, "ring-bladed")
        .place(locator, Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, picture);
  }

  private static String lines(Pull pull) {
    StringBuilder out = new StringBuilder();
    for (Item item : pull.inOrder()) {
      out.append(item.name())
          .append(" @ ")
          .append(item.stand().holder().map(h -> h + " ").orElse(""))
          .append(item.stand().mark().orElse("-"))
          .append(item.flag().map(f -> " ⚠ " + f).orElse(""))
          .append(item.remark().map(r -> " (" + r + ")").orElse(""))
          .append('\n');
      for (Opening opening : item.openings()) {
        out.append("  ").append(opening(opening)).append('\n');
      }
    }
    List<String> shelf = new ArrayList<>();
    for (Item item : pull.byShelf()) {
      List<String> slips = new ArrayList<>();
      item.openings().forEach(opening -> slips.addAll(opening.slips()));
      shelf.add(item.stand().mark().orElse("-") + " " + item.name() + " " + slips);
    }
    List<String> away = pull.notAtHand().stream().map(Item::name).toList();
    return out.append("shelf: ")
        .append(String.join("; ", shelf))
        .append("\nnot to be had: ")
        .append(String.join("; ", away))
        .append('\n')
        .toString();
  }

  private static String opening(Opening opening) {
    return opening.needs()
        + " "
        + opening.locator().map(Object::toString).orElse("whole")
        + (opening.pictured() ? " pictured" : "")
        + opening.pointAt().map(p -> " → " + p).orElse("")
        + opening.turn().map(t -> " ↻ " + t).orElse("")
        + opening.insteadOf().map(o -> " for " + o).orElse("")
        + opening
            .instead()
            .map(
                i ->
                    " instead "
                        + i.source().reference()
                        + " "
                        + i.locator().map(Object::toString).orElse("whole")
                        + (i.samePicture() ? " same picture " : " ")
                        + i.needs())
            .orElse("");
  }

  private String ofTerm(SmallLibrary library, String term) {
    PullQuestion question = new PullQuestion(List.of(term), Optional.empty(), Optional.empty());
    String expected;
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      expected = lines(Pulls.answer(shelf, question));
    }
    for (int seed = 1; seed <= 3; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        assertEquals(expected, shuffled.restore(lines(Pulls.answer(shelf, question))));
      }
    }
    return expected;
  }

  private String ofScript(SmallLibrary library, String script) {
    try (Shelf shelf = library.open(folder)) {
      Script read = Script.read(script, "talk.txt", shelf);
      return lines(
          Pulls.answer(shelf, new PullQuestion(List.of(), Optional.empty(), Optional.of(read))));
    }
  }

  @Nested
  class OfATerm {
    @Test
    void whatIsPicturedComesFirstAndADenialNever() {
      SmallLibrary library =
          new SmallLibrary()
              .work(
                  book("Quenby", 1926, says("knife", "ring-bladed").text("p. 41"), copy("a", "B2")))
              .work(
                  book(
                      "Haskeld",
                      1930,
                      says("none", "ring-bladed").absent("p. 12"),
                      copy("a", "A1")))
              .work(book("Tressick", 1954, photo("edge", "fig. 61", null), copy("a", "B10")));
      assertEquals(
          """
          Tressick 1954 @ B10
            [1] fig. 61 pictured
          Quenby 1926 @ B2
            [2] p. 41
          shelf: B2 Quenby 1926 [p. 41]; B10 Tressick 1954 [fig. 61]
          not to be had:\s
          """,
          ofTerm(library, "ring-bladed"));
    }

    @Test
    void anotherCopyOfTheUsersOwnIsTakenAndThatIsSaid() {
      SmallLibrary library =
          new SmallLibrary()
              .work(
                  book(
                      "Quenby",
                      1926,
                      photo("knife", "pl. 9", null),
                      lent("a", "A1"),
                      copy("b", "A2")));
      assertEquals(
          """
          Quenby 1926 @ A2 (another copy is lent to Ann)
            [1] pl. 9 pictured
          shelf: A2 Quenby 1926 [pl. 9]
          not to be had:\s
          """,
          ofTerm(library, "ring-bladed"));
    }

    @Test
    void anotherEditionWithThePictureGoesBeforeTheNextSource() {
      Work quenby = monograph("Quenby", 1926, "Neck");
      SmallLibrary library =
          new SmallLibrary()
              .work(
                  quenby.withEditions(
                      List.of(
                          with(
                              edition("quenby-1926", 1926, photo("knife", "pl. XII", "q")),
                              missing("a", "A1")),
                          with(
                              edition("quenby-1949", 1949, photo("knife", "pl. 31", "q")),
                              copy("a", "A1")))))
              .work(book("Imber", 1912, photo("edge", "fig. 6", null), copy("a", "B1")));
      assertEquals(
          """
          Imber 1912 @ B1
            [1] fig. 6 pictured
          Quenby 1926 @ A1 ⚠ missing
            [2] pl. XII pictured instead Quenby 1949 pl. 31 same picture [3]
          Quenby 1949 @ A1
            [3] pl. 31 pictured for Quenby 1926
          shelf: A1 Quenby 1949 [pl. 31]; B1 Imber 1912 [fig. 6]
          not to be had: Quenby 1926
          """,
          ofTerm(library, "ring-bladed"));
    }

    @Test
    void whatIsElsewhereIsFlaggedAndADenialIsNoSubstitute() {
      SmallLibrary library =
          new SmallLibrary()
              .work(book("Quenby", 1926, photo("knife", "pl. 9", null), elsewhere("a", "748")))
              .work(
                  book(
                      "Haskeld",
                      1930,
                      says("none", "ring-bladed").absent("p. 12"),
                      copy("a", "A1")));
      assertEquals(
          """
          Quenby 1926 @ Town Library 748 ⚠ at Town Library
            [1] pl. 9 pictured
          shelf: 748 Quenby 1926 [pl. 9]
          not to be had:\s
          """,
          ofTerm(library, "ring-bladed"));
    }
  }

  @Nested
  class OfAScript {
    private SmallLibrary library() {
      return new SmallLibrary()
          .work(
              book(
                  "Quenby",
                  1926,
                  photo("knife", "pl. XII, fig. 3 (top left)", null).text("p. 41"),
                  copy("a", "A2")))
          .work(book("Tressick", 1954, photo("edge", "fig. 61", null), lent("a", "A10")))
          .object(
              new OwnObject(
                  "d-1",
                  "Quart decanter",
                  Optional.empty(),
                  Optional.empty(),
                  Optional.of("A9, behind the jugs"),
                  List.of(),
                  List.of(
                      new OwnObject.Observation(
                          "lowest ring",
                          "edge",
                          Optional.empty(),
                          OwnObject.Observation.Sense.FELT,
                          true,
                          Optional.of("p1"))),
                  List.of(
                      new OwnObject.Photograph(
                          "p1", "a.jpg", Optional.of("side"), Optional.of("left side up")))));
    }

    @Test
    void aBookIsTakenOnceWithAllItsOpeningsAndPiecesStandAmongTheBooks() {
      assertEquals(
          """
          Quenby 1926 @ A2
            [1] pl. XII pictured → fig. 3 (top left) for Tressick 1954
            [4, 5] p. 41
          d-1 @ A9, behind the jugs
            [2] whole → lowest ring ↻ left side up
          Tressick 1954 @ A10 ⚠ lent to Ann
            [3] fig. 61 pictured instead Quenby 1926 pl. XII [1]
          shelf: A2 Quenby 1926 [p. 41, pl. XII]; A9, behind the jugs d-1 []
          not to be had: Tressick 1954
          """,
          ofScript(
              library(),
              """
              [quenby-1926 pl. XII] [object d-1 photo p1] [tressick-1954 fig. 61]
              [quenby-1926 p. 41] and again [quenby-1926 p. 41]
              """));
    }

    @Test
    void aPlaceWithoutANoteHasNoSubstitute() {
      assertEquals(
          """
          Tressick 1954 @ A10 ⚠ lent to Ann
            [1] fig. 99
          shelf:\s
          not to be had: Tressick 1954
          """,
          ofScript(library(), "[tressick-1954 fig. 99]"));
    }
  }

  @Test
  void aQuestionHasEitherTermsOrAScript() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PullQuestion(List.of(), Optional.empty(), Optional.empty()));
  }
}
