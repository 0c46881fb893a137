package merese.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** All that a reader hands on of a file, in its order. */
public final class Received implements Receiver {
  private final List<Object> all = new ArrayList<>();

  private record Kept(FilePlace place, ReceivedRecord record) {}

  public static Received of(RecordReader reader, byte[] file) {
    Received received = new Received();
    try {
      reader.read("file", new ByteArrayInputStream(file), received);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return received;
  }

  public static Received of(RecordReader reader, String file) {
    return of(reader, file.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public void source(Incoming source) {
    all.add(source);
  }

  @Override
  public void kept(FilePlace place, ReceivedRecord record) {
    all.add(new Kept(place, record));
  }

  @Override
  public void refused(Refused record) {
    all.add(record);
  }

  public List<Incoming> sources() {
    return all.stream().filter(Incoming.class::isInstance).map(Incoming.class::cast).toList();
  }

  public List<Refused> refusals() {
    return all.stream().filter(Refused.class::isInstance).map(Refused.class::cast).toList();
  }

  /**
   * The whole as text, for a fixture: what was understood of each source, then its record field by
   * field; a refused record with its bytes, a line of them after each "|".
   */
  public String text() {
    StringBuilder out = new StringBuilder();
    for (Object each : all) {
      if (each instanceof Incoming source) {
        out.append("source ").append(source.place()).append(", record ");
        out.append(source.place().record());
        source.key().ifPresent(key -> out.append(", key ").append(key));
        out.append('\n');
        for (Aspect aspect : Aspect.values()) {
          if (!aspect.isSilent(source.work())) {
            line(out, "  " + aspect.words() + ": " + aspect.printed(source.work()));
          }
        }
        source.remarks().forEach(remark -> line(out, "  remark: " + remark));
        fields(out, source.received());
      } else if (each instanceof Refused refused) {
        line(out, "refused " + refused);
        new String(refused.verbatim(), StandardCharsets.UTF_8)
            .lines()
            .forEach(line -> line(out, "  | " + line));
      } else if (each instanceof Kept kept) {
        out.append("kept ").append(kept.place()).append('\n');
        fields(out, kept.record());
      }
    }
    return out.toString();
  }

  private static void fields(StringBuilder out, ReceivedRecord record) {
    line(out, "  as " + record.format() + " [" + record.type() + "] [" + record.id() + "]");
    for (Field field : record.fields()) {
      line(out, "    " + field.name() + " = " + field.value());
    }
  }

  private static void line(StringBuilder out, String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '\\' || Character.isISOControl(c)) {
        out.append(c == '\\' ? "\\\\" : "\\u" + Integer.toHexString(c | 0x10000).substring(1));
      } else {
        out.append(c);
      }
    }
    out.append('\n');
  }
}
