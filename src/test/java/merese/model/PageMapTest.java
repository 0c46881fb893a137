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
    void anOpeningHasTwoPages() {
      String map = "7 = p. [1]; 8–31 = openings 2–49";
      assertEquals("p. [1]; pp. 2–3; pp. 4–5; pp. 48–49", cited(map, 7, 8, 9, 31));
      assertEquals("pp. 12–13", cited("3 = opening 12–13", 3));
      assertEquals("pp. 12–13", cited("3 = Opening pp. 12-13", 3));
      assertEquals("pp. [2]–[3]; pp. [4]–[5]", cited("1–2 = openings [2]–[5]", 1, 2));
      assertEquals("pp. ii–iii; pp. iv–v", cited("1–2 = openings ii-v", 1, 2));
      assertEquals("fols 1v–2r; fols 2v–3r", cited("1–2 = openings fol. 1v–3r", 1, 2));
      assertEquals("vol. II, pp. 2–3", cited("1–2 = openings vol. II, pp. 2–5", 1));
    }

    @Test
    void anOpeningMayHoldALeafOfAnotherKind() {
      assertEquals("pl. IV and p. 41", cited("9 = opening pl. IV and p. 41", 9));
      assertEquals("frontispiece and p. [iii]", cited("2 = opening frontispiece and p. [iii]", 2));
    }

    @Test
    void openingsAreCountedToTheEndOfTheFile() {
      assertEquals("file page 7; pp. 2–3; pp. 8–9", cited("openings 2 after 7", 7, 8, 11));
      assertEquals("pls I–II; pls III–IV", cited("openings plates I after 7", 8, 9));
    }

    @Test
    void openingsAreKeptAsOpenings() {
      assertEquals(
          "7 = p. [1]; 8 = opening pp. 2–3; 9–31 = openings pp. 4–49; openings p. 50 after 31",
          PageMap.parse("Openings 50 after 31; 9-31 = openings 4-49; 8 = openings 2–3; 7 = p. [1]")
              .toString());
    }

    @Test
    void anOddPageOnTheLeftIsSaidOfTheMap() {
      String map = "7 = opening 1–2; 8–9 = openings 2–5; 10 = opening fol. 3r–3v; 11 = p. 9";
      assertEquals(List.of("pp. 1–2", "fols 3r–3v"), PageMap.parse(map).oddOpenings());
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
            7 = pp. 12–13 | 0 | or, where each file page is an opening of two pages, write "= opening pp. 12–13"
            8–9 = 2–5 | 0 | write "= openings 2–5"
            8–31 = openings 2–48 | 0 | "8–31" is 24 openings, 48 pages, but "2–48" names 47; give a page that stands
            8–31 = openings 2–51 | 0 | but "2–51" names 50; correct one of the two
            3; 8 = opening 12 | 0 | "3" has no "="
            8 = opening 12 | 0 | "8" is one opening of two pages, but "12" names 1
            8 = opening frontispiece | 0 | but "frontispiece" names 1
            8–9 = openings 5–2 | 17 | the range "5–2" runs backwards
            1 = p. 1; 8–9 = openings | 24 | it does not say which pages the openings show
            8–14 = openings unnumbered | 16 | unnumbered leaves have none; write "8–14 = unnumbered"
            8–9 = openings pp. 2–3, 6–7 | 15 | is not one run of numbers
            8–9 = openings 2–5; 9 = p. 6 | 20 | both name file page 9
            openings after 7 | 0 | which page the first opening begins with; write the left page
            openings 2–3 after 7 | 9 | "p. 2–3" cannot be counted on; write the left page
            openings 2 after 7; 9 = p. 5 | 20 | both name file page 9; give the first an end
            openings plates Z after 7 | 9 | "plates Z" cannot be counted on
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
      for (String map :
          List.of(
              "3–5 = pp. 1–3",
              "plates after 4",
              "9 = unnumbered",
              "3–5 = openings pp. 2–7",
              "openings p. 2 after 4")) {
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

  private static PageText text(String map, String... pages) {
    List<PageLines> lines = new ArrayList<>();
    for (String page : pages) {
      lines.add(page.isEmpty() ? PageLines.NONE : new PageLines(List.of(page)));
    }
    return new PageText("tarn-1950", "a.pdf", "0", PageText.Origin.PDF, PageMap.parse(map), lines);
  }

  @Test
  void whatWasSearchedOfATextAreItsPrintedPagesThatHaveWords() {
    PageText text =
        text("2 = p. [1]; 3–5 = openings 2–7; 6–7 = pl. I–II", "a", "b", "c", "", "d", "e", "");
    assertEquals("p. [1]; pp. 2–3, 6–7; pl. I", text.printedPages().orElseThrow().printed());
    assertEquals(1, text.unnumbered());
    assertEquals(2, text("", "a", "", "b").unnumbered());
    assertTrue(text("", "a").printedPages().isEmpty());
  }

  @Provide
  Arbitrary<String> maps() {
    Arbitrary<String> first = Arbitraries.of("1", "i", "I", "iii", "12", "[1]", "fol. 1r", "pl. V");
    return Combinators.combine(
            Arbitraries.integers().between(1, 9),
            Arbitraries.integers().between(1, 40),
            first,
            Arbitraries.of("-", "–", " – "),
            Arbitraries.of(0, 1, 2, 3))
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
    if (stretch.sort() == 3) {
      return "openings " + run(stretch, 2 * stretch.count());
    }
    return stretch.count() == 1 ? first : run(stretch, stretch.count());
  }

  private static String run(Stretch stretch, int pages) {
    String first = stretch.first();
    String start = first.contains(".") ? first : "p. " + first;
    String last = Locator.parse(start).stepped(pages - 1).orElseThrow().printed();
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
            "openings ",
            "opening ",
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
