package merese.exchange.csl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import merese.exchange.Aspect;
import merese.exchange.Fixtures;
import merese.exchange.Incoming;
import merese.exchange.Outgoing;
import merese.exchange.Received;
import merese.exchange.Sources;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import merese.testing.HostileLibrary;
import merese.testing.InventedCsl;
import merese.testing.ManyWorks;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CslRoundTripTest {
  @TempDir private Path folder;

  private static String written(List<Outgoing> sources) {
    return Sources.written(new CslJsonWriter(), sources);
  }

  private static Received read(String text) {
    return Received.of(new CslJsonReader(), text);
  }

  @Nested
  class ALibrary {
    private void comesBack(List<Work> works) {
      List<Outgoing> sources = Sources.of(works);
      String text = written(sources);
      Received received = read(text);
      assertEquals(List.of(), received.refusals());
      Map<String, Incoming> byKey = new HashMap<>();
      received.sources().forEach(s -> byKey.put(s.key().orElseThrow(), s));
      assertEquals(sources.size(), byKey.size());
      for (Outgoing source : sources) {
        if (source.part().isEmpty()) {
          Work now = source.work().withOnly(source.edition());
          Work then = byKey.get(source.id()).work();
          assertEquals(Set.of(), Aspect.differing(now, then), source::id);
        }
      }
      assertEquals(text, written(Sources.of(received)), "the second export");
    }

    @Test
    void comesBackAsItIsFromTheDemo() throws Exception {
      comesBack(Sources.works(DemoLibrary.copyTo(folder)));
    }

    @Test
    void comesBackAsItIsWhateverItsTextsTryToBe() {
      comesBack(HostileLibrary.make().works());
    }

    @Test
    void comesBackAsItIsWhenItIsLarge() throws Exception {
      try (Shelf shelf = DemoLibrary.open(folder)) {
        comesBack(ManyWorks.of(shelf.thesaurus(), 500, 0));
      }
    }
  }

  @Nested
  class AFile {
    /** The JSON of each item, by its id, as another library reads it. */
    private static List<JsonNode> items(String text) throws Exception {
      List<JsonNode> items = new ArrayList<>();
      new ObjectMapper().readTree(text).forEach(items::add);
      items.sort(Comparator.comparing((JsonNode i) -> i.path("id").asText()));
      return items;
    }

    private void goesOutAsItCame(String text) throws Exception {
      Received first = read(text);
      String out = written(Sources.of(first));
      List<ReceivedRecord> again = read(out).sources().stream().map(Incoming::received).toList();
      assertEquals(
          first.sources().stream()
              .map(Incoming::received)
              .sorted(Comparator.comparing(ReceivedRecord::id))
              .toList(),
          again);
    }

    static Stream<Path> files() {
      return Fixtures.in(CslRoundTripTest.class, "whole", ".json");
    }

    @ParameterizedTest
    @MethodSource("files")
    void goesOutAsTheSameJson(Path file) throws Exception {
      String text = Files.readString(file);
      goesOutAsItCame(text);
      assertEquals(items(text), items(written(Sources.of(read(text)))));
    }

    @Test
    void goesOutAsItCameWhenItIsLarge() throws Exception {
      StringWriter text = new StringWriter();
      InventedCsl.write(0, 1000, text);
      goesOutAsItCame(text.toString());
      assertEquals(items(text.toString()), items(written(Sources.of(read(text.toString())))));
    }

    @Test
    void isKeptByALibraryOnDisk() throws Exception {
      Received received =
          read(
              "[{\"id\":\"a\",\"type\":\"book\",\"title\":\"T\",\"volume\":\"10\",\"x\":\"\\ud800 = y\","
                  + "\"y = z\":\"\",\"issue\":10,\"custom\":{\"a\":[1.0,null]}}]");
      LibraryFolder library = LibraryFolder.create(folder.resolve("l"), "A library");
      Work work = received.sources().get(0).work();
      library.add(work);
      Work back = library.readWork(DemoLibrary.works(library).get(0)).value();
      assertEquals(work, back);
    }
  }

  @Nested
  class AChange {
    private static final String ITEM =
        """
        [
          {
            "id": "a",
            "type": "book",
            "DOI": "https://doi.org/10.5555/12345678",
            "title": "<i>Old</i> words: a study",
            "title-short": "Old words",
            "abstract": "Kept.",
            "author": [
              {
                "family": "Quenby",
                "given": "M.",
                "dropping-particle": "de"
              }
            ],
            "issued": {
              "raw": "May 1949"
            },
            "volume": 2
          }
        ]
        """;

    private static String afterwards(Aspect aspect, String otherItem) {
      Outgoing source = Sources.of(read(ITEM)).get(0);
      Work other = read("[" + otherItem + "]").sources().get(0).work();
      Work changed = aspect.taken(source.work(), other);
      return written(
          List.of(new Outgoing(changed, changed.editions().get(0), source.part(), List.of())));
    }

    @Test
    void ofNothingLeavesTheItemAsItCame() {
      assertEquals(ITEM, written(Sources.of(read(ITEM))));
    }

    @Test
    void ofTheTitleReplacesItsVariablesAndNoOther() {
      assertEquals(
          ITEM.replace("<i>Old</i> words: a study", "New")
              .replace("    \"title-short\": \"Old words\",\n", ""),
          afterwards(Aspect.TITLE, "{\"title\":\"New\"}"));
    }

    @Test
    void ofTheDateReplacesTheDate() {
      assertEquals(
          ITEM.replace("\"raw\": \"May 1949\"", "\"date-parts\": [[1950]]"),
          afterwards(Aspect.DATE, "{\"title\":\"x\",\"issued\":1950}"));
    }

    @Test
    void ofWhatATitleWasSuppliedFromLeavesTheTitle() {
      Outgoing source =
          Sources.of(read("{\"type\": \"chapter\", \"container-title\": \"Papers\"}")).get(0);
      Work other =
          read("{\"title\": \"T\", \"container-title\": \"Essays\"}").sources().get(0).work();
      Work changed = Aspect.CONTAINER.taken(source.work(), other);
      Outgoing out = new Outgoing(changed, changed.editions().get(0), source.part(), List.of());
      Work again = read(written(List.of(out))).sources().get(0).work();
      assertEquals(Set.of(), Aspect.differing(changed, again));
      assertEquals("[Papers]", again.title());
    }

    @Test
    void toSilenceDropsTheVariables() {
      String out = afterwards(Aspect.PEOPLE, "{\"title\":\"x\"}");
      assertTrue(!out.contains("author") && out.contains("\"raw\": \"May 1949\""), out);
    }

    @Test
    void thatAddsSomethingAddsItsVariable() {
      assertEquals(
          ITEM.replace(
              "\"volume\": 2\n", "\"volume\": 2,\n    \"publisher\": \"Thorne & Aldwick\"\n"),
          afterwards(Aspect.PUBLISHER, "{\"title\":\"x\",\"publisher\":\"Thorne & Aldwick\"}"));
    }
  }

  @Nested
  class WhatCslCannotSay {
    private static final String OURS =
        "[{\"id\":\"a\",\"type\":\"book\",\"title\":\"T\",\"custom\":"
            + "{\"other\":1,\"merese\":{\"kind\":\"sale-catalogue\",\"title\":{\"title\":\"T\"},"
            + "\"occasion\":{\"house\":\"Pell\"}}}}]";

    @Test
    void isReadFromOurOwnObject() {
      assertEquals(
          "Pell", read(OURS).sources().get(0).edition().occasion().orElseThrow().house().get());
    }

    @Test
    void isNotBelievedWhereAnotherProgramHasChangedTheVariable() {
      String ours = OURS.replace("\"title\":{\"title\":\"T\"}", "\"title\":{\"title\":\"T: U\"}");
      String edited = ours.replace("\"title\":\"T\",\"custom\"", "\"title\":\"New\",\"custom\"");
      Incoming source = read(edited).sources().get(0);
      assertEquals("New", source.work().title());
      assertEquals(
          List.of(
              "the title was changed by another program after this program wrote it; taken as it"
                  + " stands there"),
          source.remarks());
    }

    @Test
    void isPassedOverWhereItIsNotOurs() {
      String odd =
          OURS.replace("\"sale-catalogue\"", "[]").replace("{\"house\":\"Pell\"}", "\"x\"");
      Incoming source = read(odd).sources().get(0);
      assertEquals("monograph", source.work().kind().words());
      assertTrue(source.edition().occasion().isEmpty());
    }
  }

  @Nested
  class Ids {
    @Test
    void thatCameTwiceGoOutOnce() {
      Received twins = read("[{\"id\":\"a\",\"title\":\"T\"},{\"id\":\"a\",\"title\":\"U\"}]");
      List<Outgoing> sources = Sources.of(twins);
      Outgoing second = sources.get(1);
      Received out = read(written(sources));
      assertEquals(2, out.sources().stream().map(s -> s.key().get()).distinct().count());
      assertEquals("U", second.work().title());
    }

    @Test
    void thatAreMissingAreGiven() {
      assertEquals(
          "source-0",
          read(written(Sources.of(read("{\"title\":\"T\"}")))).sources().get(0).key().get());
    }

    @Test
    void thatAreNumbersStayNumbers() {
      String out = written(Sources.of(read("{\"id\":12,\"title\":\"T\"}")));
      assertTrue(out.contains("\"id\": 12,"), out);
    }
  }
}
