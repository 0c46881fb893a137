package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The spellings are those of the LaTeX kernel and of BibTeXing, section 4 (from memory). */
class LatexTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '§',
      textBlock =
          """
          \\input{x}     → {\\textbackslash}input{\\textbraceleft}x{\\textbraceright}
          $5 & 6% #1 a_b → \\$5 \\& 6\\% \\#1 a\\_b
          a^b~c          → a{\\textasciicircum}b{\\textasciitilde}c
          <b>|           → {\\textless}b{\\textgreater}{\\textbar}
          Töve, Émile    → T{\\"o}ve, {\\'E}mile
          Łódź naïve     → {\\L}{\\'o}d{\\'z} na{\\"\\i}ve
          façade         → fa{\\c{c}}ade
          1790–1810      → 1790--1810
          a--b ---       → a-{}-b -{}-{}-
          say "rings"    → say ``rings''
          the ship's     → the ship's
          “‘Irish’ ring” → ``{}`Irish' ring''
          what?`         → what?{\\textasciigrave}
          what?‘         → what?{}`
          Ροδος          → Ροδος
          """)
  void printsAsItStands(String text, String latex) {
    assertEquals(latex, LatexText.of(text));
  }

  @Test
  void whatCannotBePrintedIsGone() {
    assertEquals(
        "ring of the neck \uFFFD",
        LatexText.of("r\u0000i\u202en\u200fg\u001b\u0085of\r\n\r\nthe\u2028neck \ud800\ufdd0"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{", "}{", "}}}", "\\", "\\\\{", "%\n}", "\"{\"", "{\u0301", "@x{", "^^5c"})
  void bracesAreBalancedAndEveryBackslashIsOurs(String text) {
    String latex = LatexText.of("a" + text + "b");
    int depth = 0;
    for (int i = 0; i < latex.length(); i++) {
      char c = latex.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      assertTrue(depth >= 0, latex);
    }
    assertEquals(0, depth, latex);
    String rest = latex.replaceAll("\\{\\\\[A-Za-z]+\\}|\\\\[&%$#_]", "");
    assertTrue(rest.chars().noneMatch(c -> "\\$&#%_^~".indexOf(c) >= 0), latex);
  }

  @Test
  void aVeryLongTextIsCutAndSaysSo() {
    String latex = LatexText.of("{".repeat(1_000_000));
    assertTrue(latex.endsWith("{\\dots}"));
    assertEquals(
        LatexText.MOST * "{\\textbraceleft}".length() + "{\\dots}".length(), latex.length());
  }

  @Test
  void anAddressHasNothingThatRFC3986DoesNotLetIn() {
    assertEquals(
        "https://a.example/%5Cinput%7Bx%7D?q=1&r=%24#s%22%7E",
        WebAddress.of("https://a.example/\\input{x}?q=1&r=$#s\"~").orElseThrow());
    assertTrue(WebAddress.of("javascript:alert(1)").isEmpty());
  }
}
