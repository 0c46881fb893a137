package merese.answer.pull;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import merese.model.Locator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where slips go, and how shelves are sorted; common practice, no source. */
class PlacesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      textBlock =
          """
          pl. XII, fig. 3            | pl. XII          | fig. 3
          pl. 9                      | pl. 9            | -
          pl. 9 (lower half)         | pl. 9            | lower half
          fig. 3 (top left)          | fig. 3           | fig. 3 (top left)
          fig. 61                    | fig. 61          | -
          p. 12, fig. 3              | p. 12            | fig. 3
          facing p. 40               | p. 40            | facing p. 40
          plate facing p. 40         | p. 40            | plate facing p. 40
          vol. II, pl. 5             | vol. II, pl. 5   | -
          vol. II, facing p. 7       | vol. II, p. 7    | facing p. 7
          p. 41, n. 3                | p. 41            | n. 3
          vol. I, cat. no. 51        | vol. I, cat. no. 51 | -
          cat. no. 3, fig. 2         | cat. no. 3       | fig. 2
          pls 9–11                   | pls 9–11         | -
          """)
  void theSlipGoesToThePageThatHoldsOrFacesIt(String printed, String slip, String pointAt) {
    Locator locator = Locator.parse(printed);
    assertEquals(slip, Places.slip(locator));
    assertEquals(pointAt, Places.pointAt(locator).orElse(null));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pl. XII          | pl. XII, fig. 3        | true
          plate XII        | pl. XII                | true
          pl. XII, fig. 3  | pl. XII                | false
          fig. 3           | fig. 3 (top left)      | true
          fig. 3 (right)   | fig. 3 (top left)      | false
          p. 4             | p. 40                  | false
          pls 9–11         | pl. 10                 | true
          """)
  void aPlaceHoldsWhatIsInsideIt(String asked, String place, boolean holds) {
    assertEquals(holds, Places.holds(Locator.parse(asked), Locator.parse(place)));
  }

  @Test
  void shelfMarksAreInNaturalOrder() {
    List<String> marks =
        new ArrayList<>(
            List.of("B1", "A10", "a2", "cabinet 10", "A2", "cabinet 9", "748.2", "A02"));
    marks.sort(new NaturalOrder());
    assertEquals(
        List.of("748.2", "A02", "A2", "a2", "A10", "B1", "cabinet 9", "cabinet 10"), marks);
  }
}
