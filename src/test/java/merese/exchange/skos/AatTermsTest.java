package merese.exchange.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import merese.exchange.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AatTermsTest {
  private static final String HEAD = "aat_id\tfacet\tterms\n";

  private static AatTerms read(String table) throws IOException {
    return AatTerms.read(
        "aat.tsv", new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)));
  }

  /** 152 concepts: SOURCES.md beside the table. */
  @Test
  void theWholeTableIsRead() throws IOException {
    try (InputStream in =
        Files.newInputStream(Path.of("src/test/resources/merese/checks/aat-glass-terms.tsv"))) {
      List<AatTerms.AatConcept> concepts = AatTerms.read("aat-glass-terms.tsv", in).concepts();
      assertEquals(152, concepts.size());
      AatTerms.AatConcept first = concepts.get(0);
      assertEquals("reverse painting on glass", first.preferred());
      assertEquals("http://vocab.getty.edu/aat/300053366", first.uri());
      assertEquals("activities", first.facet());
      assertEquals(4, first.terms().size());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "300010797\\tmaterials | aat.tsv:3:1: the line has 2 columns instead of 3; put one tab"
            + " between aat_id, facet, terms, and none elsewhere",
        "30001079\\tmaterials\\tglass | aat.tsv:3:1: \"30001079\" is no number of the thesaurus; it"
            + " has nine figures and begins with 300",
        "300010175\\tx\\tglass | aat.tsv:3:1: 300010175 stands in line 2 already; make one line of"
            + " the two",
      })
  void aLineThatIsWrongIsNamed(String line, String said) {
    String table = HEAD + "300010175\tphysical attributes\tgadrooning\n";
    String row = line.replace("\\t", "\t");
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> read(table + row + "\n"));
    assertEquals(said, refused.getMessage());
  }

  @Test
  void aTermThatIsMissingIsNamedWithItsColumn() {
    UnreadableException refused =
        assertThrows(
            UnreadableException.class, () -> read(HEAD + "300010797\tx\tglass | | verre\n"));
    assertEquals(
        "aat.tsv:2:20: a term is missing; put a term before and after each bar",
        refused.getMessage());
  }

  @Test
  void aTableWithoutItsNamesOfColumnsIsRefused() {
    assertEquals(
        "aat.tsv:1:8: the first line has \"terms\" where \"facet\" is to stand; name the columns"
            + " aat_id, facet, terms, with tabs between",
        assertThrows(UnreadableException.class, () -> read("aat_id\tterms\n")).getMessage());
    assertEquals(
        "aat.tsv:1:1: the table is empty; its first line names its columns: aat_id, facet, terms",
        assertThrows(UnreadableException.class, () -> read("# nothing\n")).getMessage());
  }

  @Test
  void aFileOfAnotherSortIsNotPrintedWhole() {
    String table = "00834nam\u001e a2200229 i 4500" + "0010007".repeat(1000);
    assertEquals(
        "aat.tsv:1:1: the first line has \"00834nam\ufffd a2200229 i 4500001000700100070…\" where"
            + " \"aat_id\" is to stand; name the columns aat_id, facet, terms, with tabs between",
        assertThrows(UnreadableException.class, () -> read(table)).getMessage());
  }

  @Test
  void allAddressesOfAConceptAreKnownForIts() {
    for (String uri :
        List.of(
            "http://vocab.getty.edu/aat/300010175",
            "https://vocab.getty.edu/aat/300010175/",
            "http://vocab.getty.edu/page/aat/300010175")) {
      assertEquals(Optional.of("300010175"), AatTerms.idOf(uri), uri);
    }
    for (String uri :
        List.of("http://vocab.getty.edu/aat/", "http://vocab.getty.edu/tgn/300010175", "x")) {
      assertEquals(Optional.empty(), AatTerms.idOf(uri), uri);
    }
  }
}
