package merese.citation;

import static merese.citation.Invented.book;
import static merese.citation.Invented.locators;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The printed forms are those of the trade's locators (common practice, no source). */
class CslLocatorTest {
  private static final Source BOOK = book("Neck").by("Maud", "Quenby").year(1949).source();
  private static Citations mhra;
  private static Citations chicago;

  @BeforeAll
  static void readStyles() {
    mhra = Citations.inStyle("mhra-notes", "en-GB");
    chicago = Citations.inStyle("chicago-notes-bibliography-17th-edition", "en-US");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          p. 41                    | p. 41                    | 41
          pp. 41–43                | pp. 41–43                | 41–43
          pp. 41-43                | pp. 41–43                | 41–43
          p. vi                    | p. vi                    | vi
          pp. vi–ix                | pp. vi–ix                | vi–ix
          p. [12]                  | p. [12]                  | [12]
          pl. XII                  | pl. XII                  | pl. XII
          pls XXXVIII–XLII         | pls XXXVIII–XLII         | pls XXXVIII–XLII
          colour pl. IV            | colour pl. IV            | colour pl. IV
          fig. 9a                  | fig. 9a                  | fig. 9a
          figs 9–11                | figs 9–11                | figs. 9–11
          pl. XII, fig. 3          | pl. XII, fig. 3          | pl. XII, fig. 3
          cat. nos 3–5             | cat. nos 3–5             | cat. nos 3–5
          lots 214–16              | lots 214–16              | lots 214–16
          fol. 12r                 | fol. 12r                 | fol. 12r
          fols 12r–13v             | fols 12r–13v             | fols. 12r–13v
          p. 12, col. 2            | p. 12, col. 2            | 12, col. 2
          p. 41, n. 3              | p. 41, n. 3              | 41, n. 3
          frontispiece             | frontispiece             | frontispiece
          plate facing p. 40       | plate facing p. 40       | plate facing p. 40
          fig. 3 (top left)        | fig. 3 (top left)        | fig. 3 (top left)
          vol. II, pl. 5           | vol. II, pl. 5           | vol. II, pl. 5
          pls I–V except III       | pls I–V except III       | pls I–V except III
          pp. 7 and 9              | pp. 7 and 9              | 7 and 9
          p. 40 and pl. 9          | p. 40 and pl. 9          | p. 40 and pl. 9
          fig. 3 (zqlocator$1)     | fig. 3 (zqlocator$1)     | fig. 3 (zqlocator$1)
          pl. 3, cat. no. 12       | pl. 3, cat. no. 12       | pl. 3, cat. no. 12
          """)
  void aPlaceIsWordedByTheStyleOrPrintedAsItIs(String printed, String inMhra, String inChicago) {
    assertEquals("Quenby, Neck, " + inMhra + ".", shortNote(mhra, printed));
    assertEquals("Quenby, Neck, " + inChicago + ".", shortNote(chicago, printed));
  }

  @Test
  void severalPagesShareOneLabel() {
    assertEquals("Quenby, Neck, pp. 41, 45–46.", shortNote(mhra, "p. 41", "pp. 45–46"));
  }

  @Test
  void aNoteOnThePageBeforeItDoesNotNameThePageAgain() {
    assertEquals("Quenby, Neck, p. 70 and n. 1.", shortNote(mhra, "p. 70", "p. 70, n. 1"));
    assertEquals("Quenby, Neck, 70 and n. 1.", shortNote(chicago, "p. 70", "p. 70, n. 1"));
    assertEquals(
        "Quenby, Neck, p. 70 and n. 1, p. 74.", shortNote(mhra, "p. 70", "p. 70, n. 1", "p. 74"));
    assertEquals("Quenby, Neck, p. 7, p. 70, n. 1.", shortNote(mhra, "p. 7", "p. 70, n. 1"));
  }

  @Test
  void aPlateFollowsAPage() {
    assertEquals(
        "Quenby, Neck, 45, pl. XII, fig. 3.", shortNote(chicago, "p. 45", "pl. XII, fig. 3"));
    assertEquals("Quenby, Neck, pl. XII, p. 45.", shortNote(mhra, "pl. XII", "p. 45"));
  }

  @Test
  void noPlaceLeavesNothingBehind() {
    assertEquals("Quenby, Neck.", shortNote(mhra));
  }

  private static String shortNote(Citations style, String... printed) {
    return style.shortNote(BOOK, locators(printed), Output.TEXT);
  }
}
