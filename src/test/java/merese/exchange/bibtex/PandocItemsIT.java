package merese.exchange.bibtex;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.exchange.csl.CslJsonWriter;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pandoc reads of our files for biblatex, as items of CSL. */
class PandocItemsIT {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Where pandoc's items of our file for biblatex differ from our own items, and why. */
  private static final Map<String, String> DIFFERENT =
      Map.ofEntries(
          entry("ISBN", "one that is wrong in print is in the note"),
          entry("annote", "our items have no notes"),
          entry("archive", "biblatex has no field for it; it is in the note"),
          entry("archive_location", "biblatex has no field for it; it is in the note"),
          entry("author", "pandoc takes every particle for one that is dropped"),
          entry("collection-title", "pandoc writes series in small letters"),
          entry("custom", "what CSL has no variable for, in our items alone"),
          entry("editor", "pandoc takes every particle for one that is dropped"),
          entry("event-date", "biblatex has it for proceedings only; it is in the note"),
          entry("event-place", "biblatex has it for proceedings only; it is in the note"),
          entry("genre", "pandoc words phdthesis as PhD thesis"),
          entry("illustrator", "pandoc does not know editora with this type"),
          entry("interviewer", "biblatex has no field for it; it is in the note"),
          entry("issued", "a date as printed, which EDTF cannot say, is in the note"),
          entry("keyword", "our items have the kind of source under custom"),
          entry("language", "pandoc adds a country"),
          entry("note", "what biblatex has no field for; pandoc drops the full stop"),
          entry("number-of-volumes", "a thesis has none in biblatex; it is in the note"),
          entry("organizer", "pandoc does not know editortype organizer"),
          entry("page", "pandoc has hyphens for dashes"),
          entry("publisher", "an article has none in biblatex"),
          entry("publisher-place", "an article has none in biblatex"),
          entry("type", "biblatex has none for an interview, nor one with fields for a letter"));

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

  private static String check(String name) throws IOException {
    Path file = Path.of("src/test/resources/merese/checks", name);
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  @Test
  void areThoseOfTheFileOfExamplesOfBiblatex() throws Exception {
    String original = check("biblatex-examples.bib");
    String written = BibLibrary.read(original).written(Flavour.BIBLATEX);
    assertEquals(items(folder, original, "biblatex"), items(folder, written, "biblatex"));
  }

  @Test
  void areThoseOfTheFileOfExamplesOfBibtex() throws Exception {
    String original = check("xampl.bib");
    BibLibrary library = BibLibrary.read(original);
    Map<String, JsonNode> expected = items(folder, original, "bibtex");
    assertEquals(expected, items(folder, library.written(Flavour.BIBTEX), "bibtex"));
    assertEquals(
        items(folder, original, "biblatex"),
        items(folder, library.written(Flavour.BIBLATEX), "biblatex"));
  }

  @Test
  void areOursButForWhatIsListedHere() throws Exception {
    try (Shelf shelf = DemoLibrary.open(folder.resolve("demo"))) {
      StringWriter out = new StringWriter();
      new CslJsonWriter().write(BibExports.sources(shelf), List.of(), out);
      Map<String, JsonNode> ours = byId(out.toString().replaceAll("(\"id\": \"[^\"#]*)#", "$1:"));
      Map<String, JsonNode> theirs =
          items(folder, BibExports.of(shelf, Flavour.BIBLATEX), "biblatex");
      Set<String> variables = new TreeSet<>();
      for (String difference : differences(ours, theirs)) {
        String names = difference.substring(difference.lastIndexOf(": ") + 2);
        variables.addAll(List.of(names.split(", ")));
      }
      assertEquals(
          DIFFERENT.keySet(), variables, () -> String.join("\n", differences(ours, theirs)));
    }
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
