package merese.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shell's limit of a file's size (POSIX, ulimit -f) stands for a disk without room. */
@DisplayName("Where there is no room on the disk")
class FullDiskIT {
  @TempDir Path home;

  @BeforeEach
  void copyTheDemo() throws IOException {
    DemoLibrary.copyTo(home);
    assertEquals(0, Ran.in(home, Map.of(), "covers", "bladed ring").code());
  }

  private record Ended(int code, String err) {}

  /**
   * @param blocks the largest file that may be written, in 512 or 1,024 bytes
   */
  private Ended merese(int blocks, String words) throws IOException, InterruptedException {
    Path launcher = Path.of("target/merese/bin/merese").toAbsolutePath();
    String line = "ulimit -f " + blocks + " && exec '" + launcher + "' " + words;
    Process process =
        new ProcessBuilder("sh", "-c", line)
            .directory(home.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
    return new Ended(process.waitFor(), err);
  }

  private Map<String, String> files(String folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(home.resolve(folder))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.getFileName().toString().equals(".lock")) {
          content.put(
              home.relativize(file).toString(),
              new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
        }
      }
    }
    return content;
  }

  @Test
  void aNoteIsRefusedAndNothingIsLost() throws Exception {
    Map<String, String> before = files("library");
    String note = "note haskeld-1983 'p. 77' 'bladed ring'";
    Ended refused = merese(4, note);
    assertEquals(1, refused.code(), refused.err());
    assertTrue(
        unbroken(refused.err()).contains("cannot be written, and nothing was changed"),
        refused.err());
    assertTrue(unbroken(refused.err()).contains("haskeld-table-glass-primer.json"), refused.err());
    assertEquals(before, files("library"), "no part of a file stays, and no entry of the history");
    assertEquals(0, merese(100_000, note).code());
  }

  @Test
  void anImportIsRefusedWhole() throws Exception {
    Map<String, String> before = files("library");
    Files.writeString(
        home.resolve("records.bib"),
        "@book{a, author = {Quarn, Ivor}, title = {Of Glass}, year = {1950}, note = {"
            + "A long note. ".repeat(1_000)
            + "}}\n");
    Ended refused = merese(4, "import records.bib --apply");
    assertEquals(1, refused.code(), refused.err());
    assertTrue(unbroken(refused.err()).contains("nothing was changed"), refused.err());
    assertEquals(before, files("library"));
  }

  @Test
  void aQuestionSaysThatItsIndexLacksRoom() throws Exception {
    Map<String, String> before = files("library");
    for (String file : files("index").keySet()) {
      Files.delete(home.resolve(file));
    }
    Ended refused = merese(4, "covers 'bladed ring'");
    assertEquals(1, refused.code(), refused.err());
    assertTrue(
        unbroken(refused.err()).contains("the index cannot be brought up to date"), refused.err());
    assertEquals(before, files("library"));
    assertEquals(0, merese(100_000, "covers 'bladed ring'").code());
  }

  /** Where the lines of a message end depends on the path in it. */
  private static String unbroken(String message) {
    return message.replaceAll("\\s+", " ");
  }
}
