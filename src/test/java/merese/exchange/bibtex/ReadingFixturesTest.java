package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file in {@code reading} is a case, named for it; beside it stands what is handed on: each
 * record's fields, ":" before what was understood, "!" before a remark, "|" before the lines of
 * what was refused. Expected by the grammar of bibtex.web 0.99d, and where that stops at an error,
 * by the rules of {@link BibtexSplitter}.
 *
 * <p>{@code -Dfixtures=FOLDER} writes the answers there, to be looked at.
 */
class ReadingFixturesTest {
  static Stream<Path> cases() throws IOException, URISyntaxException {
    URL folder = Objects.requireNonNull(ReadingFixturesTest.class.getResource("reading"));
    try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
      return files.filter(f -> f.toString().endsWith(".bib")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isHandedOnAsItsPartnerSays(Path file) throws IOException {
    String handed = Handed.read(Files.readAllBytes(file)).toString();
    String name = file.getFileName().toString().replaceFirst("\\.bib$", ".txt");
    String folder = System.getProperty("fixtures");
    if (folder != null) {
      Files.writeString(Path.of(folder, name), handed);
    }
    Path partner = file.resolveSibling(name);
    assertTrue(Files.exists(partner), name + " is missing");
    assertEquals(Files.readString(partner), handed);
  }
}
