package merese.exchange.csv;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.csv.CsvExplanation.Use;
import merese.exchange.csv.CsvExplanation.Why;

/** What each column of a file is taken as. */
final class HeaderRow {
  private final List<Use> uses = new ArrayList<>();
  private final List<Optional<Column>> columns = new ArrayList<>();
  private final Set<Column> taken = EnumSet.noneOf(Column.class);
  private final Set<String> fields = new HashSet<>();

  HeaderRow(List<String> headers, CsvMapping mapping) {
    List<Optional<Optional<Column>>> mapped = headers.stream().map(mapping::column).toList();
    for (int i = 0; i < headers.size(); i++) {
      add(headers.get(i).strip(), mapped.get(i), i + 1);
    }
  }

  private void add(String header, Optional<Optional<Column>> mapped, int number) {
    if (header.isEmpty()) {
      keep(header, "Column " + number, Why.NO_HEADER);
      return;
    }
    Optional<Column> column = mapped.orElseGet(() -> Column.named(header));
    if (column.isEmpty()) {
      keep(header, header, mapped.isPresent() ? Why.LEFT_OUT : Why.UNKNOWN);
      return;
    }
    if (!taken.add(column.get()) && !column.get().isList()) {
      keep(header, header, Why.TAKEN);
      return;
    }
    String field = column.get().header();
    Why named = field.equals(header) ? Why.OWN_NAME : Why.OTHER_NAME;
    uses.add(new Use(header, field, true, mapped.isPresent() ? Why.MAPPING : named));
    columns.add(column);
  }

  /** Under a name that is neither one of ours nor that of another column. */
  private void keep(String header, String name, Why why) {
    String field = name;
    for (int n = 2; Column.named(field).isPresent() || !fields.add(field); n++) {
      field = name + " (" + n + ")";
    }
    uses.add(new Use(header, field, false, why));
    columns.add(Optional.empty());
  }

  int width() {
    return uses.size();
  }

  boolean hasTitle() {
    return taken.contains(Column.TITLE);
  }

  String field(int index) {
    return uses.get(index).field();
  }

  Optional<Column> column(int index) {
    return columns.get(index);
  }

  CsvExplanation explained(char separator) {
    List<String> missing = new ArrayList<>();
    for (Column column : Column.values()) {
      if (!taken.contains(column)) {
        missing.add(column.header());
      }
    }
    return new CsvExplanation(Separator.name(separator), uses, missing);
  }
}
