package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * What another program's record of a source said, word for word. It is kept beside what was
 * understood of it, so that what has no home here goes out again as it came.
 *
 * @param format the name of the format, as {@code merese import --as} takes it
 * @param type the kind of record in the words of the format, such as "inbook"; empty for a format
 *     without kinds
 * @param id by which the record calls itself; empty where it has no name
 * @param fields in the order of the record
 */
public record ReceivedRecord(String format, String type, String id, List<Field> fields) {
  /** A field by its name in the format; a name may come several times. */
  public record Field(String name, String value) {
    public Field {
      Require.text(name, "a field's name");
    }
  }

  public ReceivedRecord {
    Require.text(format, "a record's format");
    fields = List.copyOf(fields);
  }

  /** The first field of a name. */
  public Optional<String> field(String name) {
    return fields.stream().filter(f -> f.name().equals(name)).map(Field::value).findFirst();
  }
}
