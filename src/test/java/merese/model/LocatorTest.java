package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import merese.model.LocatorLevel.Facing;
import merese.model.LocatorLevel.Moment;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LocatorTest {

  private static List<String> members(String text) {
    return Locator.parse(text).members().stream().map(Locator::printed).toList();
  }

  private static String outline(String text) {
    StringBuilder out = new StringBuilder();
    for (LocatorLevel level : Locator.parse(text).levels()) {
      out.append(out.isEmpty() ? "" : " > ").append(level.kind()).append(' ').append(level.value());
    }
    return out.toString();
  }

  private static boolean picture(String text) {
    return Locator.parse(text).usuallyPicture();
  }

  /** Locators from the bibliography of Ancient Glass, Getty, 2025. */
  @Nested
  class LinesOfAPublishedBibliography {
    @Test
    void itemsBelongToThePlateBeforeTheColon() {
      assertEquals(
          List.of("p. 13", "p. 14", "p. 15", "p. 16", "plate 1:16", "plate 1:17", "plate 2:18"),
          members("pp. 13–16, plates 1:16–17, 2:18"));
      assertEquals("PLATE 1 > ITEM 16", outline("plates 1:16–17, 2:18"));
      assertEquals("PLATE 2 > ITEM 18", outline("plate 2:18"));
    }

    @Test
    void romanPlatesHaveItemsToo() {
      assertEquals(
          List.of(
              "p. 172",
              "p. 173",
              "plate XXIX:3",
              "plate XXIX:4",
              "plate XXX:1",
              "plate XXX:2",
              "plate XXX:3"),
          members("pp. 172–173, plates XXIX:3–4, XXX:1–3"));
    }

    @Test
    void entriesAndAFigureStandOnThePageNamedBeforeThem() {
      assertEquals(
          List.of("p. 113, fig. 48", "p. 113, no. 423", "p. 113, no. 443"),
          members("p. 113, nos. 423, 443, fig. 48"));
    }

    @Test
    void figuresBelongToTheCatalogueNumberBeforeThem() {
      assertEquals(
          List.of(
              "p. 150",
              "p. 151",
              "p. 152",
              "p. 153",
              "cat. no. A8, fig. 111",
              "cat. no. A8, fig. 112",
              "cat. no. A8, fig. 113",
              "cat. no. A8, fig. 114",
              "cat. no. A8, fig. 115"),
          members("pp. 150–153, cat. no. A8, figs. 111–115"));
    }

    @Test
    void aPlateStandsBesideTheEntryAndItsPage() {
      assertEquals(
          List.of("plate 151.3", "plate 151.5", "no. 843, p. 122"),
          members("no. 843, p. 122, plate 151.3, 151.5"));
      assertEquals("PLATE 151 > ITEM 3", outline("plate 151.3, 151.5"));
      assertEquals(
          List.of("p. 33, no. 25", "color plate III"), members("p. 33, no. 25, color plate III"));
    }
  }

  @Nested
  class Members {
    @Test
    void ofARangeWithAnExceptionLeaveItOut() {
      assertEquals(
          List.of("pl. XXXVIII", "pl. XXXIX", "pl. XLI", "pl. XLII"),
          members("pls XXXVIII–XLII except XL"));
    }

    @Test
    void ofAShortenedRangeAreCountedInFull() {
      assertEquals(List.of("lot 214", "lot 215", "lot 216"), members("lots 214–16"));
      assertEquals(List.of("lot 1099", "lot 1100", "lot 1101"), members("lots 1099–101"));
      assertEquals(List.of("no. 79.1.244", "no. 79.1.245"), members("nos 79.1.244–45"));
    }

    @Test
    void ofLeavesGoFromSideToSide() {
      assertEquals(
          List.of("fol. 12r", "fol. 12v", "fol. 13r", "fol. 13v"), members("fols 12r–13v"));
      assertEquals(List.of("fol. ix v", "fol. x r", "fol. x v"), members("fols ixv–x v"));
    }

    @Test
    void ofLettersFollowTheAlphabet() {
      assertEquals(List.of("fig. 9a", "fig. 9b", "fig. 9c"), members("fig. 9a–c"));
      assertEquals(
          List.of("colour pl. A", "colour pl. B", "colour pl. C"), members("colour pls A–C"));
    }

    @Test
    void keepTheStyleOfLabelNumeralAndBrackets() {
      assertEquals(List.of("Plate xii", "Plate xiii"), members("Plates xii–xiii"));
      assertEquals(List.of("p. [9]", "p. [10]"), members("pp. [9]–[10]"));
      assertEquals(List.of("lot 009", "lot 010"), members("lots 009–010"));
      assertEquals(List.of("fol. 3 recto", "fol. 12v"), members("fols 12v, 3 recto"));
    }

    @Test
    void areSortedAndNamedOnce() {
      assertEquals(List.of("pl. IX", "pl. XL"), members("pls XL, IX, XL"));
      assertEquals(List.of("p. 41"), members("p. 41 and p. 41"));
    }

    @Test
    void keepTheirOwnPositions() {
      assertEquals(
          List.of("fig. 3 (left)", "fig. 5 (right)"), members("figs 3 (left) and 5 (right)"));
    }

    @Test
    void reachTenThousandAndNoMore() {
      assertEquals(10_000, Locator.parse("pp. 1–10000").count());
      assertThrows(LocatorException.class, () -> Locator.parse("pp. 1–10001"));
    }
  }

  @Nested
  class Nesting {
    @Test
    void aFigureAfterAPlateIsOnIt() {
      assertEquals("PLATE XII > FIGURE 3", outline("pl. XII, fig. 3"));
      assertEquals(
          List.of("pl. XII, fig. 3", "pl. XII, fig. 5", "pl. XIII, fig. 2"),
          members("pl. XII, figs 3 and 5, pl. XIII, fig. 2"));
    }

    @Test
    void whatFollowsAndOrASemicolonStandsBeside() {
      assertEquals(List.of("p. 40", "fig. 9"), members("p. 40 and fig. 9"));
      assertEquals(List.of("p. 40", "fig. 9"), members("p. 40; fig. 9"));
      assertEquals(List.of("p. 40, fig. 9"), members("p. 40, fig. 9"));
    }

    @Test
    void aNoteAfterAndIsStillOnThePageWhichCountsItself() {
      assertEquals(List.of("p. 41", "p. 41, n. 3"), members("p. 41 and n. 3"));
    }

    @Test
    void aVolumeHoldsUntilAnotherIsNamed() {
      assertEquals("VOLUME II > PAGE 13", outline("II, p. 13"));
      assertEquals(
          List.of("I, p. 3", "I, pl. 4", "II, p. 13"), members("I, p. 3; pl. 4; II, p. 13"));
    }

    @Test
    void nothingIsInsideARange() {
      assertEquals(List.of("pl. 3", "pl. 4", "fig. 2"), members("pls 3–4, fig. 2"));
    }

    @Test
    void aPlateThatFacesAPageIsPlacedThere() {
      assertEquals("INSERT 40 > PLATE IX", outline("pl. IX, facing p. 40"));
      assertTrue(Locator.parse("pl. IX facing p. 40").compareTo(Locator.parse("p. 41")) < 0);
    }
  }

  @Nested
  class Levels {
    @Test
    void carryValueSuffixAndSide() {
      LocatorNumber leaf = Locator.parse("fol. 12av").levels().get(0).number().get();
      assertEquals(12, leaf.value());
      assertEquals("a", leaf.suffix());
      assertEquals(LocatorNumber.Side.VERSO, leaf.side());
      LocatorNumber entry = Locator.parse("cat. no. A8").levels().get(0).number().get();
      assertEquals("A", entry.prefix());
      assertEquals(8, entry.value());
    }

    @Test
    void tellACountedPageFromAPrintedOne() {
      assertTrue(Locator.parse("p. [12]").levels().get(0).number().get().counted());
      assertNotEquals(Locator.parse("p. [12]"), Locator.parse("p. 12"));
    }

    @Test
    void tellRomanFromArabic() {
      LocatorNumber number = Locator.parse("pl. XL").levels().get(0).number().get();
      assertEquals(40, number.value());
      assertEquals(LocatorNumber.Style.ROMAN_UPPER, number.style());
    }

    @Test
    void sayWhatAnInsertFaces() {
      Facing facing = (Facing) Locator.parse("plate facing fol. 3v").levels().get(0);
      assertEquals(LocatorKind.FOLIO, facing.faced());
      assertEquals(LocatorKind.INSERT, Locator.parse("plate facing p. 40").labelKind());
    }

    @Test
    void giveSecondsOfAMoment() {
      Moment moment = (Moment) Locator.parse("1:02:03–1:02:10").levels().get(0);
      assertEquals(3723, moment.from());
      assertEquals(3730, moment.to());
    }

    @Test
    void readColAsAColumnUnlessAPlateFollows() {
      assertEquals(LocatorKind.COLUMN, Locator.parse("col. 4").labelKind());
      assertEquals(LocatorKind.COLUMN, Locator.parse("col. IV").labelKind());
      assertEquals(LocatorKind.COLOUR_PLATE, Locator.parse("col. pl. IV").labelKind());
      assertEquals("PAGE 12 > COLUMN 2", outline("p. 12, col. 2"));
    }

    @Test
    void carryThePositionInFreeWords() {
      assertEquals("top left", Locator.parse("fig. 3 (top left)").levels().get(0).position());
    }

    @Test
    void readALetterAloneAsTheKindUsesIt() {
      assertEquals(100, Locator.parse("pl. C").levels().get(0).number().get().value());
      assertEquals(3, Locator.parse("colour pl. C").levels().get(0).number().get().value());
    }
  }

  @Nested
  class UsuallyAPicture {
    @Test
    void arePlatesFiguresInsertsAndTheFrontispiece() {
      assertTrue(picture("pl. XII"));
      assertTrue(picture("vol. II, colour pl. IV"));
      assertTrue(picture("p. 41, fig. 9"));
      assertTrue(picture("frontispiece"));
      assertTrue(picture("plate facing p. 40"));
      assertTrue(picture("plate 1:16"));
      assertTrue(picture("pl. XII, no. 3"));
    }

    @Test
    void areNotPagesEntriesLeavesColumnsNotesOrCaptions() {
      for (String text :
          List.of(
              "p. 41",
              "lot 214",
              "fol. 12r",
              "p. 12, col. 2",
              "p. 41, n. 3",
              "pl. XII, caption",
              "cat. no. 3",
              "03:15",
              "front endpaper",
              "item 5")) {
        assertFalse(picture(text), text);
      }
    }

    @Test
    void isNotALocatorWithATextAmongItsMembers() {
      assertFalse(picture("p. 40 and pl. 9"));
    }
  }

  @Nested
  class Simple {
    @Test
    void isOneLabelWithItsNumbers() {
      assertEquals(simple(LocatorKind.PAGE, "41–43"), Locator.parse("pp. 41–43").simple());
      assertEquals(simple(LocatorKind.FIGURE, "9a, 10"), Locator.parse("figs 9a, 10").simple());
      assertEquals(simple(LocatorKind.FOLIO, "12r"), Locator.parse("fol. 12r").simple());
      assertEquals(simple(LocatorKind.TIMESTAMP, "03:15"), Locator.parse("03:15").simple());
    }

    @Test
    void isNothingNestedExceptedPlacedMixedOrUnnumbered() {
      for (String text :
          List.of(
              "pl. XII, fig. 3",
              "pls 3–9 except 5",
              "fig. 3 (left)",
              "p. 40; pl. 9",
              "frontispiece",
              "facing p. 40",
              "plate 1:16",
              "p. 41–p. 43")) {
        assertEquals(Optional.empty(), Locator.parse(text).simple(), text);
      }
    }

    private Optional<Locator.Simple> simple(LocatorKind kind, String value) {
      return Optional.of(new Locator.Simple(kind, value));
    }
  }

  @Nested
  class Equality {
    @Test
    void isThatOfThePrintedText() {
      assertEquals(Locator.parse("p. 41"), Locator.parse("p. 41"));
      assertEquals(Locator.parse("p. 41").hashCode(), Locator.parse("p. 41").hashCode());
      assertNotEquals(Locator.parse("p. 41"), Locator.parse("page 41"));
      assertNotEquals(Locator.parse("pp. 41–43"), Locator.parse("pp. 41-43"));
    }

    @Test
    void listsSortByTheirFirstMemberThenTheNext() {
      assertTrue(Locator.parse("pp. 3, 9").compareTo(Locator.parse("pp. 3, 10")) < 0);
      assertTrue(Locator.parse("pls XL, IX").compareTo(Locator.parse("pl. X")) < 0);
    }
  }
}
