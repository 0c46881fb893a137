package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What records are read as: a file a case, with its source in the first line, the record, a line
 * "---" and all that is understood.
 */
class MeaningCorpusTest {
  record Case(String name, List<String> lines) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() throws IOException, URISyntaxException {
    Path folder = Path.of(MeaningCorpusTest.class.getResource("meaning").toURI());
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> all = files.sorted().toList();
      assertTrue(all.size() > 90, "fixtures are missing");
      List<Case> cases = new java.util.ArrayList<>();
      for (Path file : all) {
        cases.add(new Case(file.getFileName().toString(), Files.readAllLines(file)));
      }
      return cases.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aRecordIsReadAsThisAndNothingElse(Case one) {
    int rule = one.lines().indexOf("---");
    assertTrue(one.lines().get(0).startsWith("# "), "the first line names the source");
    MarcMeaning meaning = MarcMeaning.of(Lines.record(one.lines().subList(1, rule))).orElseThrow();
    assertEquals(
        String.join("\n", one.lines().subList(rule + 1, one.lines().size())),
        String.join("\n", Lines.said(meaning.work(), meaning.remarks())));
  }
}
