package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import merese.model.ReceivedRecord;

/** A received record as fields of MARC. */
record MarcRecord(List<MarcField> fields) {
  static final String FORMAT = "marc";

  MarcRecord {
    fields = List.copyOf(fields);
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

  List<MarcField> all(String... tags) {
    List<MarcField> found = new ArrayList<>();
    for (MarcField field : fields) {
      if (field.control().isEmpty() && field.is(tags)) {
        found.add(field);
      }
    }
    return found;
  }

  Optional<MarcField> first(String... tags) {
    for (MarcField field : fields) {
      if (field.control().isEmpty() && field.is(tags)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
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
