package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pandoc reads of our files for biblatex, as items of CSL. */
class PandocItemsIT {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  /** The items that pandoc makes of a file, by their ids. */
  static Map<String, JsonNode> items(Path folder, String bib, String format) throws Exception {
    Files.writeString(folder.resolve("read.bib"), bib);
    Program ran =
        Program.run(folder, "pandoc", "-f", format, "-t", "csljson", "read.bib", "-o", "out.json");
    assertEquals(0, ran.code(), ran.output());
    return byId(Files.readString(folder.resolve("out.json")));
  }

  static Map<String, JsonNode> byId(String csljson) throws Exception {
    Map<String, JsonNode> items = new TreeMap<>();
    for (JsonNode item : JSON.readTree(csljson)) {
      items.put(item.get("id").asText(), item);
    }
    return items;
  }

  /** In which variables two lists of items differ, by their ids: "quenby-1926: edition, issued". */
  static Set<String> differences(Map<String, JsonNode> one, Map<String, JsonNode> other) {
    Set<String> ids = new TreeSet<>(one.keySet());
    ids.addAll(other.keySet());
    Set<String> differences = new TreeSet<>();
    for (String id : ids) {
      JsonNode a = one.get(id);
      JsonNode b = other.get(id);
      if (a == null || b == null) {
        differences.add(id + ": missing");
        continue;
      }
      Set<String> names = new TreeSet<>();
      a.fieldNames().forEachRemaining(names::add);
      b.fieldNames().forEachRemaining(names::add);
      names.removeIf(name -> a.path(name).equals(b.path(name)));
      if (!names.isEmpty()) {
        differences.add(id + ": " + String.join(", ", names));
      }
    }
    return differences;
  }

  private String distributed(String name) throws Exception {
    Program found = Program.run(folder, "kpsewhich", name);
    assumeTrue(found.code() == 0, name + " is not installed; it comes with TeX Live");
    return Files.readString(Path.of(found.output().strip()), StandardCharsets.UTF_8);
  }

  @Test
  void areThoseOfTheFileOfExamplesOfBiblatex() throws Exception {
    String original = distributed("biblatex-examples.bib");
    String written = BibLibrary.read(original).written(Flavour.BIBLATEX);
    assertEquals(items(folder, original, "biblatex"), items(folder, written, "biblatex"));
  }

  @Test
  void areThoseOfTheFileOfExamplesOfBibtex() throws Exception {
    String original = distributed("xampl.bib");
    BibLibrary library = BibLibrary.read(original);
    Map<String, JsonNode> expected = items(folder, original, "bibtex");
    assertEquals(expected, items(folder, library.written(Flavour.BIBTEX), "bibtex"));
    assertEquals(
        items(folder, original, "biblatex"),
        items(folder, library.written(Flavour.BIBLATEX), "biblatex"));
  }

  @Test
  void haveTheTypesOfTheSources() throws Exception {
    try (Shelf shelf = DemoLibrary.open(folder.resolve("demo"))) {
      Map<String, JsonNode> items =
          items(folder, BibExports.of(shelf, Flavour.BIBLATEX), "biblatex");
      assertEquals(BibExports.sources(shelf).size(), items.size());
      Map<String, String> types = new TreeMap<>();
      Set<String> kinds = new TreeSet<>();
      BibExports.sources(shelf)
          .forEach(
              source ->
                  types.put(
                      source.id().replace('#', ':'),
                      source.part().isPresent() ? "part" : source.work().kind().words()));
      types.forEach((id, kind) -> kinds.add(kind + ": " + items.get(id).get("type").asText()));
      assertEquals(
          Set.of(
              "exhibition catalogue: book",
              "journal article: article-journal",
              "leaflet: pamphlet",
              "manuscript: manuscript",
              "monograph: book",
              "museum catalogue: book",
              "newsletter: article-journal",
              "part: chapter",
              "patent or registered design: patent",
              "printed trade list: pamphlet",
              "sale catalogue: book",
              "statement or letter: manuscript",
              "thesis: thesis",
              "trade directory: book",
              "video: motion_picture",
              "web page: webpage"),
          kinds);
    }
  }
}
