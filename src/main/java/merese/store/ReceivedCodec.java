package merese.store;

import java.util.List;
import java.util.Optional;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** A record as another program gave it; each of its fields is a text, "name = value". */
final class ReceivedCodec implements Codec<ReceivedRecord> {
  static final ReceivedCodec RECEIVED = new ReceivedCodec();

  /** The file of the records that describe no source. */
  static final Codec<List<ReceivedRecord>> KEPT = new Kept();

  private ReceivedCodec() {}

  @Override
  public ReceivedRecord read(Fields in) {
    return new ReceivedRecord(
        in.text("format"),
        in.optionalText("type").orElse(""),
        in.optionalText("id").orElse(""),
        in.list("fields", FieldCodec.FIELD));
  }

  @Override
  public void write(ReceivedRecord received, ObjectBuilder out) {
    out.text("format", received.format());
    out.text("type", Optional.of(received.type()));
    out.text("id", Optional.of(received.id()));
    out.list("fields", received.fields(), FieldCodec.FIELD);
  }

  private static final class Kept implements Codec<List<ReceivedRecord>> {
    @Override
    public List<ReceivedRecord> read(Fields in) {
      return List.copyOf(in.list("records", RECEIVED));
    }

    @Override
    public void write(List<ReceivedRecord> records, ObjectBuilder out) {
      out.allOf("records", records, RECEIVED);
    }
  }

  /** An object where the name itself has the mark between name and value. */
  private static final class FieldCodec implements Codec<Field> {
    static final FieldCodec FIELD = new FieldCodec();

    private static final String MARK = " = ";

    @Override
    public Field read(Fields in) {
      return new Field(in.text("name"), in.textOrEmpty("value"));
    }

    @Override
    public void write(Field field, ObjectBuilder out) {
      out.text("name", field.name());
      out.text("value", field.value());
    }

    @Override
    public Field fromText(String text) {
      int mark = text.indexOf(MARK);
      return mark < 1
          ? null
          : new Field(text.substring(0, mark), text.substring(mark + MARK.length()));
    }

    @Override
    public String asText(Field field) {
      return field.name().contains(MARK) || field.name().startsWith(" ")
          ? null
          : field.name() + MARK + field.value();
    }
  }
}
