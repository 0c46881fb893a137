package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrapTest {
  @Test
  void nothingThatSteersATerminalComesThrough() {
    assertEquals(
        List.of("red \uFFFD[31m bell \uFFFD turned \uFFFD end"),
        Wrap.lines("red \u001B[31m bell \u0007 turned \u202E end", 80, "", ""));
  }

  @Test
  void breaksAtTheLastSpaceThatFits() {
    assertEquals("one two\nthree", Wrap.text("one two three", 7));
    assertEquals("one\ntwo\nthree", Wrap.text("one two three", 6));
  }

  @Test
  void hangsLaterLinesUnderTheFirst() {
    assertEquals(List.of("- a bladed", "  ring"), Wrap.lines("a bladed ring", 10, "- ", "  "));
  }

  @Test
  void countsACombiningMarkAsNoColumn() {
    // "café" spelt with U+0301 has five code points in four columns
    assertEquals(4, Wrap.columns("cafe\u0301"));
    assertEquals("cafe\u0301 x", Wrap.text("cafe\u0301 x", 6));
  }

  @Test
  void countsACharacterBeyondTheBasicPlaneOnce() {
    assertEquals(1, Wrap.columns("\uD83D\uDD14"));
  }

  @Test
  void neverCutsAWord() {
    assertEquals("a\nlongestword\nb", Wrap.text("a longestword b", 5));
  }

  @Test
  void keepsANoBreakSpaceTogether() {
    assertEquals("see\npl.\u00A031", Wrap.text("see pl.\u00A031", 8));
  }

  @Test
  void keepsTogetherWhatFitsOnALineAndShowsOrdinarySpaces() {
    assertEquals("see\npl. 31", Wrap.text("see " + Wrap.together("pl. 31"), 8));
    assertEquals("pl. 31  x", Wrap.text(Wrap.together("pl. 31  x"), 20));
  }

  @Test
  void givesUpKeepingTogetherWhatNoLineHasRoomFor() {
    assertEquals("plate\nfacing\np. 40", Wrap.text(Wrap.together("plate facing p. 40"), 7));
    assertEquals(List.of("   a b", "   c"), Wrap.lines(Wrap.together("a b c"), 7, "   ", "   "));
  }

  @Test
  void keepsLineBreaksAndDropsSpareSpaces() {
    assertEquals("a b\nc", Wrap.text("a  b\nc ", 80));
  }

  @Test
  void givesOneLineForNoText() {
    assertEquals(List.of("- "), Wrap.lines("", 80, "- ", "  "));
  }

  /** A text with a line break is gone through letter by letter, one without may be taken whole. */
  @Test
  void takesATextWholeJustAsLetterByLetter() {
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      if (c != '\n') {
        String one = "ring" + (char) c;
        for (String text : List.of(one, one + "s", (char) c + one, one + (char) c + "s")) {
          for (int width = 8; width <= 11; width++) {
            List<String> byLetter = Wrap.lines(text + "\n", width, "1. ", "   ");
            assertEquals(byLetter, Wrap.lines(text, width, "1. ", "   "), () -> text);
          }
        }
      }
    }
  }

  @Test
  void countsAMarkAsNoColumnWhateverItIs() {
    for (char c = ' '; c < '\uD800'; c++) {
      int type = Character.getType(c);
      boolean none =
          type == Character.NON_SPACING_MARK
              || type == Character.ENCLOSING_MARK
              || type == Character.FORMAT;
      assertEquals(none ? 0 : 1, Wrap.columns(String.valueOf(c)), Integer.toHexString(c));
    }
  }
}
