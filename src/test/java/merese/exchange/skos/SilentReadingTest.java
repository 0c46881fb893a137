package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import merese.exchange.UnreadableException;
import org.junit.jupiter.api.Test;

/**
 * What reads SKOS logs through several libraries, none of which may write on a user's terminal. A
 * process of its own reads every fixture, set up as the launcher sets one up.
 */
class SilentReadingTest {
  private static final Path FIXTURES = Path.of("src/test/resources/merese/exchange/skos");
  private static final Path LOGGING = Path.of("src/main/launcher/logging.properties");

  @Test
  void readingPrintsNothingWhateverTheFile() throws IOException, InterruptedException {
    assumeTrue(
        hasLogger("org/slf4j/impl/StaticLoggerBinder.class")
            || hasLogger("META-INF/services/org.slf4j.spi.SLF4JServiceProvider"),
        "no logger for SLF4J is on the class path, so that it says so itself");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.util.logging.config.file=" + LOGGING,
                "-cp",
                System.getProperty("java.class.path"),
                SilentReadingTest.class.getName())
            .redirectErrorStream(true)
            .start();
    String printed =
        new String(
            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertEquals("", printed);
    assertEquals(0, process.waitFor());
  }

  private static boolean hasLogger(String resource) {
    return SilentReadingTest.class.getClassLoader().getResource(resource) != null;
  }

  public static void main(String[] args) throws IOException {
    int refused = 0;
    try (Stream<Path> files = Files.walk(FIXTURES)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        try (InputStream in = Files.newInputStream(file)) {
          SkosReader.usual().read(file.toString(), in);
        } catch (UnreadableException e) {
          refused++; // said by an exception, as it should be
        }
      }
    }
    if (refused == 0) {
      throw new AssertionError("none of the fixtures was refused");
    }
  }
}
