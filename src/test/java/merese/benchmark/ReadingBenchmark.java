package merese.benchmark;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import merese.change.records.RecordFormat;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;
import merese.testing.InventedBibtex;
import merese.testing.InventedCsl;
import merese.testing.InventedCsv;
import merese.testing.InventedMarc;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.BibTeXString;
import org.jbibtex.Key;
import org.jbibtex.ObjectResolutionException;
import org.jbibtex.ParseException;
import org.marc4j.MarcReader;
import org.marc4j.MarcStreamReader;
import org.marc4j.MarcXmlReader;

/**
 * Reading each format into works, against the bare library's parser on the same bytes, which
 * understands nothing of what it reads. Of both, the best of runs in turn counts. The library's own
 * tree of the items is what our reader is held to for CSL-JSON; its tokens, of which nothing is
 * kept, stand beside it without a goal.
 */
final class ReadingBenchmark implements Benchmark {
  private static final double WARM = 8; // seconds that each case is run for: both get warm
  private static final double GOAL = 0.5;
  private static final int RECORDS = 10_000;

  /** Writes a file of so many invented sources. */
  private interface Maker {
    void write(int records, Writer out) throws IOException;
  }

  /** Reads a file with the bare library, and counts what it finds. */
  private interface Yardstick {
    int read(InputStream in) throws Exception;
  }

  private record Case(
      RecordFormat format, String library, byte[] file, Yardstick yardstick, boolean hasGoal) {}

  @Override
  public void run(Report report) throws Exception {
    ByteArrayOutputStream marc = new ByteArrayOutputStream();
    InventedMarc.write(0, RECORDS, marc);
    List<Case> cases =
        List.of(
            new Case(
                RecordFormat.BIBTEX,
                "jbibtex",
                bytes((n, out) -> InventedBibtex.write(0, n, out)),
                ReadingBenchmark::jbibtex,
                true),
            new Case(
                RecordFormat.MARC,
                "marc4j",
                marc.toByteArray(),
                in -> marc4j(new MarcStreamReader(in, "UTF-8")),
                true),
            new Case(
                RecordFormat.MARCXML,
                "marc4j",
                bytes((n, out) -> InventedMarc.writeXml(0, n, out)),
                in -> marc4j(new MarcXmlReader(in)),
                true),
            new Case(
                RecordFormat.CSL_JSON,
                "jackson-core's tokens, none kept,",
                bytes((n, out) -> InventedCsl.write(0, n, out)),
                ReadingBenchmark::jackson,
                false),
            new Case(
                RecordFormat.CSL_JSON,
                "jackson's tree of the items",
                bytes((n, out) -> InventedCsl.write(0, n, out)),
                ReadingBenchmark::jacksonTree,
                true),
            new Case(
                RecordFormat.CSV,
                "commons-csv",
                bytes((n, out) -> InventedCsv.write(0, n, out)),
                ReadingBenchmark::commonsCsv,
                true));
    for (Case each : cases) {
      measure(each, report);
    }
  }

  private static byte[] bytes(Maker maker) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Writer out = new OutputStreamWriter(bytes, StandardCharsets.UTF_8)) {
      maker.write(RECORDS, out);
    }
    return bytes.toByteArray();
  }

  private static void measure(Case each, Report report) throws Exception {
    double ours = 0;
    double theirs = 0;
    long start = System.nanoTime();
    while ((System.nanoTime() - start) / 1e9
        < WARM) { // in turn, so that both meet the same machine
      ours = Math.max(ours, RECORDS / ours(each));
      theirs = Math.max(theirs, RECORDS / theirs(each));
    }
    String size = String.format(Locale.ROOT, "%.1f MB", each.file().length / 1e6);
    String what =
        "Records a second of "
            + each.format().words()
            + " ("
            + size
            + ") read and understood, against "
            + each.library()
            + " reading alone";
    if (each.hasGoal()) {
      report.share(what, ours, theirs, GOAL);
    } else {
      report.beside(what, ours, theirs, "/s");
    }
  }

  /** Seconds. */
  private static double ours(Case each) throws IOException {
    Counter counter = new Counter();
    long before = System.nanoTime();
    each.format().reader().read("invented", new ByteArrayInputStream(each.file()), counter);
    double seconds = (System.nanoTime() - before) / 1e9;
    requireAll(counter.sources, "merese", each);
    return seconds;
  }

  private static double theirs(Case each) throws Exception {
    long before = System.nanoTime();
    int found = each.yardstick().read(new ByteArrayInputStream(each.file()));
    double seconds = (System.nanoTime() - before) / 1e9;
    requireAll(found, each.library(), each);
    return seconds;
  }

  /** A reading that leaves something out is no answer to time. */
  private static void requireAll(int found, String by, Case each) {
    if (found != RECORDS) {
      throw new IllegalStateException(
          by + " found " + found + " of " + RECORDS + " records of " + each.format().words());
    }
  }

  private static final class Counter implements Receiver {
    private int sources;

    @Override
    public void source(Incoming source) {
      sources++;
    }

    @Override
    public void kept(FilePlace place, ReceivedRecord record) {
      // a preamble
    }

    @Override
    public void refused(Refused record) {
      throw new IllegalStateException(record.toString());
    }
  }

  private static Reader utf8(InputStream in) {
    return new InputStreamReader(in, StandardCharsets.UTF_8);
  }

  private static int jbibtex(InputStream in) throws ParseException, ObjectResolutionException {
    BibTeXParser parser =
        new BibTeXParser() {
          @Override
          public void checkStringResolution(Key key, BibTeXString string) {
            // the names of months are not in the file
          }

          @Override
          public void checkCrossReferenceResolution(Key key, BibTeXEntry entry) {
            // what is referred to comes later
          }
        };
    return parser.parse(utf8(in)).getEntries().size();
  }

  private static int marc4j(MarcReader reader) {
    int records = 0;
    while (reader.hasNext()) {
      reader.next();
      records++;
    }
    return records;
  }

  private static int jackson(InputStream in) throws IOException {
    int depth = 0;
    int objects = 0;
    long characters = 0;
    try (JsonParser parser = new JsonFactory().createParser(in)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.START_OBJECT) {
          objects += depth == 0 ? 1 : 0;
          depth++;
        } else if (token == JsonToken.END_OBJECT) {
          depth--;
        } else if (token.isScalarValue()) {
          characters += parser.getText().length();
        }
      }
    }
    return characters == 0 ? 0 : objects;
  }

  private static int jacksonTree(InputStream in) throws IOException {
    return new JsonMapper().readTree(in).size();
  }

  private static int commonsCsv(InputStream in) throws IOException {
    int rows = 0;
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(utf8(in), format)) {
      for (CSVRecord row : parser) {
        rows += row.get("title").isEmpty() ? 0 : 1;
      }
    }
    return rows;
  }
}
