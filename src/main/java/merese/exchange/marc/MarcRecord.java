package merese.exchange.marc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import merese.model.ReceivedRecord;

/** A received record as fields of MARC. */
final class MarcRecord {
  static final String FORMAT = "marc";

  private final List<MarcField> fields;
  private final Map<String, List<MarcField>> withSubfields = new HashMap<>();

  MarcRecord(List<MarcField> fields) {
    this.fields = List.copyOf(fields);
    for (MarcField field : fields) {
      if (field.control().isEmpty()) {
        withSubfields.computeIfAbsent(field.tag(), tag -> new ArrayList<>(2)).add(field);
      }
    }
  }

  List<MarcField> fields() {
    return fields;
  }

  static MarcRecord of(ReceivedRecord record) {
    List<MarcField> fields = new ArrayList<>(record.fields().size());
    for (ReceivedRecord.Field field : record.fields()) {
      fields.add(MarcField.of(field));
    }
    return new MarcRecord(fields);
  }

  ReceivedRecord received() {
    List<ReceivedRecord.Field> all = new ArrayList<>(fields.size());
    for (MarcField field : fields) {
      all.add(field.received());
    }
    return new ReceivedRecord(FORMAT, "", controlNumber(), all);
  }

  /** Field 001; "" where there is none. */
  String controlNumber() {
    return control("001").strip();
  }

  /** The text of a control field, or of the leader; "" where there is none. */
  String control(String tag) {
    for (MarcField field : fields) {
      if (field.tag().equals(tag) && field.control().isPresent()) {
        return field.control().get();
      }
    }
    return "";
  }

  /** A character of the leader, of field 008 and the like; a space where there is none. */
  char code(String tag, int position) {
    String text = control(tag);
    return position < text.length() ? text.charAt(position) : ' ';
  }

  /** The fields of a tag that have subfields. */
  List<MarcField> all(String tag) {
    return withSubfields.getOrDefault(tag, List.of());
  }

  /** The fields of several tags, in the order of the record. */
  List<MarcField> allOf(String... tags) {
    List<MarcField> found = new ArrayList<>();
    for (MarcField field : fields) {
      if (field.control().isEmpty() && field.is(tags)) {
        found.add(field);
      }
    }
    return found;
  }

  Optional<MarcField> first(String tag) {
    List<MarcField> all = all(tag);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
  }

  boolean any(String tag, Predicate<MarcField> test) {
    return all(tag).stream().anyMatch(test);
  }

  /** Whether the cataloguer put punctuation between the subfields (leader, position 18). */
  boolean isPunctuated() {
    char rule = code(MarcField.LEADER, 18);
    return rule != 'c' && rule != 'n';
  }
}
