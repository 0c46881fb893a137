package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The examples of the W3C SKOS Reference (Recommendation of 18 August 2009), read by us: the
 * condition that each inconsistent one breaks is found, and by the queries that the written
 * vocabulary is held to as well; see SOURCES.md beside them.
 */
class SkosReferenceReadingTest {
  private static final Path EXAMPLES = Path.of("src/test/resources/merese/checks/skos-reference");

  @TestFactory
  Stream<DynamicTest> everyExampleIsJudgedAsTheReferenceJudgesIt() throws IOException {
    Map<String, String> expected = new TreeMap<>();
    for (String row : Files.readAllLines(EXAMPLES.resolve("expected.tsv"))) {
      String[] cells = row.split("\t");
      if (cells[1].equals("inconsistent")) {
        expected.put(cells[0], cells[2]);
      }
    }
    List<String> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(EXAMPLES)) {
      all.filter(file -> file.toString().endsWith(".ttl"))
          .map(file -> EXAMPLES.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .forEach(files::add);
    }
    assertEquals(51, files.size());
    return files.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file,
                    () -> {
                      byte[] bytes = Files.readAllBytes(EXAMPLES.resolve(file));
                      String condition = expected.getOrDefault(file, "");
                      assertEquals(condition, broken(SkosFiles.read(file, bytes)));
                      assertEquals(condition, String.join(" ", SkosQueries.broken(bytes)));
                    }));
  }

  private static String broken(SkosReading reading) {
    return reading.violations().stream()
        .map(violation -> violation.condition().name())
        .distinct()
        .collect(Collectors.joining(" "));
  }
}
