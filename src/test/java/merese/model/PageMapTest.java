package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageMapTest {
  private static String cited(String map, int... filePages) {
    PageMap read = PageMap.parse(map);
    List<String> cited = new ArrayList<>();
    for (int page : filePages) {
      cited.add(read.cited(page));
    }
    return String.join("; ", cited);
  }

  @Nested
  class Reading {
    @Test
    void aNumberInBracketsWasSupplied() {
      assertEquals("p. [1]; file page 8", cited("7 = p. [1]", 7, 8));
    }

    @Test
    void numbersAloneArePages() {
      assertEquals("p. 1; p. 2; p. 48", cited("15–62 = 1–48", 15, 16, 62));
      assertEquals("p. iii; p. iv; p. xii", cited("3-12 = iii-xii", 3, 4, 12));
      assertEquals("p. [1]; p. [2]", cited("3-4 = [1]-[2]", 3, 4));
      assertEquals("p. [1]; p. [2]", cited("3-4 = [1-2]", 3, 4));
    }

    @Test
    void platesAreCountedInTheirOwnNumerals() {
      assertEquals("pl. I; pl. IV; pl. XXIV", cited("63–86 = pl. I–XXIV", 63, 66, 86));
      assertEquals("pl. 1; pl. 12", cited("plates after 62", 63, 74));
      assertEquals("pl. I; pl. XII", cited("plates I after 62", 63, 74));
      assertEquals("file page 62; pl. 30", cited("Plates 30 after file page 62", 62, 63));
    }

    @Test
    void aLeafHasTwoSides() {
      assertEquals(
          "fol. 12r; fol. 12v; fol. 13r; fol. 24v", cited("1–26 = fol. 12r–24v", 1, 2, 3, 26));
    }

    @Test
    void aVolumeIsNamedOnEachPage() {
      assertEquals("vol. II, p. 1; vol. II, p. 40", cited("9–48 = vol. II, pp. 1–40", 9, 48));
    }

    @Test
    void unnumberedLeavesAreSaidToBe() {
      String map = "8–14 = Unnumbered; 7 = p. [1]";
      assertEquals("p. [1]; file page 8, unnumbered; file page 15", cited(map, 7, 8, 15));
      assertTrue(PageMap.parse(map).isUnnumbered(14));
      assertFalse(PageMap.parse(map).isUnnumbered(15));
    }

    @Test
    void aFrontispieceAndALeafThatFacesAPageStandAlone() {
      assertEquals(
          "frontispiece; facing p. 40; p. 4*",
          cited("2 = frontispiece; 50 = facing p. 40; 51 = p. 4*", 2, 50, 51));
    }

    @Test
    void nothingIsAMapOfNothing() {
      assertEquals(PageMap.NONE, PageMap.parse(" ; "));
      assertEquals("", PageMap.NONE.toString());
      assertEquals("file page 3", PageMap.NONE.cited(3));
    }

    @Test
    void aMapIsKeptInTheOrderOfTheFile() {
      assertEquals(
          "7 = p. [1]; 8–14 = unnumbered; 15–62 = pp. 1–48; plates I after 62",
          PageMap.parse("plates I after 62;15-62=1-48; page 7 = p. [1]; 8 – 14 = unnumbered")
              .toString());
      assertEquals("p. 1 after 4", PageMap.parse("pages after 4").toString());
      assertEquals("plates after 62", PageMap.parse("pls after 62").toString());
    }
  }

  @Nested
  class Refusing {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            15–62 = 1–40 | 0 | "15–62" is 48 file pages, but "1–40" names 40; correct one
            7 = pp. 1–2 | 0 | "7" is one file page, but "pp. 1–2" names 2
            1–9 = pp. 1–9; 5 = p. 5 | 15 | "1–9 = pp. 1–9" and "5 = p. 5" both name file page 5
            plates after 62; 70 = p. 3 | 17 | both name file page 70; give the first an end
            62–15 = 1–48 | 0 | the file pages "62–15" run backwards
            7 = | 3 | nothing stands after "="
            7 p. 1 | 0 | "7 p. 1" has no "="
            1 = p. 1; xii = 3 | 10 | "xii" is no page of the file
            1–2–3 = p. 1 | 0 | "1–2–3" is no page of the file
            0 = p. 1 | 0 | there is no file page 0; the first page of a file is 1
            99999999999 = p. 1 | 0 | there is no file page 99999999999
            2 = title page | 4 | "title page" is not understood here
            2–3 = pp. 9–8 | 12 | the range "9–8" runs backwards
            1 = p. 1; 2–3 = pp. 5, 7 | 16 | "pp. 5, 7" is not one run of numbers
            1–3 = pp. 3, 1–2 | 6 | "pp. 3, 1–2" is not one run of numbers
            frontispiece after 3 | 0 | "frontispiece" cannot be counted on
            plates after | 12 | a page of the file is missing
            """)
    void saysWhichPartAndWhatToDo(String map, int offset, String message) {
      PageMapException refused =
          assertThrows(PageMapException.class, () -> PageMap.parse(map), map);
      assertTrue(refused.getMessage().contains(message), refused.getMessage());
      assertTrue(refused.getMessage().contains("; "), refused.getMessage());
      assertEquals(offset, refused.offset(), refused.getMessage());
    }

    @Test
    void aMapBeyondTheFile() {
      List<PageLines> four =
          List.of(PageLines.NONE, PageLines.NONE, PageLines.NONE, PageLines.NONE);
      for (String map : List.of("3–5 = pp. 1–3", "plates after 4", "9 = unnumbered")) {
        IllegalArgumentException refused =
            assertThrows(
                IllegalArgumentException.class,
                () ->
                    new PageText(
                        "tarn-1950", "a.pdf", "0", PageText.Origin.PDF, PageMap.parse(map), four));
        assertTrue(refused.getMessage().contains("\"" + map + "\""), refused.getMessage());
        assertTrue(refused.getMessage().contains("the file has 4 pages"), refused.getMessage());
      }
    }
  }

  @Provide
  Arbitrary<String> maps() {
    Arbitrary<String> first = Arbitraries.of("1", "i", "I", "iii", "12", "[1]", "fol. 1r", "pl. V");
    return Combinators.combine(
            Arbitraries.integers().between(1, 9),
            Arbitraries.integers().between(1, 40),
            first,
            Arbitraries.of("-", "–", " – "),
            Arbitraries.of(0, 1, 2))
        .as(Stretch::new)
        .list()
        .ofMaxSize(6)
        .map(PageMapTest::typed);
  }

  private record Stretch(int gap, int count, String first, String dash, int sort) {}

  /** A map of stretches one after the other, with a last part that is open. */
  private static String typed(List<Stretch> stretches) {
    List<String> parts = new ArrayList<>();
    int at = 0;
    for (Stretch stretch : stretches) {
      int from = at + stretch.gap();
      int to = from + stretch.count() - 1;
      at = to;
      String left = from == to ? "" + from : from + stretch.dash() + to;
      parts.add(0, left + " = " + (stretch.sort() == 0 ? "unnumbered" : right(stretch)));
    }
    if (stretches.size() > 3) {
      parts.add("plates " + stretches.get(0).first().replaceAll("[^0-9IVX]", "") + " after " + at);
    }
    return String.join(";", parts);
  }

  private static String right(Stretch stretch) {
    String first = stretch.first();
    if (stretch.count() == 1) {
      return first;
    }
    String start = first.contains(".") ? first : "p. " + first;
    String last = Locator.parse(start).stepped(stretch.count() - 1).orElseThrow().printed();
    String bare = last.substring(last.indexOf(' ') + 1);
    return first + stretch.dash().strip() + bare;
  }

  @Property(seed = "1")
  void whatIsKeptReadsAsWhatWasTyped(@ForAll("maps") String typed) {
    PageMap map = PageMap.parse(typed);
    PageMap again = PageMap.parse(map.toString());
    assertEquals(map, again);
    assertEquals(map.toString(), again.toString());
    for (int page = 1; page < 320; page++) {
      assertEquals(map.cited(page), again.cited(page));
      assertFalse(map.at(page).isPresent() && map.isUnnumbered(page));
    }
  }

  @Property(seed = "1")
  void anyTextIsAMapOrRefusedWithAPlaceInIt(@ForAll("scribbles") String text) {
    try {
      PageMap map = PageMap.parse(text);
      assertEquals(map, PageMap.parse(map.toString()));
    } catch (PageMapException e) {
      assertTrue(e.offset() >= 0 && e.offset() <= text.length(), text);
      assertFalse(e.remedy().isBlank());
    }
  }

  @Provide
  Arbitrary<String> scribbles() {
    return Arbitraries.of(
            "1",
            "2",
            "9",
            "=",
            "–",
            "-",
            ";",
            " ",
            "p. ",
            "pl. ",
            "pp. ",
            "x",
            "IV",
            "[",
            "]",
            "plates",
            " after ",
            "unnumbered",
            "fol. ",
            "r",
            "v",
            "vol. I, ",
            ",",
            "file page ")
        .list()
        .ofMaxSize(14)
        .map(parts -> String.join("", parts));
  }
}
