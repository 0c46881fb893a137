package merese.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against the test lists of unt-libraries/edtf-validate (checks/edtf-valid-invalid.tsv) and a run
 * of the npm library edtf 4.11.1 (checks/edtf-minmax.tsv).
 */
class EdtfChecksTest {
  static Stream<List<String>> valid() throws IOException {
    return rows("edtf-valid-invalid.tsv", 258).filter(r -> r.get(0).equals("valid"));
  }

  static Stream<List<String>> invalid() throws IOException {
    return rows("edtf-valid-invalid.tsv", 258).filter(r -> r.get(0).equals("invalid"));
  }

  /** The rows that the library does not decide by itself. */
  static Stream<List<String>> spans() throws IOException {
    return rows("edtf-minmax.tsv", 48).filter(r -> r.get(5).startsWith("agrees-with-spec"));
  }

  private static Stream<List<String>> rows(String file, int expected) throws IOException {
    try (InputStream in = EdtfChecksTest.class.getResourceAsStream("/merese/checks/" + file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<List<String>> rows =
          text.lines().skip(1).map(line -> List.of(line.split("\t", -1))).toList();
      assertEquals(expected, rows.size());
      return rows.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("valid")
  void aValidDateIsReadWithItsLevelAndPrintedAsItWas(List<String> row) {
    Edtf read = Edtf.parse(row.get(2));
    assertEquals(Integer.parseInt(row.get(1)), read.level());
    assertEquals(row.get(2), read.printed());
  }

  @ParameterizedTest
  @MethodSource("invalid")
  void anInvalidDateIsRefusedWithARemedy(List<String> row) {
    EdtfException refused = assertThrows(EdtfException.class, () -> Edtf.parse(row.get(2)));
    assertTrue(refused.offset() <= row.get(2).length());
    assertTrue(refused.getMessage().endsWith("; " + refused.remedy()), refused.getMessage());
  }

  /** Without padding: the library writes years before 0 with six digits, we with four. */
  @ParameterizedTest
  @MethodSource("spans")
  void theCoreIsFromTheFirstDayToTheLast(List<String> row) {
    String from = row.get(3).equals("-inf") ? ".." : row.get(3).replace("-000044-", "-0044-");
    String to = row.get(4).equals("+inf") ? ".." : row.get(4).replace("-000044-", "-0044-");
    String expected = (from + "/" + to).replace("unknown", "");
    assertEquals(expected, Edtf.parse(row.get(0)).core().toString());
  }

  /** A negative year is of level 1, as the specification says and as the row itself notes. */
  @ParameterizedTest
  @MethodSource("spans")
  void theLevelIsTheSame(List<String> row) {
    int expected = row.get(0).equals("-0044") ? 1 : Integer.parseInt(row.get(1));
    assertEquals(expected, Edtf.parse(row.get(0)).level());
  }
}
