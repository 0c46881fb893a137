package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Edition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The forms are those of the manual of biblatex, version 3.17, section 2.3.8, table 3: "1850~",
 * "1960?", "199X", "1988/1992", "1967-02-24".
 */
class BiblatexDateTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1926 | '' | 1926 | true",
        "1926 | 1926 | 1926 | true",
        "'' | n.d. | '' | false",
        "1850 | c. 1850 | 1850~ | true",
        "1850 | [c. 1850] | 1850~ | false",
        "1850 | ca 1850 | 1850~ | true",
        "1960 | 1960? | 1960? | true",
        "1960 | [1960?] | 1960? | false",
        "1990 | 199- | 199X | true",
        "1988 | 1988–92 | 1988/1992 | true",
        "1988 | 1988-1992 | 1988/1992 | true",
        "1967 | 24 February 1967 | 1967-02-24 | true",
        "1967 | Feb. 1967 | 1967-02 | true",
        "1967 | 24–26 February 1967 | 1967-02-24/1967-02-26 | true",
        "1967 | 31 February 1967 | 1967 | false",
        "1967 | 24 Brumaire 1967 | 1967 | false",
        "1817 | 1817, for the year 1818 | 1817 | false",
        "1926 | c. 1930 | 1926 | false",
        "1926 | 1930 | 1926 | false",
        "1992 | 1992-88 | 1992 | false",
        "1926 | 1926-05~ | 1926-05~ | true",
        "1926 | 1926/ | 1926/ | true",
        "812 | '' | 0812 | true",
        "-44 | '' | '' | true",
        "12345 | '' | '' | true"
      })
  void saysWhatIsPrinted(String year, String printed, String edtf, boolean saysAll) {
    Edition.Imprint imprint =
        new Edition.Imprint(
            Optional.empty(),
            OptionalInt.empty(),
            year.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(year)),
            Optional.of(printed).filter(p -> !p.isEmpty()),
            List.of(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty());
    BiblatexDate date = BiblatexDate.of(imprint, Optional.empty());
    assertEquals(edtf, date.edtf().orElse(""));
    assertEquals(saysAll, date.saysAll());
  }
}
