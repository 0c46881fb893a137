package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Outgoing;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.model.Edition;
import merese.model.ReceivedRecord;
import merese.model.Work;

/** The sources of a .bib file as a library has them, each under the key of its entry. */
record BibLibrary(List<Outgoing> sources, List<ReceivedRecord> kept) {

  static BibLibrary read(String bib) throws IOException {
    List<Outgoing> sources = new ArrayList<>();
    List<ReceivedRecord> kept = new ArrayList<>();
    List<Refused> refused = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    new BibtexReader()
        .read(
            "test.bib",
            new ByteArrayInputStream(bib.getBytes(StandardCharsets.UTF_8)),
            new Receiver() {
              @Override
              public void source(Incoming incoming) {
                String key = incoming.key().orElseThrow();
                while (!taken.add(key)) {
                  key += "-again";
                }
                sources.add(outgoing(incoming.work(), key));
              }

              @Override
              public void kept(FilePlace place, ReceivedRecord record) {
                kept.add(record);
              }

              @Override
              public void refused(Refused record) {
                refused.add(record);
              }
            });
    assertEquals(List.of(), refused);
    return new BibLibrary(sources, kept);
  }

  static Outgoing outgoing(Work work, String key) {
    Edition edition = work.editions().get(0);
    Edition named =
        new Edition(
            key,
            edition.imprint(),
            edition.lineage(),
            edition.container(),
            edition.occasion(),
            edition.archive(),
            edition.online(),
            edition.scope(),
            edition.parts(),
            edition.copies(),
            edition.notes(),
            edition.checks(),
            edition.received());
    return new Outgoing(work.withOnly(named), named, Optional.empty(), named.notes());
  }

  Outgoing source(String key) {
    return sources.stream().filter(s -> s.id().equals(key)).findFirst().orElseThrow();
  }

  /** The same with a source changed. */
  BibLibrary with(String key, UnaryOperator<Work> change) {
    List<Outgoing> changed = new ArrayList<>();
    for (Outgoing source : sources) {
      changed.add(source.id().equals(key) ? outgoing(change.apply(source.work()), key) : source);
    }
    return new BibLibrary(changed, kept);
  }

  String written(Flavour flavour) throws IOException {
    return written(flavour, sources);
  }

  /** Some of the sources, with the library behind them. */
  String written(Flavour flavour, List<Outgoing> some) throws IOException {
    StringWriter out = new StringWriter();
    new BibtexWriter(flavour, id -> id, sources.stream().map(Outgoing::edition).toList())
        .write(some, kept, out);
    return out.toString();
  }

  /** All its records, sources or not. */
  Set<ReceivedRecord> records() {
    Set<ReceivedRecord> records = new HashSet<>(kept);
    sources.forEach(source -> records.addAll(source.edition().received()));
    return records;
  }
}
