package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How leaves are numbered and sided: common practice, no source. */
class TurningPagesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      textBlock =
          """
          p. 41 > p. 42
          pl. XII > pl. XIII
          plate viii > plate ix
          pl. XII, fig. 3 > pl. XIII
          p. iv > p. v
          fol. 12r > fol. 12v
          fol. 12v > fol. 13r
          p. [3] > p. [4]
          vol. II, p. 9, n. 3 > vol. II, p. 10
          no. 48, p. [3] > no. 48, p. [4]
          cat. no. 79.1.244 > cat. no. 79.1.245
          fig. 9 (top left) > fig. 10
          lot 12a > lot 13
          pp. 41–43 > p. 44
          facing p. 40 > p. 41
          colour pl. B > colour pl. C
          pl. A9 > pl. A10
          plate 1:16 > plate 2
          """)
  void theNextIsCountedInTheNumeralThatIsPrinted(String from, String to) {
    assertEquals(to, Locator.parse(from).stepped(1).orElseThrow().printed());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      textBlock =
          """
          p. 42 > p. 41
          pl. IX > pl. VIII
          fol. 13r > fol. 12v
          pp. 41–43 > p. 40
          facing p. 40 > p. 40
          """)
  void soIsTheOneBefore(String from, String to) {
    assertEquals(to, Locator.parse(from).stepped(-1).orElseThrow().printed());
  }

  @Test
  void severalAreTurnedAtOnce() {
    assertEquals("p. 46", Locator.parse("p. 41").stepped(5).orElseThrow().printed());
    assertEquals("fol. 3r", Locator.parse("fol. 1v").stepped(3).orElseThrow().printed());
  }

  @Test
  void whatCannotBeCountedHasNoNeighbours() {
    for (String text : List.of("frontispiece", "12:30", "back endpaper")) {
      assertEquals(Optional.empty(), Locator.parse(text).stepped(1), text);
    }
    for (String text : List.of("p. 1", "pl. I", "p. i", "colour pl. A", "facing p. 1")) {
      Optional<Locator> before = Locator.parse(text).stepped(-1);
      assertEquals(text.startsWith("facing") ? "p. 1" : "", text(before), text);
    }
    assertEquals("", text(Locator.parse("colour pl. Z").stepped(1)));
    assertEquals("", text(Locator.parse("pl. MMMMCMXCIX").stepped(1)));
  }

  private static String text(Optional<Locator> locator) {
    return locator.map(Locator::printed).orElse("");
  }

  @Test
  void whatIsPartlyOnAPageIsNotedOfIt() {
    Locator page = Locator.parse("p. 41");
    assertTrue(Locator.parse("p. 41, n. 3").isPartlyIn(page));
    assertTrue(Locator.parse("pp. 40–42").isPartlyIn(page));
    assertTrue(Locator.parse("pl. IX and p. 41").isPartlyIn(page));
    assertFalse(Locator.parse("p. 410").isPartlyIn(page));
    assertFalse(Locator.parse("facing p. 41").isPartlyIn(page));
  }

  @Test
  void anExtentIsFromTheFirstToTheLastOfEachKindAndNumeral() {
    assertEquals("pp. 38–60", spanning("p. 41", "p. 60", "p. 38"));
    assertEquals(
        "pp. iv–xii; pp. 1–3; pls IX–XII",
        spanning("p. 3", "p. iv", "p. 1", "p. xii", "pl. XII", "pl. IX"));
    assertEquals("p. 7", spanning("p. 7", "p. 7"));
    assertEquals(
        "vol. I, pp. 5–9; vol. II, p. 5",
        spanning("vol. I, p. 5", "vol. II, p. 5", "vol. I, p. 9"));
    assertEquals("fols 2v–12r", spanning("fol. 12r", "fol. 2v"));
    assertEquals("frontispiece; p. 2", spanning("p. 2", "frontispiece"));
  }

  private static String spanning(String... pages) {
    return Locator.spanning(Stream.of(pages).map(Locator::parse).toList()).printed();
  }

  @Test
  void whatIsSpannedHoldsEveryPage() {
    List<Locator> pages =
        Stream.of("p. 3", "p. iv", "pl. XII", "pl. IX", "fig. 9", "fol. 3r", "p. [9]")
            .map(Locator::parse)
            .toList();
    Locator extent = Locator.spanning(pages);
    for (Locator page : pages) {
      assertTrue(page.isWithin(extent), page + " in " + extent);
    }
  }
}
