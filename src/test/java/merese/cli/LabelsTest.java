package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The labels are those of the trade's locators (common practice, no source). */
class LabelsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Neck, p. 41, pl. XII.     | 12 | Neck, p. 41,/pl. XII.
          Neck, cat. no. 9.         | 11 | Neck,/cat. no. 9.
          Neck, colour pl. IV.      | 14 | Neck,/colour pl. IV.
          pp. 3–14 (p. 10, fig. 2). | 13 | pp. 3–14/(p. 10,/fig. 2).
          Neck, 2 vols (n.d.)       | 12 | Neck, 2 vols/(n.d.)
          vols I–II and vol. [3].   | 13 | vols I–II and/vol. [3].
          The lot of a plate maker  | 12 | The lot of a/plate maker
          """)
  void noLineEndsWithALabel(String citation, int width, String lines) {
    assertEquals(lines.replace('/', '\n'), Wrap.text(Labels.together(citation), width));
  }
}
