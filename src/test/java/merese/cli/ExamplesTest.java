package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example is run, and prints what stands beside it. */
class ExamplesTest {
  private static final Path EXAMPLES = Path.of("examples");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  static List<Path> scripts() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".sh")).sorted().toList();
    }
  }

  @Test
  void areAtLeastFive() throws IOException {
    assertTrue(scripts().size() >= 5);
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void printsWhatIsShown(Path script) throws IOException {
    StringBuilder said = new StringBuilder();
    for (String line : Files.readAllLines(script)) {
      if (line.startsWith("merese ")) {
        Ran ran = Ran.merese(words(line));
        assertEquals(0, ran.code(), ran.err());
        said.append(ran.out());
      }
    }
    Path shown = Path.of(script.toString().replace(".sh", ".txt"));
    assertEquals(Files.readString(shown), said.toString(), script.toString());
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.subList(1, words.size()).toArray(String[]::new);
  }
}
