package merese.exchange.bibtex;

import java.util.List;
import java.util.Map;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/**
 * An entry without its key.
 *
 * @param fields by name, in their order, each as LaTeX
 */
record MadeEntry(String type, Map<String, String> fields) {
  /** The keywords that a source gets. */
  static String kind(Work work) {
    String kind = work.kind().words();
    return work.mine() ? kind + ", own work" : kind;
  }

  /** As a record that calls itself nothing. */
  ReceivedRecord asRecord(String format) {
    List<Field> all =
        fields.entrySet().stream().map(f -> new Field(f.getKey(), stored(f.getValue()))).toList();
    return new ReceivedRecord(format, type, "", all);
  }

  /** LaTeX as a value that is kept. */
  static String stored(String latex) {
    return StoredValue.of(List.of(StoredValue.Piece.text(latex)));
  }
}
