package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import merese.change.concepts.AatLinks;
import merese.change.concepts.ConceptImport;
import merese.change.concepts.ConceptOptions;
import merese.change.concepts.ConceptResult;
import merese.exchange.skos.AatTerms;
import merese.exchange.skos.SkosReader;
import merese.exchange.skos.SkosReading;
import merese.store.LibraryFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How imports of concepts look, whole; {@code -Dscreens=write} writes the screens anew, to be read
 * before they are kept.
 */
class ConceptTextsTest {
  private static final Path SCREENS = Path.of("src/test/resources/merese/cli/concepts");
  private static final Path TABLE = Path.of("src/test/resources/merese/checks/aat-glass-terms.tsv");
  private static final boolean WRITE = "write".equals(System.getProperty("screens"));

  @TempDir private Path folder;

  private static SkosReading reading() throws IOException {
    try (InputStream in = Files.newInputStream(SCREENS.resolve("other-terms.ttl"))) {
      return SkosReader.usual().read("other-terms.ttl", in);
    }
  }

  private LibraryFolder library() {
    return LibraryFolder.create(folder, "Rings and knops");
  }

  private static void isPrinted(String name, int width, boolean all, ConceptResult result)
      throws IOException {
    StringWriter out = new StringWriter();
    Page page = new Page(new PrintWriter(out), new Screen(false, width, false));
    new ConceptImportText(page, all, result.mend().isPresent()).print(result);
    isShown(name, width, out.toString());
  }

  private static void isShown(String name, int width, String shown) throws IOException {
    Path file = SCREENS.resolve(name);
    if (WRITE) {
      Files.writeString(file, shown);
    }
    assertEquals(Files.readString(file), shown);
    for (String line : (Iterable<String>) shown.lines()::iterator) {
      assertTrue(Wrap.columns(line) <= width || line.strip().indexOf(' ') < 0, line);
    }
  }

  @Test
  void aPreviewHasCountsFirstAndWhatWillNotBeDoneApart() throws IOException {
    ConceptResult result =
        ConceptImport.plan(library(), reading(), ConceptOptions.usual()).result();
    isPrinted("preview-80.txt", 80, false, result);
    isPrinted("preview-40.txt", 40, false, result);
    isPrinted("preview-with-all-80.txt", 80, true, result);
  }

  @Test
  void whatIsDoneIsToldInThePast() throws IOException {
    ConceptResult result = ConceptImport.plan(library(), reading(), ConceptOptions.usual()).apply();
    isPrinted("done-80.txt", 80, false, result);
  }

  @Test
  void linksAreShownWithBothDefinitionsAndTheNotice() throws IOException {
    LibraryFolder library = library();
    try (InputStream in = Files.newInputStream(TABLE)) {
      AatTerms terms = AatTerms.read("aat-glass-terms.tsv", in);
      StringWriter out = new StringWriter();
      Page page = new Page(new PrintWriter(out), new Screen(false, 80, false));
      AatLinks links = AatLinks.plan(library, terms, Map.of("prunt", "broad:300155502"));
      new AatLinksText(page, true, false).print(links.result());
      isShown("links-80.txt", 80, out.toString());
    }
  }
}
