package merese.exchange.csv;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;
import merese.exchange.csv.RowSplitter.Flaw;
import merese.exchange.csv.RowSplitter.Row;
import merese.model.Slips;

/**
 * Which of their columns are which of ours, where the headers do not say so: a table of two
 * columns, made with whatever made the other one.
 *
 * <pre>
 * Their header,Our column
 * Verfasser,Author
 * Comments,-
 * </pre>
 *
 * <p>The first row may be left out. A dash leaves a column without a home. Each of their headers
 * comes once; several may be one of our columns that takes a list, such as Author.
 */
public final class CsvMapping {
  /** No headers but those that are known anyway. */
  public static final CsvMapping NONE = new CsvMapping(Map.of());

  private static final String NO_HOME = "-";

  private final Map<String, Optional<Column>> columns;

  private CsvMapping(Map<String, Optional<Column>> columns) {
    this.columns = columns;
  }

  /**
   * @param file as the user named it, for messages
   * @throws UnreadableException where it is not such a table, with the line
   * @throws IOException where the stream itself fails
   */
  public static CsvMapping read(String file, InputStream in) throws IOException {
    RowSplitter rows = new RowSplitter(Utf8Stream.of(in));
    byte[] first = rows.line();
    if (first == null) {
      throw wrong(file, 1, "the file is empty", "write a header of the table and our column in each row");
    }
    rows.expect(Separator.of(first, 2), -1);
    Map<String, Optional<Column>> columns = new LinkedHashMap<>();
    Map<String, Integer> lines = new HashMap<>();
    boolean isFirst = true;
    for (Row row = rows.next(); row != null; row = rows.next()) {
      String theirs = cell(file, row, 0);
      String ours = cell(file, row, 1);
      Optional<Column> column = Column.named(ours);
      boolean heading = isFirst && column.isEmpty() && Column.bare(ours).equals("ourcolumn");
      isFirst = false;
      if (heading) {
        continue;
      }
      if (column.isEmpty() && !ours.equals(NO_HOME)) {
        throw wrong(file, row.line(), "no column of ours is called “" + ours + "”",
            nearest(ours)
                .map(name -> "did you mean “" + name + "”?")
                .orElse("write one of " + all() + ", or - to leave the column without a home"));
      }
      Integer before = lines.putIfAbsent(Column.bare(theirs), row.line());
      if (before != null) {
        throw wrong(file, row.line(), "“" + theirs + "” stands in line " + before + " already",
            "delete one of the two");
      }
      columns.put(Column.bare(theirs), column);
    }
    return new CsvMapping(columns);
  }

  private static UnreadableException wrong(
      String file, int line, String what, String remedy) {
    return new UnreadableException(new FilePlace(file, line, 0, line), what, remedy);
  }

  private static String cell(String file, Row row, int index) {
    long filled = row.cells().stream().filter(c -> !c.isBlank()).count();
    boolean two = row.cells().size() >= 2 && filled == 2;
    if (row.flaw() != Flaw.NONE || !two || row.cells().get(0).isBlank()) {
      throw wrong(file, row.flaw() == Flaw.NONE ? row.line() : row.flawLine(),
          row.flaw() == Flaw.NONE
              ? "the row has " + filled + " filled cells instead of two"
              : "the row cannot be read",
          "write a header of the table, a comma and our column");
    }
    return row.cells().get(index).strip();
  }

  private static String all() {
    return Arrays.stream(Column.values()).map(Column::header).collect(Collectors.joining(", "));
  }

  private static Optional<String> nearest(String typed) {
    String bare = Column.bare(typed);
    String best = null;
    int least = 3;
    for (Column column : Column.values()) {
      int distance = Slips.between(bare, Column.bare(column.header()));
      if (distance < least) {
        least = distance;
        best = column.header();
      }
    }
    return Optional.ofNullable(best);
  }

  /** Empty where the mapping says nothing of a header; then its own name counts. */
  Optional<Optional<Column>> column(String header) {
    return Optional.ofNullable(columns.get(Column.bare(header)));
  }
}
