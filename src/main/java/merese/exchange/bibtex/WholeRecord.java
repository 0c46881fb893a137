package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** A record that needs no other: what it takes over from others stands after its own fields. */
final class WholeRecord {
  private static final Set<String> REFERENCES = Set.of("crossref", "xdata");

  private WholeRecord() {}

  /** The record as it is where what it refers to is not known. */
  static ReceivedRecord of(
      ReceivedRecord record, Function<String, Optional<ReceivedRecord>> byKey) {
    Inheritance.Inherited inherited = Inheritance.of(record, byKey);
    List<Field> fields = new ArrayList<>();
    Set<String> own = new HashSet<>();
    for (Field field : record.fields()) {
      own.add(field.name());
      boolean known =
          REFERENCES.contains(field.name())
              && Inheritance.parents(List.of(field)).stream()
                  .noneMatch(inherited.missing()::contains);
      if (!known) {
        fields.add(field);
      }
    }
    for (Map.Entry<String, String> field : inherited.fields().entrySet()) {
      if (!own.contains(field.getKey())) {
        fields.add(new Field(field.getKey(), field.getValue()));
      }
    }
    return new ReceivedRecord(record.format(), record.type(), record.id(), fields);
  }
}
