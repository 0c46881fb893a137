package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Our own form of a line; no source. */
class TypedLineTest {
  @Test
  void aTermNeedsNoQuotesAndNorDoValues() {
    TypedLine line = read("bladed ring --pictured --date c. 1790–1810 --place  mainly Irish");
    assertEquals(List.of("bladed ring"), line.parts());
    assertEquals(
        List.of("--pictured", "--date=c. 1790–1810", "--place=mainly Irish"), line.options());
  }

  @Test
  void barsPartPlaceTermAndText() {
    assertEquals(
        List.of("pl. XII, fig. 3", "bladed ring", "they re|vived it"),
        read("pl. XII, fig. 3 | bladed ring | they re|vived it").parts());
    assertEquals(List.of("", ""), read("| \"\" --pictured").parts());
  }

  @Test
  void quotesKeepBarsAndHyphensFromMeaningAnything() {
    TypedLine line =
        read("p. 1 | ring | \"a | b --date c\" --reading=\"so | so\" --date \"1795 -- so\"");
    assertEquals(List.of("p. 1", "ring", "a | b --date c"), line.parts());
    assertEquals(List.of("--reading=so | so", "--date=1795 -- so"), line.options());
  }

  @Test
  void theWordsOfTheCommandAreUnderstoodToo() {
    assertEquals(
        List.of("pl. 31, fig. 3", "bladed ring"),
        read("\"pl. 31, fig. 3\" \"bladed ring\"").parts());
    assertEquals(
        List.of("p. 41", "ring", "its words"), read("p. 41 \"ring\" \"its words\"").parts());
  }

  @Test
  void quotesThatArePrintedStay() {
    assertEquals(List.of("the \"sharp\" ring"), read("the \"sharp\" ring").parts());
    assertEquals(List.of("“sharp” ring"), read("“sharp” ring").parts());
    assertEquals(List.of("bull's-eye"), read("bull's-eye").parts());
    assertTrue(read("\"p. 41\"").quoted());
  }

  @Test
  void anOptionThatIsNoneOrSaysNothingIsRefused() {
    assertThrows(CommandException.class, () -> read("ring --dte 1795"));
    assertThrows(CommandException.class, () -> read("ring --date --pictured"));
  }

  private static TypedLine read(String line) {
    Context context = null; // the options alone need none
    return TypedLine.of(line, new NoteLine(context), text -> text.startsWith("p"));
  }
}
