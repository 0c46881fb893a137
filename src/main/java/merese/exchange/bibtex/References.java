package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** Which entries a record names, by what those called themselves where they came from. */
final class References {
  private static final Set<String> ONE = Set.of("crossref", "xref");
  private static final Set<String> SEVERAL = Set.of("xdata", "related", "entryset");

  /** The keys that entries go out with, by what they called themselves, folded. */
  private final Map<String, String> keys = new HashMap<>();

  /** The first of several that called themselves the same is the one that is meant. */
  void goesOut(String id, String key) {
    keys.putIfAbsent(BibtexKeys.folded(id), key);
  }

  boolean goesOut(String id) {
    return keys.containsKey(BibtexKeys.folded(id));
  }

  /** The entry that a record takes fields over from, if any. */
  static Optional<String> parent(ReceivedRecord record) {
    return record
        .field("crossref")
        .flatMap(StoredValue::text)
        .map(String::strip)
        .filter(id -> !id.isEmpty());
  }

  /** Of shared data, that which a record refers to; biblatex can refer to one field of it too. */
  static Set<String> used(ReceivedRecord record, Set<String> data) {
    Set<String> used = new HashSet<>();
    for (Field field : record.fields()) {
      if (field.name().equals("xdata")) {
        ids(field).stream().filter(data::contains).forEach(used::add);
      } else if (field.value().contains("xdata=")) {
        data.stream().filter(id -> field.value().contains("xdata=" + id)).forEach(used::add);
      }
    }
    return used;
  }

  static List<String> members(ReceivedRecord set) {
    return set.fields().stream()
        .filter(field -> field.name().equals("entryset"))
        .flatMap(field -> ids(field).stream())
        .toList();
  }

  private static List<String> ids(Field field) {
    return Arrays.stream(StoredValue.text(field.value()).orElse("").split(","))
        .map(String::strip)
        .filter(id -> !id.isEmpty())
        .toList();
  }

  /** The record with the keys that the entries it names go out with. */
  ReceivedRecord renamed(ReceivedRecord record) {
    List<Field> fields = new ArrayList<>();
    for (Field field : record.fields()) {
      boolean names = ONE.contains(field.name()) || SEVERAL.contains(field.name());
      fields.add(names ? renamed(field) : field);
    }
    return fields.equals(record.fields())
        ? record
        : new ReceivedRecord(record.format(), record.type(), record.id(), fields);
  }

  private Field renamed(Field field) {
    List<String> ids = ids(field);
    List<String> now = ids.stream().map(this::now).toList();
    return ids.equals(now) ? field : new Field(field.name(), String.join(",", now));
  }

  /** Its key where that is another than it calls itself; BibTeX does not mind capitals. */
  private String now(String id) {
    String folded = BibtexKeys.folded(id);
    String key = keys.getOrDefault(folded, id);
    return BibtexKeys.folded(key).equals(folded) ? id : key;
  }
}
