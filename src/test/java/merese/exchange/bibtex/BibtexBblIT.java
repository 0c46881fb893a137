package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import merese.exchange.Outgoing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What BibTeX makes of files that have been through a library, beside what it makes of them as they
 * are: the file of examples that comes with BibTeX (xampl.bib, O. Patashnik, 1988 and 2010), in the
 * style plain.
 */
class BibtexBblIT {
  /** Entries that come out otherwise, with the reason; there are none. */
  private static final Map<String, String> DIFFERENT = Map.of();

  @TempDir private Path folder;
  private String original;
  private BibLibrary library;

  @BeforeEach
  void read() throws Exception {
    original = check("xampl.bib");
    library = BibLibrary.read(original);
  }

  private static String check(String name) throws IOException {
    Path file = Path.of("src/test/resources/merese/checks", name);
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  /** The text that BibTeX makes of each entry, in its order. */
  private Map<String, String> bbl(String bib, String cited) throws Exception {
    Files.writeString(folder.resolve("all.bib"), bib);
    Files.writeString(
        folder.resolve("all.aux"),
        "\\relax\n\\citation{" + cited + "}\n\\bibdata{all}\n\\bibstyle{plain}\n");
    Program ran = Program.run(folder, "bibtex", "all");
    assertTrue(ran.code() < 2, ran.output());
    Map<String, String> items = new LinkedHashMap<>();
    String text = Files.readString(folder.resolve("all.bbl"), StandardCharsets.UTF_8);
    String[] parts = text.split("(?=\\\\bibitem\\{)|(?=\\\\end\\{thebibliography})");
    for (String part : parts) {
      items.put(part.substring(0, Math.max(0, part.indexOf('}') + 1)), part);
    }
    return items;
  }

  private List<String> keys() {
    return library.sources().stream().map(Outgoing::id).toList();
  }

  /** But for the order of those that the style files alike, which is that of the file. */
  @Test
  void allEntriesTogetherComeOutAsTheyAre() throws Exception {
    Map<String, String> expected = bbl(original, "*");
    Map<String, String> written = bbl(library.written(Flavour.BIBTEX), "*");
    assertEquals(36 + 2, expected.size()); // with the head and the foot
    assertEquals(expected, written);
  }

  @Test
  void eachEntryByItselfComesOutAsItIs() throws Exception {
    String written = library.written(Flavour.BIBTEX);
    Map<String, String> different = new TreeMap<>();
    for (String key : keys()) {
      if (!bbl(original, key).equals(bbl(written, key))) {
        different.put(key, "");
      }
    }
    assertEquals(DIFFERENT.keySet(), different.keySet());
  }

  /** BibTeX itself takes the fields over where only one entry of a whole is cited. */
  @Test
  void anEntryWithoutTheOneThatItRefersToIsWritenWhole() throws Exception {
    List<String> tried = new ArrayList<>();
    for (Outgoing source : library.sources()) {
      String alone = library.written(Flavour.BIBTEX, List.of(source));
      assertEquals(bbl(original, source.id()), bbl(alone, source.id()), source.id());
      if (source.edition().received().get(0).field("crossref").isPresent()) {
        assertFalse(alone.contains("crossref = "), alone);
        tried.add(source.id());
      }
    }
    assertEquals(5, tried.size());
  }

  /** A style that knows only what the original knows can print what was made for biblatex. */
  @Test
  void entriesOfBiblatexCanBeRead() throws Exception {
    BibLibrary modern = BibLibrary.read(check("biblatex-examples.bib"));
    String written = modern.written(Flavour.BIBTEX);
    Files.writeString(folder.resolve("all.bib"), written);
    Files.writeString(
        folder.resolve("all.aux"), "\\relax\n\\citation{*}\n\\bibdata{all}\n\\bibstyle{plain}\n");
    Program ran = Program.run(folder, "bibtex", "all");
    assertEquals(0, ran.code(), ran.output());
    assertEquals("", warnings(ran));
  }

  private static String warnings(Program ran) throws IOException {
    return String.join(
        "\n", ran.output().lines().filter(line -> line.startsWith("Warning")).toList());
  }
}
