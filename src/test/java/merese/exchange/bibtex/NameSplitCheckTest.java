package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import merese.model.Name;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against a run of BibTeX 0.99d: checks/bibtex-name-split.tsv. Its first columns are a whole author
 * field and the number of a name in it, the others the parts that BibTeX took the name into.
 */
class NameSplitCheckTest {
  private static final Map<String, String> LETTERS =
      Map.of(
          "{\\'e}",
          "é",
          "{\\'E}",
          "É",
          "{\\OE}",
          "Œ",
          "{\\relax Ch}",
          "Ch",
          "\\BB",
          "BB",
          "\\bb",
          "bb");

  record Row(String field, int number, BibtexNameSplit parts, String sortKey) {
    @Override
    public String toString() {
      return field + ", name " + number;
    }
  }

  static Stream<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    try (InputStream in =
        NameSplitCheckTest.class.getResourceAsStream("/merese/checks/bibtex-name-split.tsv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : text.lines().skip(1).toList()) {
        String[] cells = line.split("\t", -1);
        rows.add(
            new Row(
                cells[0],
                Integer.parseInt(cells[1]),
                new BibtexNameSplit(cells[2], cells[3], cells[4], cells[5]),
                cells[6]));
      }
    }
    assertEquals(63, rows.size());
    return rows.stream();
  }

  /** The one row of names joined with "and"; taking a list apart is not ours to do. */
  private static String name(Row row) {
    return row.field().split(" and (?![^{]*\\})")[row.number() - 1];
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theSplitIsThatOfBibtex(Row row) {
    assertEquals(row.parts(), BibtexNameSplit.of(name(row)));
  }

  /**
   * The parts, read as plain letters, are a name of ours; written for BibTeX and taken apart again
   * they are the same parts. Braces that only guard are left out of the comparison.
   */
  @ParameterizedTest
  @MethodSource("rows")
  void aNameOfThesePartsIsReadAsTheseParts(Row row) {
    String written = BibtexNames.of(name(row.parts())).orElseThrow();
    assertEquals(
        plainParts(row.parts()), plainParts(BibtexNameSplit.of(written)), () -> "from " + written);
  }

  /** What BibTeX takes for one last name with spaces in braces is a body to us. */
  static Name name(BibtexNameSplit read) {
    BibtexNameSplit parts = plainParts(read);
    return read.last().matches("\\{.* .*\\}") && read.first().isEmpty()
        ? new Name.Body(parts.last())
        : new Name.Person(parts.last(), some(parts.first()), some(parts.von()), some(parts.jr()));
  }

  static BibtexNameSplit plainParts(BibtexNameSplit parts) {
    return map(parts, NameSplitCheckTest::plain);
  }

  private static BibtexNameSplit map(BibtexNameSplit parts, Function<String, String> change) {
    return new BibtexNameSplit(
        change.apply(parts.first()),
        change.apply(parts.von()),
        change.apply(parts.last()),
        change.apply(parts.jr()));
  }

  private static Optional<String> some(String part) {
    return Optional.of(part).filter(p -> !p.isEmpty());
  }

  /** Letters for their commands, without braces that only guard. */
  static String plain(String latex) {
    String plain = latex;
    for (Map.Entry<String, String> letter : LETTERS.entrySet()) {
      plain = plain.replace(letter.getKey(), letter.getValue());
    }
    return plain.replace("{", "").replace("}", "");
  }
}
