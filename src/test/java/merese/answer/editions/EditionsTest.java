package merese.answer.editions;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.answer.editions.EditionGrid.Cell;
import merese.answer.editions.EditionGrid.CiteLine;
import merese.answer.editions.EditionGrid.Picture;
import merese.model.Copy;
import merese.model.Edition.Lineage.Form;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.testing.FourEditions;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Editions and their plates (common practice, no source; all names are invented). */
class EditionsTest {
  @TempDir private Path folder;

  private static final String PICTURE =
      """
      photograph
      quenby-1926: FIRST pl. XXIV “sharp ring”
      quenby-1949: RENUMBERED pl. 31 “bladed ring”
      quenby-1968: DROPPED; fig. 112 is a different object
      quenby-1977: KEPT pl. XXIV “sharp ring” as 1926
      pl. XXIV (1926, facs. 1977) = pl. 31 (1949); not 1968
      cite Quenby 1949, pl. 31
      cite Quenby 1926, facs. 1977, pl. XXIV
      not mine Quenby 1926, pl. XXIV
      """;

  @Test
  void eachEditionHasThePhotographUnderItsNumberOrNot() {
    Shuffles.assertAnswer(
        folder,
        FourEditions.library(),
        "quenby-1949",
        PICTURE,
        (shelf, key) -> lines(Editions.answer(shelf, EditionsQuestion.of(key))));
  }

  @Test
  void aCitationOfAnEditionThatOneLacksIsFoundInTheOthers() {
    Shuffles.assertAnswer(
        folder,
        FourEditions.library(),
        "quenby-1926",
        "[photograph] []",
        (shelf, key) -> from(shelf, key, "pl. XXIV"));
  }

  @Test
  void anotherObjectIsNoEquivalent() {
    Shuffles.assertAnswer(
        folder,
        FourEditions.library(),
        "quenby-1968",
        "[] [photograph]",
        (shelf, key) -> from(shelf, key, "fig. 112"));
  }

  @Test
  void aPlateThatNobodyHasNotedHasNoEquivalent() {
    Shuffles.assertAnswer(
        folder,
        FourEditions.library(),
        "quenby-1949",
        "[] []",
        (shelf, key) -> from(shelf, key, "pl. XXIV"));
  }

  @Test
  void aCopyThatIsLentIsNotOfferedAsOneToCite() {
    Copy lent =
        new Copy(
            "c1",
            Optional.empty(),
            Optional.of("A1"),
            Optional.of("a friend"),
            false,
            Optional.empty());
    SmallLibrary library =
        new SmallLibrary()
            .work(
                FourEditions.with(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    FourEditions.withCopies(
                        edition(
                            "quenby-1926",
                            1926,
                            says("ring", "neck-ring")
                                .place(
                                    "pl. 1",
                                    merese.model.Place.Stance.PICTURES,
                                    merese.model.Place.Medium.PHOTO,
                                    null,
                                    null,
                                    null,
                                    "a")),
                        List.of(lent)),
                    FourEditions.descended(
                        edition("quenby-1930", 1930), Form.REVISED, "quenby-1926", List.of())));
    try (Shelf shelf = library.open(folder)) {
      EditionGrid answer = Editions.answer(shelf, EditionsQuestion.of("neck and stopper"));
      assertEquals(
          """
          a
          quenby-1926: FIRST pl. 1 “ring”
          quenby-1930: NOT_RECORDED
          pl. 1 (1926); not 1930
          away Quenby 1926, pl. 1 [lent to a friend]
          """,
          lines(answer),
          "nothing is supposed of a revised edition without a plate list");
    }
  }

  @Test
  void wordsThatFitNoWorkOrSeveralAreRefused() {
    SmallLibrary library =
        FourEditions.library()
            .book("Quenby", 1931, "Stems and Stoppers", says("a", "trail").text("p. 1"));
    try (Shelf shelf = library.open(folder)) {
      assertEquals(
          "quenby-1926", Editions.answer(shelf, EditionsQuestion.of("Quenby neck")).work());
      String several =
          assertThrows(
                  WorkException.class, () -> Editions.answer(shelf, EditionsQuestion.of("quenby")))
              .getMessage();
      assertTrue(several.contains("quenby-1926, quenby-1931"), several);
      assertThrows(
          WorkException.class, () -> Editions.answer(shelf, EditionsQuestion.of("nobody")));
    }
  }

  private static String from(Shelf shelf, String edition, String place) {
    EditionGrid.From from =
        Editions.answer(
                shelf,
                new EditionsQuestion(
                    edition, Optional.of(Locator.parse(place)), Optional.of(edition)))
            .from()
            .orElseThrow();
    return from.pictures() + " " + from.otherObjects();
  }

  private static String lines(EditionGrid answer) {
    StringBuilder text = new StringBuilder();
    for (Picture picture : answer.pictures()) {
      text.append(picture.id()).append('\n');
      for (Cell cell : picture.cells()) {
        text.append(cell.edition()).append(": ").append(cell.state());
        cell.locators().forEach(l -> text.append(' ').append(l));
        cell.printed().forEach(p -> text.append(" “").append(p).append('”'));
        cell.as().ifPresent(a -> text.append(" as ").append(a));
        cell.others()
            .forEach(o -> text.append("; ").append(o.locator()).append(" is a different object"));
        text.append('\n');
      }
      text.append(
          picture.concordance().stream()
              .map(s -> joined(s.locators()) + " (" + String.join(", ", s.years()) + ")")
              .collect(Collectors.joining(" = ")));
      text.append("; not ").append(String.join(", ", picture.withoutIt())).append('\n');
      picture.cite().forEach(c -> text.append("cite ").append(cited(c)));
      picture.away().forEach(c -> text.append("away ").append(cited(c)));
      picture.elsewhere().forEach(c -> text.append("not mine ").append(cited(c)));
    }
    return text.toString();
  }

  private static String cited(CiteLine line) {
    return line.reference()
        + ", "
        + joined(line.locators())
        + line.whereabouts().map(w -> " [" + w + "]").orElse("")
        + "\n";
  }

  private static String joined(List<Locator> locators) {
    return locators.stream().map(Locator::toString).collect(Collectors.joining("; "));
  }
}
