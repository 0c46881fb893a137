package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ScreenTest {
  @Nested
  class Width {
    @Test
    void isThatOfTheTerminal() {
      assertEquals(
          132, Screen.ofAnswers(Map.of("MERESE_TTY", "out", "MERESE_COLUMNS", "132")).width());
    }

    @Test
    void isEightyInAPipeHoweverWideTheWindow() {
      assertEquals(
          80, Screen.ofAnswers(Map.of("MERESE_TTY", " err", "MERESE_COLUMNS", "132")).width());
    }

    @Test
    void isWhatColumnsSaysInAPipe() {
      assertEquals(60, Screen.ofAnswers(Map.of("COLUMNS", "60")).width());
    }

    @Test
    void isNeverUnderForty() {
      assertEquals(40, Screen.ofAnswers(Map.of("COLUMNS", "12")).width());
    }

    @Test
    void isEightyForANumberThatIsNone() {
      assertEquals(80, Screen.ofAnswers(Map.of("COLUMNS", "wide")).width());
      assertEquals(80, Screen.ofAnswers(Map.of("COLUMNS", "0")).width());
    }
  }

  /** The rule of no-color.org: set, and not to the empty string. */
  @Nested
  class Colour {
    private boolean with(String noColor, String term, String terminals) {
      return Screen.ofAnswers(Map.of("NO_COLOR", noColor, "TERM", term, "MERESE_TTY", terminals))
          .colour();
    }

    @Test
    void isAllowedOnATerminal() {
      assertEquals(true, with("", "xterm", "out"));
    }

    @Test
    void isRefusedByNoColorWhateverItsValue() {
      assertEquals(false, with("0", "xterm", "out"));
    }

    @Test
    void isRefusedByADumbTerminal() {
      assertEquals(false, with("", "dumb", "out"));
    }

    @Test
    void isRefusedInAPipe() {
      assertEquals(false, with("", "xterm", "err"));
    }
  }
}
