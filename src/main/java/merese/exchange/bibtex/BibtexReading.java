package merese.exchange.bibtex;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.FilePlace;
import merese.exchange.InFileOrder;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.exchange.bibtex.BibtexItems.Broken;
import merese.exchange.bibtex.BibtexItems.Entry;
import merese.exchange.bibtex.BibtexItems.Item;
import merese.exchange.bibtex.BibtexSplitter.Chunk;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/** One reading of a file: hands on what is in it, in its order. */
final class BibtexReading {
  /** Types that describe no source but belong to those that do. */
  private static final Set<String> NO_SOURCES = Set.of("preamble", "set", "xdata");

  /** So many undefined strings of an entry are named. */
  private static final int MOST_UNDEFINED = 20;

  private final String file;
  private final Spool bytes;
  private final Survey survey;
  private final InFileOrder to;
  private final BibtexItems items;
  private final Set<String> keys = new HashSet<>();
  private int record;
  private boolean refusedAny;
  private boolean saidNotUtf8;

  BibtexReading(String file, Spool bytes, Survey survey, Receiver to) throws IOException {
    this.file = file;
    this.bytes = bytes;
    this.survey = survey;
    this.to = new InFileOrder(to);
    this.items = new BibtexItems(bytes);
  }

  void run() throws IOException {
    for (Optional<Item> item = items.next(); item.isPresent(); item = items.next()) {
      record++;
      if (item.get() instanceof Entry entry) {
        handOn(entry);
      } else if (item.get() instanceof Broken broken) {
        refuse(broken);
      }
    }
    to.finish();
  }

  Wrapping wrapping() {
    return refusedAny ? new Wrapping(items.definitions(), "\n", "") : Wrapping.NONE;
  }

  private void handOn(Entry entry) {
    ReceivedRecord received = Survey.record(survey.format(), entry);
    Chunk chunk = entry.chunk();
    FilePlace place = new FilePlace(file, chunk.line(), chunk.column(), record);
    int length = (int) (chunk.to() - chunk.from());
    if (NO_SOURCES.contains(entry.type())) {
      to.add(length, () -> receiver -> receiver.kept(place, received));
      return;
    }
    List<String> remarks = remarks(entry, received);
    to.add(
        length,
        () -> {
          BibtexMeaning.Reading reading = BibtexMeaning.read(received, survey::byKey);
          remarks.addAll(reading.remarks());
          Incoming source = new Incoming(place, Optional.of(entry.key()), reading.work(), remarks);
          return receiver -> receiver.source(source);
        });
  }

  private List<String> remarks(Entry entry, ReceivedRecord received) {
    List<String> remarks = new ArrayList<>();
    if (!entry.isUtf8() && !saidNotUtf8) {
      saidNotUtf8 = true;
      remarks.add("The file is not in UTF-8 here; read as Windows-1252 wherever it is not");
    }
    String key = FormatSense.isBiblatex(survey.format()) ? entry.key() : Survey.folded(entry.key());
    if (!keys.add(key)) {
      remarks.add("The key " + entry.key() + " stands more than once in the file");
    }
    entry.undefined().stream()
        .limit(MOST_UNDEFINED)
        .map(name -> "The string " + name + " is not defined; its field is kept, not understood")
        .forEach(remarks::add);
    Set<String> names = new HashSet<>();
    for (Field field : received.fields()) {
      if (!names.add(field.name())) {
        remarks.add("Field " + field.name() + " stands more than once; the first holds");
      }
    }
    return remarks;
  }

  private void refuse(Broken broken) throws IOException {
    refusedAny = true;
    Chunk chunk = broken.chunk();
    byte[] verbatim = bytes.slice(chunk.from(), chunk.to());
    Refused refused =
        new Refused(place(broken), broken.fault().what(), broken.fault().remedy(), verbatim);
    to.add(verbatim.length, () -> receiver -> receiver.refused(refused));
  }

  /** Where the fault is. */
  private FilePlace place(Broken broken) {
    String text = broken.text();
    int line = broken.chunk().line();
    int column = broken.chunk().column();
    int end = Math.min(broken.fault().offset(), text.length());
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r' && !text.startsWith("\n", i + 1)) {
        line++;
        column = 1;
      } else if (!Character.isLowSurrogate(c)) {
        column++;
      }
    }
    return new FilePlace(file, line, column, record);
  }
}
