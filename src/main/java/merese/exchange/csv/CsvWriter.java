package merese.exchange.csv;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.RecordWriter;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a table: a row a source, sorted by key, with all our columns and, after them, the columns
 * without a home of what came as CSV.
 *
 * <p>RFC 4180, so with CR and LF at the end of a row. It begins with a byte-order mark: without it,
 * spreadsheets on Windows take UTF-8 for Windows-1252 and spoil every accent. Cells that a
 * spreadsheet would run are made harmless ({@link FormulaCells}).
 *
 * <p>A cell that came as CSV goes out as it came, but for what has been changed in the library
 * since. A key that came goes out again; the second of two sources that came under one key, and one
 * that came without, have the library's.
 */
public final class CsvWriter implements RecordWriter {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setQuoteMode(org.apache.commons.csv.QuoteMode.MINIMAL).get();

  /** The cells of a row under our columns, and under others by their names. */
  private record Row(Map<Column, String> ours, Map<String, String> others) {}

  @Override
  public void write(Collection<Outgoing> sources, List<ReceivedRecord> kept, Writer out)
      throws IOException {
    Collection<Row> rows = rows(sources);
    Set<String> others = new LinkedHashSet<>();
    rows.forEach(row -> others.addAll(row.others().keySet()));
    out.append(BYTE_ORDER_MARK);
    CSVPrinter printer = new CSVPrinter(out, FORMAT);
    List<String> cells = new ArrayList<>();
    for (Column column : Column.values()) {
      cells.add(column.header());
    }
    others.forEach(name -> cells.add(FormulaCells.harmless(name)));
    printer.printRecord(cells);
    for (Row row : rows) {
      cells.clear();
      for (Column column : Column.values()) {
        cells.add(FormulaCells.harmless(row.ours().getOrDefault(column, "")));
      }
      for (String name : others) {
        cells.add(FormulaCells.harmless(row.others().getOrDefault(name, "")));
      }
      printer.printRecord(cells);
    }
    printer.flush();
  }

  private static Collection<Row> rows(Collection<Outgoing> sources) {
    TreeMap<String, Row> sorted = new TreeMap<>();
    List<Outgoing> ordered = new ArrayList<>(sources);
    ordered.sort(Comparator.comparing(Outgoing::id));
    Set<String> taken = new HashSet<>();
    for (Outgoing source : ordered) {
      Row row = row(source);
      String key = row.ours().get(Column.KEY);
      if (!taken.add(key)) {
        key = source.id();
        for (int n = 2; !taken.add(key); n++) {
          key = source.id() + "-" + n;
        }
        row.ours().put(Column.KEY, key);
      }
      sorted.put(key, row);
    }
    return sorted.values();
  }

  private static Row row(Outgoing source) {
    Map<Column, String> made = RowMaker.cells(source);
    Optional<ReceivedRecord> received =
        source.edition().received().stream()
            .filter(r -> r.format().equals(CsvMeaning.FORMAT))
            .findFirst();
    if (source.part().isPresent() || received.isEmpty()) {
      return new Row(made, Map.of());
    }
    ReceivedRecord record = received.get();
    if (!record.id().isEmpty()) {
      made.put(Column.KEY, record.id());
    }
    Work now = source.work().withOnly(source.edition());
    Optional<CsvMeaning> then = CsvMeaning.of(record);
    Set<Aspect> changed =
        then.isEmpty() ? EnumSet.allOf(Aspect.class) : Aspect.differing(now, then.get().work());
    if (!changed.isEmpty() && !CsvMeaning.hasTitle(record)) {
      changed.add(Aspect.TITLE); // what it was supplied from may be what has changed
    }
    Map<Column, String> came = new EnumMap<>(Column.class);
    Map<String, String> others = new LinkedHashMap<>();
    for (Field field : record.fields()) {
      Column column = Column.ofField(field.name());
      if (column != null) {
        came.putIfAbsent(column, field.value());
      } else {
        others.putIfAbsent(field.name(), field.value());
      }
    }
    Map<Column, String> cells = new EnumMap<>(Column.class);
    for (Column column : Column.values()) {
      boolean fromLibrary = column.aspect().map(changed::contains).orElse(true);
      String cell = fromLibrary ? made.get(column) : came.get(column);
      if (cell != null) {
        cells.put(column, cell);
      }
    }
    return new Row(cells, others);
  }
}
