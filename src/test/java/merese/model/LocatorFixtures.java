package merese.model;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The fixture files of this package: a case a line, its columns parted by tabs. */
final class LocatorFixtures {
  private LocatorFixtures() {}

  static List<String> lines(String name) {
    try {
      return Files.readAllLines(path(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String[]> rows(String name, int columns) {
    List<String[]> rows = lines(name).stream().map(line -> line.split("\t", -1)).toList();
    for (String[] row : rows) {
      if (row.length != columns) {
        throw new AssertionError("not " + columns + " columns: " + String.join("\t", row));
      }
    }
    return rows;
  }

  static List<Path> filesIn(String folder) {
    try (Stream<Path> files = Files.list(path(folder))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path path(String name) {
    try {
      return Path.of(LocatorFixtures.class.getResource(name).toURI());
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }
}
