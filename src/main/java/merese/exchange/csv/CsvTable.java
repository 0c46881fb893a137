package merese.exchange.csv;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes any table as sources are written: RFC 4180 with a byte-order mark, and what a spreadsheet
 * would run made harmless ({@link FormulaCells}).
 */
public final class CsvTable {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setQuoteMode(org.apache.commons.csv.QuoteMode.MINIMAL).get();

  private CsvTable() {}

  public static void write(List<List<String>> rows, Writer out) throws IOException {
    out.append(BYTE_ORDER_MARK);
    CSVPrinter printer = new CSVPrinter(out, FORMAT);
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      row.forEach(cell -> cells.add(FormulaCells.harmless(cell)));
      printer.printRecord(cells);
    }
    printer.flush();
  }
}
