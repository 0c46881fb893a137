package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What stands on the screen, whole. Each file of {@code merese/cli/screens} is a case, named for
 * the behaviour: a first line {@code LIBRARY COLUMNS EXIT}, a second one with what was typed after
 * "merese", with a bar between the words, and below them what was printed, errors last.
 *
 * <p>After a change that is meant, {@code -Dscreens=write} writes them anew: read the difference
 * before you keep it.
 */
@TestInstance(Lifecycle.PER_CLASS)
class ScreensTest {
  private static final Path SCREENS = Path.of("src/test/resources/merese/cli/screens");
  private static final boolean WRITE = "write".equals(System.getProperty("screens"));

  private Shelves shelves;

  @BeforeAll
  void prepare(@TempDir Path folder) {
    shelves = new Shelves(folder);
  }

  static Stream<String> screens() throws IOException {
    try (Stream<Path> files = Files.list(SCREENS)) {
      List<String> names =
          new ArrayList<>(files.map(file -> file.getFileName().toString()).sorted().toList());
      assertTrue(names.size() > 20, names::toString);
      return names.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("screens")
  void isAsItWasReadAndFoundGood(String name) throws IOException {
    Path file = SCREENS.resolve(name);
    String screen = Files.readString(file);
    List<String> lines = screen.lines().toList();
    String[] setting = lines.get(0).split(" ");
    String[] words = lines.get(1).split(" \\| ", -1);
    int width = Integer.parseInt(setting[1]);
    Path home = shelves.of(setting[0]);
    Ran ran = Ran.in(home, Map.of("COLUMNS", setting[1]), words);
    String printed = (ran.out() + ran.err()).replace(home.toString(), "HOME");
    String head = setting[0] + " " + setting[1] + " ";
    String shown = head + ran.code() + "\n" + lines.get(1) + "\n" + printed;
    if (WRITE) {
      Files.writeString(file, shown);
    }
    assertEquals(screen, shown);
    if (!List.of(words).contains("--as") && !List.of(words).contains("--json")) {
      assertNothingIsOver(width, ran.out());
    }
  }

  /** But for one word that is longer than the room for it. */
  private static void assertNothingIsOver(int width, String text) {
    text.lines()
        .filter(line -> Wrap.columns(line) > width)
        .forEach(line -> assertTrue(line.strip().indexOf(' ') < 0, width + ": " + line));
  }
}
