package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lists in the order of a script, and within a number of bytes: the trade's scenario of a film's
 * description, whole (common practice, no source; all authors and titles are invented).
 */
class ScriptListTest {
  private static final String FULL =
      """
      Books used:
      I. Tressick, Cut and Blown (1954), p. 88, fig. 61
      M. Quenby, Neck and Stopper, 2nd edn (1949), p. 41, pl. XII
      C. Dunlavin, Glass of the Two Islands (1990), p. 102
      S. Norrish, The Ringed Decanter (1971), pls 9–11""";
  private static final String SHORT =
      """
      Books used:
      Tressick 1954, p. 88, fig. 61
      Quenby 1949, p. 41, pl. XII
      Dunlavin 1990, p. 102
      Norrish 1971, pls 9–11""";
  private static final String CUT =
      """
      Books used:
      Tressick 1954, p. 88, fig. 61
      Quenby 1949, p. 41, pl. XII
      Dunlavin 1990, p. 102
      + 1 more""";

  @TempDir private Path folder;

  @BeforeEach
  void aSmallShelfAndAScript() throws IOException {
    assertEquals(0, merese("new", ".").code());
    work("Tressick", "I.", "Cut and Blown", 1954, "");
    work("Quenby", "M.", "Neck and Stopper", 1949, "\"statement\": \"2nd edn\",");
    work("Dunlavin", "C.", "Glass of the Two Islands", 1990, "");
    work("Norrish", "S.", "The Ringed Decanter", 1971, "");
    script(
        "The edge [tressick-1954 p. 88, fig. 61], older [quenby-1949 p. 41, pl. XII],\n"
            + "Irish [dunlavin-1990 p. 102], three more [norrish-1971 pls 9–11].\n");
  }

  private void work(String family, String given, String title, int year, String more)
      throws IOException {
    String key = family.toLowerCase(java.util.Locale.ROOT) + "-" + year;
    Files.writeString(
        folder.resolve("library/works/" + key + ".json"),
        """
        {"id": "KEY", "kind": "monograph", "title": "TITLE",
         "contributors": [{"role": "author", "family": "FAMILY", "given": "GIVEN"}],
         "editions": [{"key": "KEY", MORE "year": YEAR}]}
        """
            .replace("KEY", key)
            .replace("TITLE", title)
            .replace("FAMILY", family)
            .replace("GIVEN", given)
            .replace("MORE", more)
            .replace("YEAR", String.valueOf(year)));
  }

  private void script(String text) throws IOException {
    Files.writeString(folder.resolve("talk.txt"), text);
  }

  private Ran merese(String... args) {
    return Ran.in(folder, Map.of(), args);
  }

  private Ran fitted(int bytes) {
    return merese("reading-list", "--script", "talk.txt", "--fit", String.valueOf(bytes));
  }

  @Test
  void theFormsAreAsLongAsTheTradeCounts() {
    assertEquals(225, FULL.getBytes(StandardCharsets.UTF_8).length);
    assertEquals(223, FULL.length());
    assertEquals(116, SHORT.getBytes(StandardCharsets.UTF_8).length);
    assertEquals(100, CUT.getBytes(StandardCharsets.UTF_8).length);
  }

  @ParameterizedTest
  @ValueSource(ints = {225, 226, 5000})
  void allAreFullWhereAllFit(int bytes) {
    assertEquals(FULL, fitted(bytes).out());
  }

  @ParameterizedTest
  @ValueSource(ints = {224, 223, 117, 116})
  void allAreShortWhereNotAllFitInFull(int bytes) {
    assertEquals(SHORT, fitted(bytes).out());
  }

  @ParameterizedTest
  @ValueSource(ints = {115, 114, 101, 100})
  void theLastGiveWayToTheirNumber(int bytes) {
    assertEquals(CUT, fitted(bytes).out());
  }

  @Test
  void oneByteLessTakesAWholeEntryMore() {
    assertTrue(fitted(99).out().endsWith("Quenby 1949, p. 41, pl. XII\n+ 2 more"));
  }

  @Test
  void whereNotEvenOneFitsNothingIsPrinted() {
    Ran ran = fitted(20);
    assertEquals(1, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains("not even one source fits in 20 bytes"), ran.err());
  }

  @Test
  void theCautionStandsApartFromTheListThatFits() {
    assertTrue(fitted(225).err().contains("not an appraisal"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "as printed [sic] | talk.txt:1: [sic] names no source",
        "p. [12] of it | talk.txt:1: [12] names no source",
        "one [open | talk.txt:1: a bracket is not closed"
      })
  void whatIsNoMarkStaysTextAndIsReported(String words, String said) throws IOException {
    script(words + "\n[quenby-1949 p. [12]]");
    Ran ran = merese("reading-list", "--script", "talk.txt");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("p. [12]"), ran.out());
    assertTrue(ran.err().contains(said), ran.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[quenby-1949 pl. ?] | talk.txt:2: cannot read the locator",
        "[term nonsense] | talk.txt:2: \"nonsense\" is no word",
        "[object d-99] | talk.txt:2: there is no object \"d-99\""
      })
  void aMarkThatCannotBeReadIsAnErrorInItsLine(String mark, String said) throws IOException {
    script("first line\n" + mark);
    Ran ran = merese("reading-list", "--script", "talk.txt");
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains(said), ran.err());
  }
}
