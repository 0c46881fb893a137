package merese.answer.pull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import merese.model.Locator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The values are common practice, no source, but for those that name one. */
class SpokenTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0    | zero
          9    | nine
          40   | forty
          61   | sixty-one
          100  | one hundred
          112  | one hundred and twelve
          214  | two hundred and fourteen
          1000 | one thousand
          1066 | one thousand and sixty-six
          2415 | two thousand four hundred and fifteen
          """)
  void aNumberIsSaidWithAnAndAfterItsHundreds(long value, String words) {
    assertEquals(words, Spoken.number(value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1926 | nineteen twenty-six
          1800 | eighteen hundred
          1905 | nineteen oh five
          2000 | two thousand
          2009 | two thousand and nine
          2010 | twenty ten
          2019 | twenty nineteen
          1900 | nineteen hundred
          1910 | nineteen ten
          1799 | seventeen ninety-nine
          1066 | ten sixty-six
          1001 | one thousand and one
          2100 | twenty-one hundred
          986  | nine eighty-six
          805  | eight oh five
          900  | nine hundred
          79   | seventy-nine
          """)
  void aYearIsSaidInTwoHalves(int year, String words) {
    assertEquals(words, Spoken.year(year));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -44})
  void noYearBeforeTheFirstIsSaid(int year) {
    assertThrows(IllegalArgumentException.class, () -> Spoken.year(year));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pl. XII, fig. 3                  | plate twelve, figure three
          pl. 31                           | plate thirty-one
          colour pl. IV                    | colour plate four
          pl. B                            | plate B
          fig. 9a                          | figure nine A
          fig. 3 (top left)                | figure three, top left
          p. 41                            | page forty-one
          p. vi                            | page roman six
          p. [12]                          | page twelve, which bears no number: count to it
          p. 41, n. 3                      | page forty-one, note three
          p. 41, caption                   | page forty-one, the caption
          p. 12, col. 2                    | page twelve, column two
          fol. 12r                         | folio twelve recto
          fol. 2v                          | folio two verso
          vol. II, pl. 5                   | volume two, plate five
          cat. no. 45a                     | catalogue number forty-five A
          lot 214                          | lot two hundred and fourteen
          pattern 88                       | pattern eighty-eight
          no. 48                           | number forty-eight
          para. 11                         | paragraph eleven
          plate 1:16                       | plate one, item sixteen
          frontispiece                     | the frontispiece
          front endpaper                   | the front endpaper
          facing p. 40                     | the leaf facing page forty
          plate facing p. 40               | the plate facing page forty
          """)
  void onePlaceIsSaidLevelByLevel(String printed, String words) {
    assertEquals(words, Spoken.locator(Locator.parse(printed)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pp. 41–43                        | pages forty-one to forty-three
          pp. 41–42                        | pages forty-one and forty-two
          pp. vi–viii                      | pages roman six to eight
          figs 9–11                        | figures nine to eleven
          figs 9a–9c                       | figures nine A to nine C
          figs 9, 9a, 10                   | figures nine, nine A and ten
          lots 214–16                      | lots two hundred and fourteen to two hundred and sixteen
          cat. nos 3–5                     | catalogue numbers three to five
          fols 12r–13v                     | folios twelve recto to thirteen verso
          pls XXXVIII–XLII except XL       | plates thirty-eight, thirty-nine, forty-one and forty-two
          pls IX, XII–XIV                  | plates nine and twelve to fourteen
          p. 40 and pl. 9                  | page forty and plate nine
          """)
  void severalPlacesAreSaidUnderOneNoun(String printed, String words) {
    assertEquals(words, Spoken.locator(Locator.parse(printed)));
  }

  @Nested
  class OfAFilm {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            03:15        | three minutes and fifteen seconds
            07:00        | seven minutes
            00:41        | forty-one seconds
            01:02:03     | one hour, two minutes and three seconds
            00:00        | the very beginning
            03:15–03:20  | from three minutes and fifteen seconds to three minutes and twenty seconds
            """)
    void aMomentIsATime(String printed, String words) {
      assertEquals(words, Spoken.locator(Locator.parse(printed)));
    }
  }

  @Test
  void numeralsOfTheTwoStylesSoundAlikeButForPreliminaries() {
    assertEquals(
        Spoken.locator(Locator.parse("pl. 24")), Spoken.locator(Locator.parse("pl. XXIV")));
    assertEquals("page roman four", Spoken.locator(Locator.parse("p. iv")));
    assertEquals("page four", Spoken.locator(Locator.parse("p. 4")));
  }
}
