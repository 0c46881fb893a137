package merese.change.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import merese.change.LibraryCheck;
import merese.store.LibraryFolder;
import merese.store.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each case is a file: a line that says why, files of a library, and all that is found in them.
 * {@code -Dchecks=write} writes what is found, to be looked at before it is committed.
 */
class ChecksTest {
  private static final Path CASES = Path.of("src/test/resources/merese/change/checks");
  private static final String FOUND = "=== found";

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> whatIsFound() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      List<Path> cases = files.sorted().toList();
      assertTrue(cases.size() > 20, "cases in " + CASES);
      return cases.stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }
  }

  private void check(Path file) throws IOException {
    String text = Files.readString(file);
    int end = text.indexOf(FOUND);
    String given = end < 0 ? text : text.substring(0, end);
    String found = String.join("\n", found(given, file.getFileName().toString()));
    String whole = given + FOUND + "\n" + found + "\n";
    if ("write".equals(System.getProperty("checks"))) {
      Files.writeString(file, whole);
    }
    assertEquals(text, whole);
  }

  private List<String> found(String given, String name) throws IOException {
    Path root = LibraryFolder.create(folder.resolve(name), name).path();
    Path file = null;
    StringBuilder content = new StringBuilder();
    for (String line : (given + "=== end").lines().toList()) {
      if (line.startsWith("=== ")) {
        if (file != null) {
          Files.createDirectories(file.getParent());
          Files.writeString(file, content);
        }
        file = root.resolve(line.substring(4));
        content.setLength(0);
      } else {
        content.append(line).append('\n');
      }
    }
    List<String> found = new ArrayList<>();
    for (Problem problem : LibraryCheck.of(LibraryFolder.open(root)).problems()) {
      found.add(problem.toString().replace(root + "/", ""));
    }
    return found;
  }

  @Test
  void theDemoIsSound() {
    LibraryFolder demo = LibraryFolder.open(Path.of("library").toAbsolutePath());
    assertEquals(List.of(), LibraryCheck.of(demo).problems());
  }
}
