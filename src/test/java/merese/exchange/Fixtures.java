package merese.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Files that are each a case, named for it, with a partner that says what is handed on ({@link
 * Received#text}). {@code -Dfixtures=FOLDER} writes the answers there, to be looked at.
 */
public final class Fixtures {
  private Fixtures() {}

  /** The files of a folder beside a class. */
  public static Stream<Path> in(Class<?> beside, String folder, String ending) {
    URL url = Objects.requireNonNull(beside.getResource(folder), folder);
    try (Stream<Path> files = Files.list(Path.of(url.toURI()))) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList().stream();
    } catch (IOException | URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  public static void check(Path file, RecordReader reader) throws IOException {
    String handed = Received.of(reader, Files.readAllBytes(file)).text();
    String name = file.getFileName().toString().replaceFirst("\\.\\w+$", ".txt");
    String folder = System.getProperty("fixtures");
    if (folder != null) {
      Files.writeString(Path.of(folder, name), handed);
    }
    Path partner = file.resolveSibling(name);
    assertTrue(Files.exists(partner), name + " is missing");
    assertEquals(Files.readString(partner), handed);
  }
}
