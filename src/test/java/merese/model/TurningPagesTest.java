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
  void whatIsPartlyOnAPageIsFoundByItsKeys() {
    for (String page : List.of("p. 41", "pl. XII", "vol. II, p. 41", "frontispiece", "fol. 12r")) {
      for (String place :
          List.of(
              "p. 41 (above)",
              "pp. 40–42",
              "p. 41, n. 3",
              "pl. XII, fig. 3 (left)",
              "pl. IX and p. 41",
              "vol. II, p. 41",
              "frontispiece",
              "fol. 12r")) {
        Locator of = Locator.parse(page);
        Locator at = Locator.parse(place);
        if (at.isPartlyIn(of)) {
          assertTrue(at.keysAround().containsAll(of.keys()), place + " on " + page);
        }
      }
    }
    assertFalse(Locator.parse("p. 410").keysAround().containsAll(Locator.parse("p. 41").keys()));
  }

  @Test
  void pagesAreListedForEachKindAndNumeralWithNoneBetween() {
    assertEquals("pp. 3–4, 12, 20", listed("p. 12", "p. 4", "p. 20", "p. 3"));
    assertEquals("pp. 38–40", listed("p. 39", "p. 40", "p. 38"));
    assertEquals(
        "pp. iv, xii; pp. 1, 3; pls IX–X",
        listed("p. 3", "p. iv", "p. 1", "p. xii", "pl. X", "pl. IX"));
    assertEquals("p. 7", listed("p. 7", "p. 7"));
    assertEquals("pp. 41, 41a, 42", listed("p. 41", "p. 41a", "p. 42"));
    assertEquals(
        "vol. I, pp. 5, 9; vol. II, p. 5", listed("vol. I, p. 5", "vol. II, p. 5", "vol. I, p. 9"));
    assertEquals("fols 2v–3v, 12r", listed("fol. 12r", "fol. 2v", "fol. 3r", "fol. 3v"));
    assertEquals("frontispiece; p. 2", listed("p. 2", "frontispiece"));
  }

  private static String listed(String... pages) {
    Locator listed = Locator.ofPages(Stream.of(pages).map(Locator::parse).toList());
    assertEquals(Stream.of(pages).distinct().count(), listed.count(), listed.printed());
    return listed.printed();
  }

  @Test
  void whatIsListedHoldsEveryPage() {
    List<Locator> pages =
        Stream.of("p. 3", "p. iv", "pl. XII", "pl. IX", "fig. 9", "fol. 3r", "p. [9]")
            .map(Locator::parse)
            .toList();
    Locator extent = Locator.ofPages(pages);
    for (Locator page : pages) {
      assertTrue(page.isWithin(extent), page + " in " + extent);
    }
  }
}
