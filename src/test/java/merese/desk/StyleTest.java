package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The files of the style are sent as one, so what one says must not reach into another's pages. */
class StyleTest {
  private static final Path FOLDER = Path.of("src/main/resources/merese/desk");
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{[^{}]*\\}");
  private static final Pattern FIRST_CLASS = Pattern.compile("^(?:[a-z0-9]+)?\\.([\\w-]+)");

  @Test
  void aClassOfOnePartOfTheDeskIsNamedByNoOther() throws IOException {
    Map<String, TreeSet<String>> owners = new TreeMap<>();
    for (Path file : files()) {
      for (String selector : selectors(file)) {
        Matcher first = FIRST_CLASS.matcher(selector);
        if (first.find()) {
          owners
              .computeIfAbsent(first.group(1), name -> new TreeSet<>())
              .add(file.getFileName().toString());
        }
      }
    }
    assertFalse(owners.size() < 50, "classes: " + owners.keySet());
    List<String> shared = new ArrayList<>();
    owners.forEach(
        (name, of) -> {
          if (of.size() > 1 && !of.contains("desk.css")) {
            shared.add(name + " in " + of);
          }
        });
    assertEquals(List.of(), shared);
  }

  @Test
  void coloursAreNamedOnceAtTheHead() throws IOException {
    List<String> colours = new ArrayList<>();
    for (Path file : files()) {
      if (!file.endsWith("desk.css")) {
        Matcher colour = Pattern.compile("#[0-9a-fA-F]{3,8}\\b").matcher(Files.readString(file));
        while (colour.find()) {
          colours.add(file.getFileName() + " " + colour.group());
        }
      }
    }
    assertEquals(List.of(), colours);
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".css")).sorted().toList();
    }
  }

  private static List<String> selectors(Path file) throws IOException {
    String text =
        Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL)
            .matcher(Files.readString(file))
            .replaceAll("");
    List<String> selectors = new ArrayList<>();
    Matcher rule = RULE.matcher(text);
    while (rule.find()) {
      for (String selector : rule.group(1).split(",")) {
        selectors.add(selector.strip());
      }
    }
    return selectors;
  }
}
