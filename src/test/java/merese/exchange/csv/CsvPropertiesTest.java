package merese.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Received;
import merese.model.Name;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

class CsvPropertiesTest {
  @Provide
  Arbitrary<String> cells() {
    return Arbitraries.strings().ofMaxLength(10).withChars("ab'\"=+-@,;\t\r\n é｛＝".toCharArray());
  }

  @Provide
  Arbitrary<String> words() {
    return Arbitraries.strings()
        .ofMinLength(1)
        .ofMaxLength(8)
        .withChars("ABab ,;{}\\&.é".toCharArray())
        .filter(s -> !s.isBlank() && s.equals(s.strip()) && !s.contains("  "))
        .map(s -> s);
  }

  @Provide
  Arbitrary<Name> names() {
    Arbitrary<Optional<String>> some =
        Arbitraries.oneOf(words(), Arbitraries.of("Jr", "van der", "De La", "1901", "Museum"))
            .optional();
    Arbitrary<String> family =
        Arbitraries.oneOf(words(), Arbitraries.of("van Gogh", "Glass and Sons", "Thorne & Co"));
    return Arbitraries.oneOf(
        family.map(Name.Body::new),
        Combinators.combine(family, some, some, some)
            .as((f, given, particle, suffix) -> new Name.Person(f, given, particle, suffix)));
  }

  @Property(seed = "1")
  void aCellMadeHarmlessIsGotBack(@ForAll("cells") String cell) {
    assertEquals(cell, FormulaCells.undone(FormulaCells.harmless(cell)));
  }

  /** Neither the whole nor what stands behind a separator in it. */
  @Property(seed = "1")
  void aCellMadeHarmlessDoesNotRun(@ForAll("cells") String cell) {
    String harmless = FormulaCells.harmless(cell);
    assertFalse(harmless.matches("(?s)[=+\\-@＝\t\r\n].*"), harmless);
    assertFalse(harmless.matches("(?s).*[,;\t\r\n]\"*[=+\\-@＝].*"), harmless);
  }

  @Property(seed = "1")
  void namesAreReadAsTheyWereWritten(@ForAll("names") Name one, @ForAll("names") Name two) {
    String cell = NameCell.written(List.of(one, two));
    assertEquals(List.of(one, two), NameCell.read(cell), cell);
  }

  @Property(seed = "1")
  void listsAreReadAsTheyWereWritten(@ForAll("words") String one, @ForAll("words") String two) {
    String cell = CellList.joined(List.of(one, two));
    assertEquals(List.of(one, two), CellList.texts(cell), cell);
  }

  /** Tables written by commons-csv, which we did not write, have the same cells to us. */
  @Property(seed = "1")
  void aTableHasTheCellsThatAnotherProgramWrote(
      @ForAll("cells") String one,
      @ForAll("cells") String two,
      @ForAll("cells") String three,
      @ForAll("formats") CSVFormat format)
      throws IOException {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      printer.printRecord("a" + one, two, three);
      printer.printRecord("b", three, two);
    }
    RowSplitter rows =
        new RowSplitter(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
    rows.expect(format.getDelimiterString().charAt(0), 3);
    assertEquals(List.of("a" + one, two, three), rows.next().cells());
    assertEquals(List.of("b", three, two), rows.next().cells());
    assertEquals(null, rows.next());
  }

  @Provide
  Arbitrary<CSVFormat> formats() {
    return Combinators.combine(
            Arbitraries.of(',', ';', '\t'),
            Arbitraries.of("\r\n", "\n", "\r"),
            Arbitraries.of(QuoteMode.ALL, QuoteMode.MINIMAL))
        .as(
            (separator, end, quotes) ->
                CSVFormat.RFC4180
                    .builder()
                    .setDelimiter(separator)
                    .setRecordSeparator(end)
                    .setQuoteMode(quotes)
                    .get());
  }

  /** Whatever happens to one row, the others come in. */
  @Property(seed = "1")
  void aBrokenRowCostsNoOther(
      @ForAll @IntRange(min = 1, max = 7) int which,
      @ForAll @IntRange(max = 30) int from,
      @ForAll @IntRange(max = 6) int length,
      @ForAll("damage") String with) {
    List<String> rows = new ArrayList<>();
    rows.add("Key,Title,Author,Year,Place");
    for (int i = 1; i < 8; i++) {
      rows.add("k" + i + ",Glass,A;B,1949,London");
    }
    String row = rows.get(which);
    int start = Math.min(from, row.length());
    int end = Math.min(start + length, row.length());
    rows.set(which, row.substring(0, start) + with + row.substring(end));
    Received received = Received.of(new CsvReader(), String.join("\n", rows));
    List<String> keys = received.sources().stream().map(s -> s.key().orElse("")).toList();
    for (int i = 1; i < 8; i++) {
      assertTrue(i == which || keys.contains("k" + i), received.text());
    }
  }

  @Provide
  Arbitrary<String> damage() {
    return Arbitraries.strings().ofMaxLength(6).withChars("\",;x é\r\n".toCharArray());
  }

  /** No exception and no end, and each filled row is a source or refused. */
  @Property(seed = "1")
  void anyBytesAreReadToTheirEnd(@ForAll("nearlyCsv") String text, @ForAll byte[] noise) {
    byte[] start = ("Title,Author" + text).getBytes(StandardCharsets.UTF_8);
    byte[] all = new byte[start.length + noise.length];
    System.arraycopy(start, 0, all, 0, start.length);
    System.arraycopy(noise, 0, all, start.length, noise.length);
    Received received = Received.of(new CsvReader(), all);
    received
        .sources()
        .forEach(s -> assertEquals(s.work(), CsvMeaning.of(s.received()).orElseThrow().work()));
  }

  @Provide
  Arbitrary<String> nearlyCsv() {
    return Arbitraries.of(
            "\n", "\r", "\r\n", ",", ";", "\"", "\"\"", "x", "'=", "{", "\\", "é", " ")
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Property(seed = "1")
  void everyLetterIsInASourceOrARefusal(@ForAll("nearlyCsv") String text) {
    Received received = Received.of(new CsvReader(), "Title,Author\n" + text);
    int sources =
        received.sources().stream()
            .flatMap(s -> s.received().fields().stream())
            .mapToInt(f -> letters(f.value()))
            .sum();
    int refused =
        received.refusals().stream()
            .mapToInt(r -> letters(new String(r.verbatim(), StandardCharsets.UTF_8)))
            .sum();
    assertEquals(letters(text), sources + refused, received::text);
  }

  private static int letters(String text) {
    return (int) text.chars().filter(c -> c == 'x' || c == 'é').count();
  }
}
