package merese.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Incoming;
import merese.exchange.Outgoing;
import merese.exchange.Received;
import merese.exchange.Sources;
import merese.model.Contributor;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.HostileLibrary;
import merese.testing.InventedCsv;
import merese.testing.ManyWorks;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvRoundTripTest {
  @TempDir private Path folder;

  private static String written(List<Outgoing> sources) {
    return Sources.written(new CsvWriter(), sources);
  }

  private static Received read(String text) {
    return Received.of(new CsvReader(), text);
  }

  /** How two descriptions differ, but for the order of people of different roles. */
  private static Set<Aspect> differing(Work one, Work other) {
    Set<Aspect> differing = EnumSet.noneOf(Aspect.class);
    differing.addAll(Aspect.differing(one, other));
    if (byRole(one).equals(byRole(other))) {
      differing.remove(Aspect.PEOPLE);
    }
    return differing;
  }

  private static List<Contributor> byRole(Work work) {
    return work.contributors().stream().sorted(Comparator.comparing(Contributor::role)).toList();
  }

  @Nested
  class ALibrary {
    private Map<String, Set<Aspect>> comesBack(List<Work> works) {
      List<Outgoing> sources = Sources.of(works);
      String text = written(sources);
      Received received = read(text);
      assertEquals(List.of(), received.refusals());
      Map<String, Incoming> byKey = new HashMap<>();
      received.sources().forEach(s -> byKey.put(s.key().orElseThrow(), s));
      assertEquals(sources.size(), byKey.size());
      assertEquals(text, written(Sources.of(received)), "the second export");
      Map<String, Set<Aspect>> differing = new HashMap<>();
      for (Outgoing source : sources) {
        if (source.part().isEmpty()) {
          Set<Aspect> here =
              differing(source.work().withOnly(source.edition()), byKey.get(source.id()).work());
          if (!here.isEmpty()) {
            differing.put(source.id(), here);
          }
        }
      }
      return differing;
    }

    /** A table has no column for what became of each plate, and a colon begins a subtitle. */
    @Test
    void comesBackFromTheDemoButForPlatesAndATitleWithAColon() throws Exception {
      Map<String, Set<Aspect>> differing = comesBack(Sources.works(DemoLibrary.copyTo(folder)));
      assertEquals(
          Map.of(
              "cordwent-1955", Set.of(Aspect.TITLE),
              "lantern-street-2016", Set.of(Aspect.TITLE),
              "imberry-1951", Set.of(Aspect.LINEAGE),
              "norrish-1984", Set.of(Aspect.LINEAGE),
              "quenby-1949", Set.of(Aspect.LINEAGE),
              "quenby-1968", Set.of(Aspect.LINEAGE),
              "quenby-1977", Set.of(Aspect.LINEAGE),
              "hoeck-1964", Set.of(Aspect.LINEAGE),
              "varnell-1939", Set.of(Aspect.LINEAGE)),
          differing);
    }

    /** Control characters and line ends are dropped; the texts are else what they were. */
    @Test
    void comesBackRowByRowWhateverItsTextsTryToBe() {
      List<Work> works = HostileLibrary.make().works();
      comesBack(works);
      List<Outgoing> sources = Sources.of(works);
      List<String> titles =
          read(written(sources)).sources().stream().map(s -> s.work().title()).sorted().toList();
      assertEquals(
          sources.stream()
              .map(s -> CellWords.of(s.part().map(p -> p.title()).orElse(s.work().title())))
              .sorted()
              .toList(),
          titles);
    }

    @Test
    void comesBackWhenItIsLarge() throws Exception {
      try (Shelf shelf = DemoLibrary.open(folder)) {
        assertEquals(Map.of(), comesBack(ManyWorks.of(shelf.thesaurus(), 500, 0)));
      }
    }
  }

  @Nested
  class AFile {
    private static List<ReceivedRecord> records(Received received) {
      return received.sources().stream()
          .map(Incoming::received)
          .sorted(Comparator.comparing(ReceivedRecord::id))
          .toList();
    }

    private static Map<String, Set<ReceivedRecord.Field>> fields(Received received) {
      Map<String, Set<ReceivedRecord.Field>> fields = new HashMap<>();
      records(received).forEach(r -> fields.put(r.id(), new HashSet<>(r.fields())));
      return fields;
    }

    @Test
    void goesOutAsItCameCellByCell() {
      Received first =
          read(
              """
              Price,Key,Author(s),Title,Notes,Notes,,Year/Date,Condition
              £12,b,"Quenby, M.;Glass, A",<b>T</b>: u, signed ,'=x,"two
              lines",c. 1949,
              ,a,x,Glass,,=1+1,,1950,"good, ""very"" so"
              """);
      Received again = read(written(Sources.of(first)));
      assertEquals(fields(first), fields(again));
      assertEquals(
          written(Sources.of(first)), written(Sources.of(again)), "the second time the same bytes");
    }

    @Test
    void goesOutAsItCameWhenItIsLarge() throws Exception {
      StringWriter text = new StringWriter();
      InventedCsv.write(0, 1000, text);
      Received first = read(text.toString());
      assertEquals(List.of(), first.refusals());
      assertEquals(1000, first.sources().size());
      assertEquals(fields(first), fields(read(written(Sources.of(first)))));
    }
  }

  @Nested
  class AChange {
    private static final String FILE =
        "Key,Author,Title,Year,Shelf\na,\"Quenby, M.;Glass, A\",T: u,c. 1949,B2\n";

    private static Map<String, String> cells(String csv) throws Exception {
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = CSVParser.parse(new StringReader(csv.substring(1)), format)) {
        CSVRecord record = parser.getRecords().get(0);
        Map<String, String> cells = new HashMap<>(record.toMap());
        cells.values().removeIf(String::isEmpty);
        return cells;
      }
    }

    @Test
    void ofThePublisherChangesNoOtherCell() throws Exception {
      Outgoing source = Sources.of(read(FILE)).get(0);
      Work other = read("Title,Publisher\nx,Thorne\n").sources().get(0).work();
      Work changed = Aspect.PUBLISHER.taken(source.work(), other);
      Outgoing out = new Outgoing(changed, changed.editions().get(0), source.part(), List.of());
      assertEquals(
          Map.of(
              "Key", "a",
              "Author", "Quenby, M.;Glass, A",
              "Title", "T: u",
              "Year", "c. 1949",
              "Publisher", "Thorne",
              "Shelf", "B2"),
          cells(written(List.of(out))));
    }

    @Test
    void ofTheTitleSetsTitleAndSubtitleAnew() throws Exception {
      Outgoing source = Sources.of(read(FILE)).get(0);
      Work other = read("Title\nNew: more\n").sources().get(0).work();
      Work changed = Aspect.TITLE.taken(source.work(), other);
      Map<String, String> cells =
          cells(
              written(
                  List.of(
                      new Outgoing(changed, changed.editions().get(0), source.part(), List.of()))));
      assertEquals("New", cells.get("Title"));
      assertEquals("more", cells.get("Subtitle"));
    }

    @Test
    void ofWhatATitleWasSuppliedFromLeavesTheTitle() throws Exception {
      Outgoing source = Sources.of(read("Title,In\n,Papers\n")).get(0);
      Work other = read("Title,In\nT,Essays\n").sources().get(0).work();
      Work changed = Aspect.CONTAINER.taken(source.work(), other);
      Map<String, String> cells =
          cells(
              written(
                  List.of(
                      new Outgoing(changed, changed.editions().get(0), source.part(), List.of()))));
      assertEquals("Essays", cells.get("In"));
      assertEquals("[Papers]", cells.get("Title"));
    }
  }

  @Nested
  class ATableForSpreadsheets {
    @Test
    void beginsWithAByteOrderMarkAndEndsRowsWithCrLf() {
      String csv = written(Sources.of(HostileLibrary.make().works()));
      assertTrue(csv.startsWith("\uFEFFKey,Kind,Title,"));
      assertTrue(csv.endsWith("\r\n"));
    }

    @Test
    void hasNoCellThatRuns() throws Exception {
      String cell = "=cmd|' /C calc'!A0;=1\n-1,\"@x";
      Received evil = read("Title,Author,=Notes\n\"" + cell.replace("\"", "\"\"") + "\",+x,-y\n");
      String csv = written(Sources.of(evil)).substring(1);
      for (char separator : new char[] {',', ';', '\t'}) {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
        for (String line : separator == ',' ? List.of(csv) : csv.lines().toList()) {
          for (String each : cells(line, format)) {
            assertFalse(each.matches("(?s)[\"]*[=+\\-@\t\r\n].*"), separator + " " + each);
          }
        }
      }
      assertEquals("=Notes", evil.sources().get(0).received().fields().get(2).name());
      assertEquals(cell, read(csv).sources().get(0).received().field("Title").orElseThrow());
    }

    /** As a careless splitter has them, where quotation marks inside do not count. */
    private static List<String> cells(String line, CSVFormat format) throws Exception {
      if (!format.getDelimiterString().equals(",")) {
        return List.of(line.split(format.getDelimiterString(), -1));
      }
      try (CSVParser parser = CSVParser.parse(new StringReader(line), format)) {
        return parser.getRecords().stream().flatMap(r -> r.stream()).toList();
      }
    }
  }

  @Nested
  class Keys {
    @Test
    void thatCameTwiceGoOutOnce() {
      Received out = read(written(Sources.of(read("Key,Title\na,T\na,U\n,V\n"))));
      assertEquals(3, out.sources().stream().map(s -> s.key().get()).distinct().count());
    }
  }
}
