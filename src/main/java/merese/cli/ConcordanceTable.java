package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.Concordance.Row;
import merese.model.Locator;

/** A concordance as a table: sources by concepts, each cell with its terms and places. */
final class ConcordanceTable {
  /** Stands before the places where something is pictured. */
  static final String PICTURED = "▣";

  /** Stands behind a source that is counted with another. */
  static final String FOLDED = "+";

  static final String SOURCES = "Source";
  static final String CONCEPTS = "Concept";

  private ConcordanceTable() {}

  static Grid of(Concordance answer) {
    List<String> columns = new ArrayList<>();
    answer.concepts().forEach(c -> columns.add(concept(c)));
    List<String> rows = new ArrayList<>();
    List<List<String>> cells = new ArrayList<>();
    for (Row row : answer.rows()) {
      rows.add(row.source().reference() + (row.independent() ? "" : " " + FOLDED));
      List<String> line = new ArrayList<>();
      answer.concepts().forEach(c -> line.add(cell(row.terms(c.id()))));
      cells.add(line);
    }
    return new Grid(SOURCES, columns, rows, cells);
  }

  static String concept(Heading heading) {
    return EntryText.label(heading);
  }

  /** Each term on a line of its own and its places on the next. */
  static String cell(List<Passage> terms) {
    StringBuilder cell = new StringBuilder();
    for (Passage term : terms) {
      cell.append(cell.isEmpty() ? "" : "\n").append(term(term));
      String places = places(term);
      cell.append(places.isEmpty() ? "" : "\n").append(places);
    }
    return cell.toString();
  }

  private static String term(Passage term) {
    String words =
        term.printed().isEmpty() ? "not named" : "“" + String.join("”, “", term.printed()) + "”";
    return term.narrower() ? words + " (narrower: " + term.concept().get().label() + ")" : words;
  }

  private static String places(Passage term) {
    List<String> places = new ArrayList<>();
    if (!term.pictured().isEmpty()) {
      places.add(PICTURED + " " + joined(term.pictured()));
    }
    if (!term.inWords().isEmpty()) {
      places.add(joined(term.inWords()));
    }
    return String.join("; ", places);
  }

  private static String joined(List<Locator> locators) {
    List<String> texts = new ArrayList<>();
    locators.forEach(l -> texts.add(l.toString()));
    return String.join("; ", texts);
  }
}
