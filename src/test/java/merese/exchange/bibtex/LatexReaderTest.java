package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.jbibtex.LaTeXParser;
import org.jbibtex.LaTeXPrinter;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LatexReaderTest {
  static Stream<Arguments> lines() throws IOException {
    try (InputStream in = LatexReaderTest.class.getResourceAsStream("latex-to-text.txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text
          .lines()
          .skip(1)
          .map(line -> Arguments.of(line.split(" \\| ")[0], line.split(" \\| ")[1]))
          .toList()
          .stream();
    }
  }

  /** What LaTeX prints: LaTeX2e, An unofficial reference manual; each line from memory. */
  @ParameterizedTest
  @MethodSource("lines")
  void isReadAs(String latex, String text) {
    assertEquals(text, LatexReader.plain(latex));
  }

  /** The accents that jbibtex 1.0.20 knows of those letters that it has. */
  @Nested
  class AsJbibtex {
    static Stream<String> accented() {
      return Stream.of("`AEIOUaeiou", "'AEIOUYaeiouy", "\"AEIOUaeiou", "~ANOano")
          .flatMap(
              row ->
                  row.substring(1)
                      .chars()
                      .boxed()
                      .flatMap(
                          letter ->
                              Stream.of(
                                  "\\" + row.charAt(0) + (char) (int) letter,
                                  "{\\" + row.charAt(0) + (char) (int) letter + "}",
                                  "\\" + row.charAt(0) + "{" + (char) (int) letter + "}")));
    }

    static Stream<String> others() {
      return Stream.of(
          "\\v{C}",
          "\\v{d}",
          "\\v s",
          "{\\v{z}}",
          "\\r{U}",
          "\\r u",
          "\\ss",
          "\\ae",
          "\\o",
          "\\O",
          "\\aa",
          "\\AA",
          "a--b",
          "a---b",
          "``a''");
    }

    @ParameterizedTest
    @MethodSource({"accented", "others"})
    void prints(String latex) throws Exception {
      String theirs = new LaTeXPrinter().print(new LaTeXParser().parse(latex));
      assertEquals(Normalizer.normalize(theirs, Normalizer.Form.NFC), LatexReader.plain(latex));
    }
  }

  /** All letters up to the end of Latin Extended Additional; quotation marks become round. */
  @Property(tries = 1000, seed = "2")
  void ourOwnExportIsTheTextAgain(
      @ForAll
          @StringLength(max = 40)
          @CharRange(from = ' ', to = '~')
          @CharRange(from = '\u00A1', to = '\u00AC')
          @CharRange(from = '\u00AE', to = '\u024F')
          @CharRange(from = '\u0370', to = '\u0377')
          @CharRange(from = '\u1E00', to = '\u1EFF')
          String text) {
    String quotesApart = text.replaceAll("[\"'`«»]", "x");
    String expected =
        Normalizer.normalize(quotesApart, Normalizer.Form.NFC).strip().replaceAll(" +", " ");
    assertEquals(expected, LatexReader.plain(LatexText.of(quotesApart)));
  }

  @Property(tries = 1000, seed = "3")
  void anyTextIsRead(@ForAll @StringLength(max = 60) String text) {
    String plain = LatexReader.plain(text);
    assertEquals(plain.strip(), plain);
    assertFalse(plain.chars().anyMatch(Character::isISOControl));
  }

  @Nested
  class HostileText {
    @ParameterizedTest
    @ValueSource(
        strings = {"{", "}", "\\", "\\'", "\\'{", "\\emph{", "$", "$$", "\\frac", "\\c", "``", "^"})
    void aLongRunOfItIsRead(String piece) {
      assertTrue(LatexReader.plain(piece.repeat(200_000)).length() <= 400_000);
    }

    @Test
    void anUnfinishedCommandLeavesWhatIsThere() {
      assertEquals("Stems é", LatexReader.plain("\\emph{Stems \\'{e}"));
    }
  }
}
