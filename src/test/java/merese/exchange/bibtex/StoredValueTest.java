package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule for values that {@link StoredValue} states. */
class StoredValueTest {
  private static String stored(String afterTheEqualsSign) {
    Handed handed = Handed.read("@misc{a, x = " + afterTheEqualsSign + "}");
    assertEquals(List.of(), handed.refused, afterTheEqualsSign);
    return handed.sources.get(0).received().field("x").orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{Stems}               | Stems",
        "\" Stems \"           | Stems",
        "1961                  | 1961",
        "JUL                   | jul",
        "{jul}                 | \"jul\"",
        "{\"jul\"}             | \"\"jul\"\"",
        "{Jul}                 | Jul",
        "\"10~\" # jan         | {10~} # jan",
        "jun # \"-\" # aug     | jun # {-} # aug",
        "jun # { } # aug       | jun # { } # aug",
        "{a # {b}}             | \"a # {b}\"",
        "{a # }                | a #",
        "{{a} # {b}}           | {a} # {b}",
        "acm                   | acm # {}",
        "acm # { and } # {ox}  | acm # { and ox}",
        "{\"}                  | \"",
        "{\"\"}                | \"\"",
      })
  void isStored(String written, String stored) {
    assertEquals(stored, stored(written));
    assertEquals(stored, stored(StoredValue.written(stored)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "jul | July",
        "{10~} # jan | 10~January",
        "\"jul\" | jul",
        "acm # {} | ",
        "jul # acm | ",
      })
  void saysInWords(String stored, String text) {
    assertEquals(Optional.ofNullable(text), StoredValue.text(stored));
  }

  @Provide
  Arbitrary<String> values() {
    Arbitrary<String> names = Arbitraries.of("jan", "DEC", "acm", "a:b", "1961");
    Arbitrary<String> inside =
        Arbitraries.of(
            "jul", "a", " ", "#", " # ", "\"\"", "{b}", "{ # jul}", "=", "'", "\t", "x y");
    Arbitrary<String> texts =
        inside.list().ofMaxSize(6).map(parts -> "{" + String.join("", parts) + "}");
    return Arbitraries.oneOf(names, texts)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(pieces -> pieces.stream().collect(Collectors.joining(" # ")));
  }

  @Property(tries = 2000, seed = "1")
  void whatIsWrittenIsReadAsTheSame(@ForAll("values") String written) {
    String stored = stored(written);
    assertEquals(stored, stored(StoredValue.written(stored)));
  }
}
