package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * A table that may be too wide: it can be turned, and be parted into several.
 *
 * @param corner what stands over the names of the rows
 * @param cells row by row, each as long as there are columns; "" for an empty one
 */
record Grid(String corner, List<String> columns, List<String> rows, List<List<String>> cells) {

  /** Columns for rows. */
  Grid turned(String newCorner) {
    List<List<String>> turned = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      List<String> row = new ArrayList<>();
      for (List<String> each : cells) {
        row.add(each.get(column));
      }
      turned.add(row);
    }
    return new Grid(newCorner, /* columns= */ rows, /* rows= */ columns, turned);
  }

  /** All that is in a column, its heading included. */
  List<String> column(int index) {
    List<String> all = new ArrayList<>();
    all.add(columns.get(index));
    cells.forEach(row -> all.add(row.get(index)));
    return all;
  }

  /**
   * Parts it by columns, as few parts as will do when they are taken in their order. Rows that have
   * nothing in a part are left out of it.
   *
   * @param room what the columns of one part may take in all
   * @param needs what a column takes; one that takes more than the room has a part of its own
   */
  List<Grid> parts(int room, ToIntFunction<List<String>> needs) {
    List<Grid> parts = new ArrayList<>();
    List<Integer> chosen = new ArrayList<>();
    int used = 0;
    for (int i = 0; i < columns.size(); i++) {
      int need = needs.applyAsInt(column(i));
      if (!chosen.isEmpty() && used + need > room) {
        parts.add(only(chosen));
        chosen = new ArrayList<>();
        used = 0;
      }
      chosen.add(i);
      used += need;
    }
    if (!chosen.isEmpty()) {
      parts.add(only(chosen));
    }
    return parts;
  }

  private Grid only(List<Integer> chosen) {
    List<String> names = new ArrayList<>();
    List<List<String>> kept = new ArrayList<>();
    List<String> headings = new ArrayList<>();
    chosen.forEach(i -> headings.add(columns.get(i)));
    for (int row = 0; row < rows.size(); row++) {
      List<String> some = new ArrayList<>();
      Set<String> different = new LinkedHashSet<>();
      for (int column : chosen) {
        some.add(cells.get(row).get(column));
        different.add(cells.get(row).get(column));
      }
      if (!different.equals(Set.of(""))) {
        names.add(rows.get(row));
        kept.add(some);
      }
    }
    return new Grid(corner, headings, names, kept);
  }
}
