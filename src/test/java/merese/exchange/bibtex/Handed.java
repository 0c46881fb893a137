package merese.exchange.bibtex;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import merese.exchange.Aspect;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.model.ReceivedRecord;

/** All that a reader hands on. */
final class Handed implements Receiver {
  final List<Incoming> sources = new ArrayList<>();
  final List<ReceivedRecord> kept = new ArrayList<>();
  final List<Refused> refused = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private Wrapping wrapping;

  static Handed read(byte[] file) {
    Handed handed = new Handed();
    BibtexReader reader = new BibtexReader();
    try {
      reader.read("x.bib", new ByteArrayInputStream(file), handed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    handed.wrapping = reader.wrapping();
    return handed;
  }

  static Handed read(String file) {
    return read(file.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public void source(Incoming source) {
    sources.add(source);
    record(source.place(), "source", source.received());
    for (Aspect aspect : Aspect.values()) {
      if (!aspect.isSilent(source.work())) {
        line("  : " + aspect.words() + ": " + aspect.printed(source.work()));
      }
    }
    source.remarks().forEach(remark -> line("  ! " + remark));
  }

  @Override
  public void kept(FilePlace place, ReceivedRecord record) {
    kept.add(record);
    record(place, "kept", record);
  }

  @Override
  public void refused(Refused record) {
    refused.add(record);
    line(record.place() + " refused: " + record.what() + "; " + record.remedy());
    String verbatim = new String(record.verbatim(), StandardCharsets.UTF_8);
    verbatim.lines().forEach(l -> line("  | " + l));
  }

  private void record(FilePlace place, String what, ReceivedRecord record) {
    line(place + " " + what + " " + record.format() + " " + record.type() + " " + record.id());
    record.fields().forEach(field -> line("  " + field.name() + " = " + field.value()));
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  int count() {
    return sources.size() + kept.size() + refused.size();
  }

  /** What was handed on, in its order, and what stands before refused records. */
  @Override
  public String toString() {
    return text
        + (wrapping.before().isEmpty() ? "" : "before what was refused:\n" + wrapping.before());
  }
}
