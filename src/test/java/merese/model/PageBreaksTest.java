package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Place.Medium;
import merese.model.Place.Stance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Breaks as in "41|42": domain, A 15. Square brackets around what the source does not print are
 * common practice (no source); the doubled bar is ours.
 */
class PageBreaksTest {
  private static PageBreaks of(String quotation, String... places) {
    List<Place> all = new ArrayList<>();
    for (String place : places) {
      boolean photo = place.startsWith("photo ");
      all.add(
          new Place(
              Locator.parse(photo ? place.substring(6) : place),
              photo ? Stance.PICTURES : Stance.NAMES,
              photo ? Medium.PHOTO : Medium.TEXT,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
    }
    return PageBreaks.of(
        new Note(
            "n1",
            List.of(new Naming("ring", Optional.empty(), Optional.empty())),
            all,
            List.of(),
            Optional.of(quotation),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "re|vival; pp. 41–42; re[41|42]vival",
        "one | two | three; pp. 9–11; one [9|10] two [10|11] three",
        "a ring | and; pp. vi–vii; a ring [vi|vii] and",
        "a ring | and; pp. 214–15; a ring [214|215] and",
        "a ring | and; pp. 41, 43; a ring [41|43] and",
        "a ring | and; fols 12r–12v; a ring [12r|12v] and",
        "a ring | and; vol. II, pp. 3–4; a ring [3|4] and",
        "a ring | and; pp. [97]–[98]; a ring [[97]|[98]] and",
        "a || b; p. 41; a | b",
        "a || b | c; pp. 41–42; a | b [41|42] c",
        "a|||b; pp. 41–42; a|[41|42]b",
        "antient [sic] … glafs; p. 41; antient [sic] … glafs",
      })
  void aBreakHasThePagesThatThePlaceNames(String noted, String place, String shown) {
    PageBreaks breaks = of(noted, place);
    assertEquals(shown, breaks.marked());
    assertEquals(Optional.empty(), breaks.doubt());
  }

  @Test
  void aNumberIsNeverMadeUp() {
    PageBreaks breaks = of("one | two | three", "pp. 41–42");
    assertEquals("one [|] two [|] three", breaks.marked());
    assertEquals(List.of(), breaks.numbers());
    assertEquals(
        "2 page breaks are marked, and no place in words names 3 pages",
        breaks.doubt().orElseThrow());
    assertEquals(
        "a page break is marked, and no place in words names 2 pages",
        of("one | two", "p. 41").doubt().orElseThrow());
    assertEquals("one [|] two", of("one | two", "photo pp. 41–42").marked());
    assertEquals("one [|] two", of("one | two", "pls 41–42").marked());
  }

  @Test
  void ofTwoPlacesThatFitNoneIsGuessed() {
    assertEquals(
        "a page break is marked, and several places could be those pages",
        of("one | two", "pp. 41–42", "pp. 60–61").doubt().orElseThrow());
    assertEquals("one [41|42] two", of("one | two", "pp. 41–42", "p. 60").marked());
  }

  @Test
  void aRangeWithoutABreakLeavesItOpen() {
    assertEquals(
        "if it runs over a page, where that ends is not marked",
        of("a ring", "pp. 41–42").doubt().orElseThrow());
    assertEquals(Optional.empty(), of("a ring", "pp. 41–42", "p. 60").doubt());
    assertEquals(Optional.empty(), of("a ring", "lot 88").doubt());
  }

  @Test
  void aWordOverTwoPagesIsOneWord() {
    assertEquals(
        "They called it revival glass", QuotedText.of("They called it re|vival glass").words());
    assertEquals("a | b", QuotedText.of("a || b").words());
  }
}
