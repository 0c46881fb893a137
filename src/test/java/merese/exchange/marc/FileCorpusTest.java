package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import merese.exchange.Incoming;
import merese.exchange.Refused;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files as they are met, a file a case: NAME.mrc or NAME.xml, and in NAME.mrc.expected what is
 * handed on of it. Sound and broken files are our own; what breaks in practice is common knowledge,
 * no source.
 */
class FileCorpusTest {
  static Stream<Path> files() throws IOException, URISyntaxException {
    Path folder = Path.of(FileCorpusTest.class.getResource("files").toURI());
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> all = files.filter(f -> !f.toString().endsWith(".expected")).sorted().toList();
      assertTrue(all.size() > 70, "fixtures are missing");
      return all.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyRecordIsHandedOnOnce(Path file) throws IOException {
    Handed handed = read(file);
    assertEquals(
        Files.readString(file.resolveSibling(file.getFileName() + ".expected")), said(handed));
  }

  static Handed read(Path file) throws IOException {
    return Handed.of(
        file.toString().endsWith(".xml") ? new MarcXmlReader() : new MarcReader(),
        Files.readAllBytes(file));
  }

  private static String said(Handed handed) {
    List<String> lines = new ArrayList<>();
    for (Object one : handed.all) {
      if (one instanceof Incoming source) {
        lines.add(source.work().title() + source.work().subtitle().map(s -> ": " + s).orElse(""));
        source.remarks().forEach(remark -> lines.add("  remark: " + remark));
      } else {
        lines.add(one instanceof Refused bad ? "refused " + bad : "kept");
      }
    }
    return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
  }
}
