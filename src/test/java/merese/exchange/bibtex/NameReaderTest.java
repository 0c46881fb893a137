package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import merese.model.Name;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NameReaderTest {
  private static List<Name> names(String field) {
    return NameReader.read(field).names();
  }

  /** A run of BibTeX 0.99d: checks/bibtex-name-split.tsv, with its parts as plain text. */
  @Nested
  class AsBibtexTakesThemApart {
    static Stream<NameSplitCheckTest.Row> rows() throws IOException {
      return NameSplitCheckTest.rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void hasThoseParts(NameSplitCheckTest.Row row) {
      List<Name> names = names(row.field());
      if (row.parts().last().equals("others")) {
        assertEquals(row.number() - 1, names.size());
      } else {
        assertEquals(expected(row.parts()), names.get(row.number() - 1));
      }
    }

    private static Name expected(BibtexNameSplit read) {
      BibtexNameSplit parts =
          new BibtexNameSplit(
              plain(read.first()), plain(read.von()), plain(read.last()), plain(read.jr()));
      return read.last().startsWith("{") && read.first().isEmpty() && read.von().isEmpty()
          ? new Name.Body(parts.last())
          : new Name.Person(parts.last(), some(parts.first()), some(parts.von()), some(parts.jr()));
    }

    /** A command that LaTeX does not know prints its argument alone. */
    private static String plain(String latex) {
      return NameSplitCheckTest.plain(latex.replace("\\BB", "").replace("\\bb", ""));
    }

    private static Optional<String> some(String part) {
      return Optional.of(part).filter(p -> !p.isEmpty());
    }

    /** BibTeX's own: the plain letters of von and last, then each first letter, then jr. */
    @ParameterizedTest
    @MethodSource("rows")
    void hasThatSortKey(NameSplitCheckTest.Row row) {
      boolean commands = row.field().contains("\\bb") || row.field().contains("\\BB");
      if (commands || row.field().contains("\\relax") || row.sortKey().equals("others")) {
        return; // purify$ has rules of its own for these
      }
      assertEquals(row.sortKey(), sortKey(names(row.field()).get(row.number() - 1)));
    }

    private static String sortKey(Name name) {
      if (name instanceof Name.Person person) {
        StringBuilder key = new StringBuilder(person.shortForm());
        for (String word : person.given().orElse("").split("[ -]")) {
          String first = purified(word).replaceAll("[^a-z]", ""); // a digit is no initial
          key.append(' ')
              .append(word.startsWith("Œ") ? "oe" : first.isEmpty() ? "" : first.substring(0, 1));
        }
        return purified(key + " " + person.suffix().orElse("")).strip().replaceAll(" +", " ");
      }
      return purified(name.full()).strip();
    }

    private static String purified(String text) {
      return Normalizer.normalize(text.replace("Œ", "oe"), Normalizer.Form.NFD)
          .replace('-', ' ')
          .replaceAll("[^A-Za-z0-9 ]", "")
          .toLowerCase(Locale.ROOT);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "family=Hoeck, given=Pieter, prefix=van der | van der Hoeck, Pieter",
        "given={Jean Pierre Simon}, given-i={JPS}, family=Vire | Vire, Jean Pierre Simon",
        "given=Lucius, family=Varnell, suffix={Jr} | Varnell, Lucius, Jr",
        "\"family={Hoeck, the elder}\", given=Pieter | Hoeck, the elder, Pieter",
        "Family = Farrow | Farrow",
        "family=Hoeck, prefix=van, useprefix=false | van Hoeck",
      })
  void theExtendedFormatOfBiblatexIsRead(String field, String filed) {
    Name.Person person = (Name.Person) names(field).get(0);
    assertEquals(
        filed,
        person.shortForm()
            + person.given().map(g -> ", " + g).orElse("")
            + person.suffix().map(s -> ", " + s).orElse(""));
  }

  @Test
  void listsAreCutAtTheWordAndOutsideBraces() {
    assertEquals(
        "[Ada Yelland, Weeden and Sons, Hugh Farrow, Anderson And]",
        names("Yelland, Ada AND {Weeden and Sons} and\tHugh Farrow and Anderson {And} and others")
            .stream()
            .map(Name::full)
            .toList()
            .toString());
  }

  @Test
  void aNameOfOneAccentedLetterAndMoreIsNoBody() {
    assertEquals(
        new Name.Person("Zola", Optional.of("Émile"), Optional.empty(), Optional.empty()),
        names("{\\'E}mile Zola").get(0));
  }

  @Test
  void tooManyCommasAreRemarkedOn() {
    NameReader.Names read = NameReader.read("Smith, Jr, Ada, PhD");
    assertEquals(List.of("A name has more than 2 commas: Smith, Jr, Ada, PhD"), read.remarks());
    assertEquals(1, read.names().size());
  }

  @Test
  void namesBeyondAThousandAreLeftInTheRecord() {
    NameReader.Names read = NameReader.read("Yelland, Ada" + " and Farrow, Hugh".repeat(1000));
    assertEquals(1000, read.names().size());
    assertTrue(read.remarks().get(0).contains("1001 names"), read.remarks().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {", | 0", "'' | 0", "{} | 0", "and | 0", ", Ada | 1", "and and and | 0", "{{}} | 0"})
  void whatHasNoLetterNamesNobody(String field, int count) {
    assertEquals(count, names(field).size());
  }
}
