package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BibtexReaderTest {
  @Nested
  class HostileInput {
    private Handed read(String text) {
      return Handed.read(text);
    }

    @Test
    void stringsThatGrowWithoutEndAreRefused() {
      StringBuilder bomb = new StringBuilder("@string{a = {aaaaaaaaaa}}\n");
      for (char c = 'b'; c <= 'z'; c++) {
        String before = String.valueOf((char) (c - 1));
        String ten = String.join(" # ", Collections.nCopies(10, before));
        bomb.append("@string{").append(c).append(" = ").append(ten).append("}\n");
      }
      Handed handed = read(bomb + "@misc{x, title = z}\n@misc{y, title = {Stems}}");
      assertTrue(handed.refused.get(0).what().contains("1048576 characters"), handed.toString());
      assertEquals(2, handed.sources.size());
    }

    @Test
    void anEntryOfTooManyBytesIsRefusedAndTheNextIsRead() {
      String text = "x".repeat(5 << 20);
      Handed handed = read("@misc{a, note = {" + text + "}}\n@misc{b, title = {Stems}}\n");
      assertTrue(handed.refused.get(0).what().contains("4194304 bytes"));
      assertEquals(4 << 20, handed.refused.get(0).verbatim().length);
      assertEquals("b", handed.sources.get(0).key().orElseThrow());
    }

    @Test
    void anEntryOfTooManyFieldsIsRefused() {
      Handed handed = read("@misc{a" + ", x = 1".repeat(5001) + "}");
      assertTrue(handed.refused.get(0).what().contains("5000 fields"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "@",
          "@a{",
          "@comment{",
          "\n@comment{",
          "\n@book{a,",
          "{",
          "@a{b,c=\"",
          "%",
          "@string{a=a#",
          "}",
          "@a ",
          "\n@a ",
          "@a(",
          ",",
          "@misc{a, title = {b}},"
        })
    void longRunsOfOnePieceAreReadToTheEnd(String piece) {
      Handed handed = read(piece.repeat(50_000));
      assertTrue(handed.count() <= 50_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "\\'", " and ", ",", "family=a, ", "$", "-", "a # ", "\""})
    void longRunsOfOnePieceInAFieldAreUnderstood(String piece) {
      String run = piece.repeat(100_000);
      String closed = run + "}".repeat((int) run.chars().filter(c -> c == '{').count());
      for (String field : List.of("author", "title", "year", "pages", "isbn", "address", "month")) {
        Handed handed =
            read("@article{a, journal = {Severn Papers}, " + field + " = {" + closed + "}}");
        assertEquals(1, handed.sources.size(), handed.refused.toString());
      }
    }

    @Test
    void aCircleOfCrossReferencesEnds() {
      String circle =
          IntStream.range(0, 100)
              .mapToObj(i -> "@book{k" + i + ", crossref = {k" + (i + 1) % 100 + "}}\n")
              .collect(Collectors.joining());
      assertEquals(100, read(circle).sources.size());
    }

    @Test
    void manyDataThatReferToEachOtherAreReadOnceEach() {
      String all = IntStream.range(0, 200).mapToObj(i -> "k" + i).collect(Collectors.joining(","));
      String web =
          IntStream.range(0, 200)
              .mapToObj(i -> "@xdata{k" + i + ", xdata = {" + all + "}, note" + i + " = {x}}\n")
              .collect(Collectors.joining());
      assertEquals(1, read(web + "@book{b, title = {Stems}, xdata = {k0}}").sources.size());
    }
  }

  @Nested
  class AFileLongerThanMemoryHoldsAtOnce {
    private static final int COUNT = 30_000;

    private InputStream file() {
      return new SequenceInputStream(
          Collections.enumeration(
              IntStream.range(0, COUNT)
                  .mapToObj(i -> entry(i) + (i % 1000 == 500 ? parent(i / 1000) : ""))
                  .map(text -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                  .toList()));
    }

    private static String entry(int i) {
      return "@incollection{k"
          + i
          + ", title = {Stems}, crossref = {book"
          + i / 1000
          + "},\n note = {"
          + "note ".repeat(10)
          + "}}\n";
    }

    private static String parent(int i) {
      return "@book{book" + i + ", booktitle = {Severn Papers " + i + "}, title = {Papers}}\n";
    }

    @Test
    void inheritsFromBeforeAndAfterAndKeepsItsOrder() throws IOException {
      List<String> keys = new ArrayList<>();
      new BibtexReader()
          .read(
              "x.bib",
              file(),
              new Sources() {
                @Override
                public void source(Incoming source) {
                  String key = source.key().orElseThrow();
                  if (key.startsWith("k")) {
                    keys.add(key);
                    assertEquals(
                        "Severn Papers " + Integer.parseInt(key.substring(1)) / 1000,
                        source.edition().container().orElseThrow().title());
                  }
                }
              });
      assertEquals(IntStream.range(0, COUNT).mapToObj(i -> "k" + i).toList(), keys);
    }

    @Test
    void leavesNoFileBehindAndLetsTheReceiverBreakOff(@TempDir Path temporary) throws IOException {
      List<Boolean> spooled = new ArrayList<>();
      IllegalStateException thrown =
          assertThrows(
              IllegalStateException.class,
              () ->
                  new BibtexReader(temporary)
                      .read(
                          "x.bib",
                          file(),
                          new Sources() {
                            @Override
                            public void source(Incoming source) {
                              spooled.add(temporary.toFile().list().length == 1);
                              throw new IllegalStateException("enough");
                            }
                          }));
      assertEquals("enough", thrown.getMessage());
      assertEquals(List.of(true), spooled);
      assertEquals(0, temporary.toFile().list().length);
    }
  }

  /** Takes sources alone. */
  private abstract static class Sources implements Receiver {
    @Override
    public void kept(FilePlace place, ReceivedRecord record) {}

    @Override
    public void refused(Refused record) {
      throw new AssertionError(record.toString());
    }
  }

  @Test
  void whatWasRefusedIsReadOnceItIsMendedWithTheStringsBeforeIt() throws IOException {
    byte[] file =
        """
        @string{press = {Severn Press}}
        @string{both = press # { and Sons}}
        @book{one, title = {Stems}, publisher = both
        @book{two, title = {Bowls}, publisher = press}
        """
            .getBytes(StandardCharsets.UTF_8);
    BibtexReader reader = new BibtexReader();
    Handed handed = new Handed();
    reader.read("x.bib", new ByteArrayInputStream(file), handed);
    Wrapping wrapping = reader.wrapping();
    String verbatim = new String(handed.refused.get(0).verbatim(), StandardCharsets.UTF_8);
    Handed mended =
        Handed.read(wrapping.before() + verbatim + "}" + wrapping.between() + wrapping.after());
    assertEquals(
        "Severn Press and Sons", mended.sources.get(0).received().field("publisher").orElseThrow());
  }
}
