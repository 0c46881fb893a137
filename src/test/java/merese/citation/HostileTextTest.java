package merese.citation;

import static merese.citation.Invented.book;
import static merese.citation.Invented.locators;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostileTextTest {
  private static Citations style;

  /** No title case here, so that a title comes out letter for letter. */
  @BeforeAll
  static void readStyle() {
    style = Citations.inStyle("iso690-full-note-en", "en-GB");
  }

  private static String cited(String title, Output output) {
    return style.note(book(title).by("A.", "B").source(), locators(), output);
  }

  @Test
  void markUpInATitleIsLiteralText() {
    String title = "A <i>ring</i> & <span class=\"nocase\">neck</span>";
    assertAll(
        () ->
            assertEquals(
                "B, A. A <i>ring</i> & <span class=‘nocase’>neck</span>.",
                cited(title, Output.TEXT)),
        () ->
            assertEquals(
                "B, A. <i>A &lt;i&gt;ring&lt;/i&gt; &amp; &lt;b&gt;neck&lt;/b&gt;</i>.",
                cited("A <i>ring</i> & <b>neck</b>", Output.HTML)),
        () ->
            assertEquals(
                "B, A. *A \\<i\\>ring\\</i\\> \\*neck\\* \\_x\\_ \\`y\\` \\[z\\](w) \\&lt;*.",
                cited("A <i>ring</i> *neck* _x_ `y` [z](w) &lt;", Output.MARKDOWN)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"javascript:alert(1)", "JaVaScRiPt:x//http://a", "data:text/html,x"})
  void onlyAnAddressOnTheWebBecomesALink(String address) {
    Source page = book("Page").by("A.", "B").online(address, null).source();
    String html = style.note(page, locators(), Output.HTML);
    assertFalse(html.contains("<a "), html);
    String markdown = style.note(page, locators(), Output.MARKDOWN);
    assertFalse(markdown.contains("<" + address), markdown);
  }

  @Test
  void anAddressCannotLeaveItsAttribute() {
    Source page =
        book("Page").by("A.", "B").online("https://a.example/\"onclick=\"x", null).source();
    String html = style.note(page, locators(), Output.HTML);
    assertFalse(html.contains("\"onclick"), html);
  }

  @ParameterizedTest
  @EnumSource(Output.class)
  void controlCharactersAndTurnsOfDirectionAreGone(Output output) {
    String cited =
        cited("Ri\u001b[31mng\u202e\u2066 of\u0000\u200f the\r\nneck\u2028\ufdd0\ud800!", output);
    assertTrue(
        cited
            .chars()
            .noneMatch(
                c ->
                    c < ' '
                        || c == 0x7f
                        || c >= 0x200e && c <= 0x2069
                        || c >= 0xd800 && c <= 0xdfff
                        || c >= 0xfdd0 && c <= 0xfdef),
        cited);
    assertTrue(cited.contains("ng of the neck"), cited);
  }

  @Test
  void aLineOfMarkdownNeverStartsAListOrAHeading() {
    Citations anonymous = Citations.inStyle("chicago-notes-bibliography-17th-edition", "en-US");
    assertEquals("1\\. Rings", Escape.MARKDOWN.wholeLine("1. Rings"));
    assertEquals("\\# Rings", Escape.MARKDOWN.wholeLine("# Rings"));
    assertEquals("1949 rings", Escape.MARKDOWN.wholeLine("1949 rings"));
    assertFalse(anonymous.entry(book("# Rings").source(), Output.MARKDOWN).startsWith("# "));
  }

  @Test
  void quotationMarksInATitleAlternateWithTheStyles() {
    Source article =
        Invented.a(merese.model.SourceKind.JOURNAL_ARTICLE, "The \"collar\" and the ship's ring")
            .by("A.", "B")
            .in("Journal", "1", null, "pp. 1–2")
            .source();
    assertEquals(
        "A. B, ‘The “Collar” and the Ship’s Ring’, Journal, 1 (n.d.), pp. 1–2.",
        Citations.inStyle("mhra-notes", "en-GB").note(article, locators(), Output.TEXT));
    assertEquals(
        "A. B, “The ‘Collar’ and the Ship’s Ring,” Journal 1 (n.d.): 1–2.",
        Citations.inStyle("chicago-notes-bibliography-17th-edition", "en-US")
            .note(article, locators(), Output.TEXT));
  }

  @Test
  void aTitleOfNothingButQuotationMarksIsCited() {
    assertFalse(cited("'".repeat(20_000) + "\"".repeat(20_000), Output.HTML).isBlank());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pp. 5–20, pl. XII",
        "p. 0",
        "p. 999999999999999",
        "p. 3 (\u202etop <b>left</b>)",
        "frontispiece",
        "03:15"
      })
  void anyExtentAndAnyPlaceIsCited(String place) {
    Source article =
        Invented.a(merese.model.SourceKind.JOURNAL_ARTICLE, "Rings")
            .by("A.", "B")
            .yearPrinted("2025-13-45")
            .in("Journal", "1; DROP", "[2]", place)
            .source();
    for (String name : java.util.List.of("mhra-notes", "chicago-notes-bibliography", "apa")) {
      Citations citations = Citations.inStyle(name, "");
      assertFalse(citations.note(article, locators(place), Output.HTML).isBlank());
      assertFalse(citations.entry(article, Output.HTML).isBlank());
    }
  }

  @Test
  void theFullStopComesOnce() {
    assertEquals("B, A. Rings.", cited("Rings.", Output.TEXT));
    assertEquals("B, A. Rings?", cited("Rings?", Output.TEXT));
  }
}
