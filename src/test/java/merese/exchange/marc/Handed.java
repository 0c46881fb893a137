package merese.exchange.marc;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;

/** What a reader has handed on, in the order of the file. */
final class Handed implements Receiver {
  final List<Object> all = new ArrayList<>();
  final List<Incoming> sources = new ArrayList<>();
  final List<ReceivedRecord> kept = new ArrayList<>();
  final List<Refused> refused = new ArrayList<>();

  static Handed of(RecordReader reader, byte[] file) {
    Handed handed = new Handed();
    try {
      reader.read("file", new ByteArrayInputStream(file), handed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return handed;
  }

  static Handed xml(String file) {
    return of(new MarcXmlReader(), file.getBytes(StandardCharsets.UTF_8));
  }

  static Handed iso(byte[] file) {
    return of(new MarcReader(), file);
  }

  @Override
  public void source(Incoming source) {
    all.add(source);
    sources.add(source);
  }

  @Override
  public void kept(FilePlace place, ReceivedRecord record) {
    all.add(record);
    kept.add(record);
  }

  @Override
  public void refused(Refused record) {
    all.add(record);
    refused.add(record);
  }

  /** Titles of sources, "kept" and what is wrong, in the order of the file. */
  List<String> words() {
    return all.stream()
        .map(
            one ->
                one instanceof Incoming source
                    ? source.work().title()
                    : one instanceof Refused bad ? bad.toString() : "kept")
        .toList();
  }

  List<ReceivedRecord> received() {
    return sources.stream().map(Incoming::received).toList();
  }
}
