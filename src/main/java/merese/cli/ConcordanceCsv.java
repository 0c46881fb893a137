package merese.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.Concordance.Row;
import merese.exchange.csv.CsvTable;

/** The table of a concordance for a spreadsheet; what stands below it is left out. */
final class ConcordanceCsv {
  private ConcordanceCsv() {}

  static String of(Concordance answer) throws IOException {
    Grid grid = ConcordanceTable.of(answer);
    List<List<String>> rows = new ArrayList<>();
    List<String> header = new ArrayList<>(List.of("source", "key", "year", "independent"));
    header.addAll(grid.columns());
    rows.add(header);
    for (int i = 0; i < answer.rows().size(); i++) {
      Row row = answer.rows().get(i);
      List<String> cells = new ArrayList<>();
      cells.add(row.source().reference());
      cells.add(row.source().key());
      cells.add(
          row.source().year().isPresent() ? String.valueOf(row.source().year().getAsInt()) : "");
      cells.add(row.independent() ? "yes" : "no");
      cells.addAll(grid.cells().get(i));
      rows.add(cells);
    }
    StringWriter out = new StringWriter();
    CsvTable.write(rows, out);
    return out.toString();
  }
}
