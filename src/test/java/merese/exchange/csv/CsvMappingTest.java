package merese.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import merese.exchange.Incoming;
import merese.exchange.Received;
import merese.exchange.Sources;
import merese.exchange.UnreadableException;
import merese.exchange.csv.CsvExplanation.Why;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CsvMappingTest {
  private static final String TABLE =
      "Verfasser;Herausgeber;Titel;Comments;Type\nMeer, A;See, B;Glas;alt;Buch\n";

  private static final String MAPPING =
      "Their header,Our column\nVerfasser,Author\nherausgeber,author\nTitel,Title\nType,-\n";

  private static ByteArrayInputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private static CsvMapping mapping(String text) throws IOException {
    return CsvMapping.read("columns.csv", stream(text));
  }

  @Test
  void saysWhichColumnIsWhich() throws Exception {
    Incoming source =
        Received.of(new CsvReader(mapping(MAPPING)), TABLE).sources().get(0);
    assertEquals("Glas", source.work().title());
    assertEquals(
        List.of("A Meer", "B See"),
        source.work().contributors().stream().map(c -> c.name().full()).toList());
    assertEquals("Buch", source.received().field("Type (2)").orElseThrow());
  }

  @Test
  void isNotNeededToReadTheRecordAgain() throws Exception {
    Received received = Received.of(new CsvReader(mapping(MAPPING)), TABLE);
    Incoming source = received.sources().get(0);
    assertEquals(source.work(), CsvMeaning.of(source.received()).orElseThrow().work());
    String out = Sources.written(new CsvWriter(), Sources.of(received));
    Incoming again = Received.of(new CsvReader(), out).sources().get(0);
    assertEquals(source.work().contributors(), again.work().contributors());
    assertEquals("Buch", again.received().field("Type (2)").orElseThrow());
  }

  @Test
  void mayBeATableWithSemicolonsAndNoFirstRow() throws Exception {
    assertEquals(
        "Glas",
        Received.of(new CsvReader(mapping("Titel;Title\n")), TABLE)
            .sources()
            .get(0)
            .work()
            .title());
  }

  @Test
  void isExplainedColumnByColumn() throws Exception {
    CsvExplanation explained =
        new CsvReader(mapping(MAPPING))
            .explain(stream("Verfasser;Titel;Author;Year;year;Comments;;Type;isbn-13\n"))
            .orElseThrow();
    assertEquals("semicolon", explained.separator());
    assertEquals(
        List.of(
            new CsvExplanation.Use("Verfasser", "Author", true, Why.MAPPING),
            new CsvExplanation.Use("Titel", "Title", true, Why.MAPPING),
            new CsvExplanation.Use("Author", "Author", true, Why.OWN_NAME),
            new CsvExplanation.Use("Year", "Year", true, Why.OWN_NAME),
            new CsvExplanation.Use("year", "year (2)", false, Why.TAKEN),
            new CsvExplanation.Use("Comments", "Comments", false, Why.UNKNOWN),
            new CsvExplanation.Use("", "Column 7", false, Why.NO_HEADER),
            new CsvExplanation.Use("Type", "Type (2)", false, Why.LEFT_OUT),
            new CsvExplanation.Use("isbn-13", "ISBN", true, Why.OTHER_NAME)),
        explained.columns());
    assertEquals(List.of("Key", "Kind", "Subtitle"), explained.missing().subList(0, 3));
  }

  @Nested
  class ThatIsWrong {
    private static void isRefused(String text, String message) {
      assertEquals(
          message, assertThrows(UnreadableException.class, () -> mapping(text)).getMessage());
    }

    @Test
    void namesTheColumnThatWasMeant() {
      isRefused(
          "Titel,Title\nVerfasser,Autor\n",
          "columns.csv:2: no column of ours is called “Autor”; did you mean “Author”?");
    }

    @Test
    void namesTheLineWithoutTwoCells() {
      isRefused(
          "Titel,Title\nVerfasser\n",
          "columns.csv:2: the row has 1 filled cells instead of two; write a header of the table,"
              + " a comma and our column");
      isRefused(
          "Titel,Title\na,Author,b\n",
          "columns.csv:2: the row has 3 filled cells instead of two; write a header of the table,"
              + " a comma and our column");
    }

    @Test
    void namesTheLineThatItContradicts() {
      isRefused(
          "Titel,Title\nTITEL,Subtitle\n",
          "columns.csv:2: “TITEL” stands in line 1 already; delete one of the two");
    }

    @Test
    void namesTheLineOfAQuotationMark() {
      isRefused(
          "Titel,Title\n\"x,Author\n",
          "columns.csv:2: the row cannot be read; write a header of the table, a comma and our"
              + " column");
    }

    @Test
    void isNotEmpty() {
      isRefused(
          "",
          "columns.csv:1: the file is empty; write a header of the table and our column in each"
              + " row");
    }
  }
}
