package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTest {
  private static final Map<String, String> TERMINAL =
      Map.of("MERESE_TTY", "out err", "TERM", "xterm", "MERESE_COLUMNS", "80");

  private static Path home;

  @BeforeAll
  static void prepare(@TempDir Path folder) {
    home = new Shelves(folder).of("rings");
  }

  private static String answer(Map<String, String> environment) {
    return Ran.in(home, environment, "covers", "bladed ring").out();
  }

  @Test
  void onATerminalHeadingsAreBoldAndNothingElseIs() {
    String plain = answer(Map.of("COLUMNS", "80"));
    String bold = answer(TERMINAL);
    assertTrue(bold.startsWith("\u001B[1mknife ring (my term)\u001B[0m\n"), bold);
    assertEquals(plain, bold.replace("\u001B[1m", "").replace("\u001B[0m", ""));
    bold.lines()
        .filter(line -> line.contains("\u001B"))
        .forEach(line -> assertTrue(line.startsWith("\u001B[1m") && line.endsWith("m"), line));
  }

  /** See no-color.org for the first two. */
  @ParameterizedTest
  @CsvSource({"NO_COLOR,1", "NO_COLOR,false", "TERM,dumb", "MERESE_TTY,err"})
  void thereIsNoneWhereItIsNotWelcome(String variable, String value) {
    Map<String, String> environment = new HashMap<>(TERMINAL);
    environment.put(variable, value);
    assertFalse(answer(environment).contains("\u001B"));
  }

  @Test
  void aListForOtherProgramsHasNone() {
    String list = Ran.in(home, TERMINAL, "reading-list", "bladed ring", "--as", "markdown").out();
    assertFalse(list.contains("\u001B"), list);
  }
}
