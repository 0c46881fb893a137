package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files that would take a reader for ever that went back for each mark, or all memory of one that
 * kept what it has read. Each is long enough that the former would be noticed.
 */
class HostileFilesTest {
  private static final int TIMES = 700_000;

  /** A piece of text that is read over and over without an end. */
  private static final class Endless extends InputStream {
    private final byte[] start;
    private final byte[] again;
    private long left;
    private int at;

    Endless(String start, String again, long bytes) {
      this.start = start.getBytes(StandardCharsets.UTF_8);
      this.again = again.getBytes(StandardCharsets.UTF_8);
      this.left = bytes;
    }

    @Override
    public int read(byte[] into, int from, int length) {
      int count = 0;
      int next = 0;
      while (count < length && next >= 0) {
        next = read();
        if (next >= 0) {
          into[from + count++] = (byte) next;
        }
      }
      return count == 0 && length > 0 ? -1 : count;
    }

    @Override
    public int read() {
      if (left-- <= 0) {
        return -1;
      }
      int next = at++;
      if (next < start.length) {
        return start[next];
      }
      if (next - start.length == again.length - 1) {
        at = start.length;
      }
      return again[next - start.length];
    }
  }

  /** Counts, and keeps nothing. */
  private static final class Counting implements Receiver {
    private int sources;
    private int refused;
    private long bytes;

    @Override
    public void source(Incoming source) {
      sources++;
    }

    @Override
    public void kept(FilePlace place, ReceivedRecord record) {
      throw new AssertionError();
    }

    @Override
    public void refused(Refused record) {
      refused++;
      bytes += record.verbatim().length;
    }
  }

  private static Counting counted(RecordReader reader, InputStream in) throws IOException {
    Counting counting = new Counting();
    reader.read("file", in, counting);
    return counting;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!--",
        "<record><!--",
        "<record><![CDATA[",
        "<?x",
        "<!DOCTYPE",
        "<a>",
        "</a>",
        "<record>",
        "</record>",
        "<leader>",
        "<leader><!--",
        "&lt;",
        "<a<b<c",
        "<a'\"",
      })
  void marksThatNeverEndAreReadOnce(String mark) throws IOException {
    String start = "<collection xmlns=\"http://www.loc.gov/MARC21/slim\">";
    String last = mark.substring(mark.lastIndexOf('<') < 0 ? 0 : mark.lastIndexOf('<'));
    Endless file = new Endless(start + mark, last, (long) last.length() * TIMES);
    Counting counted = counted(new MarcXmlReader(), file);
    assertEquals(0, counted.sources);
    assertTrue(counted.refused <= TIMES + 1);
  }

  @Test
  void commentsThatHoldTheEndOfARecordAreReadOnce() throws IOException {
    String file = "<record>" + "<!--".repeat(TIMES) + "</record>" + "<!--".repeat(TIMES) + "-->";
    Handed handed = Handed.xml(file);
    assertEquals(1, handed.refused.size());
  }

  private static String record(String title) {
    return "<record><leader>00000nam a2200000 a 4500</leader><datafield tag=\"245\" ind1=\"0\""
        + " ind2=\"0\"><subfield code=\"a\">"
        + title
        + "</subfield></datafield></record>";
  }

  private static List<String> titles(Handed handed) {
    return handed.sources.stream().map(source -> source.work().title()).toList();
  }

  /** XML 1.0 (fifth edition), 2.5 to 2.7: none of them holds markup. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!-- </record> <record> -->",
        "<![CDATA[</record> <record>]]>",
        "<?note </record> <record> ?>",
      })
  void theEndOfARecordInACommentOrTheLikeEndsNone(String other) throws IOException {
    Handed handed = Handed.xml(record("Knops" + other) + record("Feet"));
    assertEquals(List.of(), handed.refused);
    String text = other.startsWith("<![") ? "</record> <record>" : "";
    assertEquals(List.of("Knops" + text, "Feet"), handed.words());
  }

  @Test
  void aCommentThatIsNotClosedCostsNoOtherRecord() throws IOException {
    String unclosed = record("Knops <!-- never closed");
    Handed handed = Handed.xml(unclosed + record("Feet<!-- a note -->") + record("Rims"));
    assertEquals(1, handed.refused.size());
    assertEquals(List.of("Feet", "Rims"), titles(handed));
  }

  @Test
  void aCommentThatIsNotClosedBetweenRecordsCostsNone() throws IOException {
    String start = "<collection xmlns=\"http://www.loc.gov/MARC21/slim\"><!-- never closed ";
    Handed handed = Handed.xml(start + record("Knops") + record("Feet<!-- a note -->"));
    assertEquals(List.of("Knops", "Feet"), handed.words());
  }

  @ParameterizedTest
  @CsvSource({
    "'00024nam a2200025 a 4500'",
    "'99999nam a2200025 a 4500'",
    "'00024nam a2200025 a 4500\u001e'",
    "'\u001e'",
    "'\u001f'",
    "'0'",
    "' x'"
  })
  void bytesWithoutTerminatorAreReadOnce(String again) throws IOException {
    long bytes = 24L * 200_000;
    Counting counted = counted(new MarcReader(), new Endless("", again, bytes));
    assertEquals(0, counted.sources);
    assertTrue(counted.refused > 0);
    assertTrue(counted.bytes >= bytes / 2);
  }

  @Test
  void aFileOfAnySizeIsReadRecordByRecord() throws IOException {
    String record =
        "<record><leader>00000nam a2200000 a 4500</leader><datafield tag=\"245\" ind1=\"0\""
            + " ind2=\"0\"><subfield code=\"a\">Glass</subfield></datafield></record>\n";
    int times = 20_000;
    Endless file = new Endless("", record, (long) record.length() * times);
    Counting counted = counted(new MarcXmlReader(), file);
    assertEquals(times, counted.sources);
    assertEquals(0, counted.refused);
  }

  @Test
  void whatTheReceiverThrowsPassesThrough() {
    Receiver stops =
        new Receiver() {
          @Override
          public void source(Incoming source) {
            throw new IllegalStateException("enough");
          }

          @Override
          public void kept(FilePlace place, ReceivedRecord record) {}

          @Override
          public void refused(Refused record) {}
        };
    byte[] xml =
        "<record><datafield tag=\"245\" ind1=\"0\" ind2=\"0\"><subfield code=\"a\">A</subfield></datafield></record>"
            .getBytes(StandardCharsets.UTF_8);
    for (RecordReader reader : List.of(new MarcXmlReader(), new MarcReader())) {
      byte[] file = reader instanceof MarcReader ? SandburgTest.iso(slim(xml), "UTF-8") : xml;
      IllegalStateException thrown =
          org.junit.jupiter.api.Assertions.assertThrows(
              IllegalStateException.class,
              () -> reader.read("file", new ByteArrayInputStream(file), stops));
      assertEquals("enough", thrown.getMessage());
    }
  }

  private static byte[] slim(byte[] record) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(
        "<collection xmlns=\"http://www.loc.gov/MARC21/slim\">".getBytes(StandardCharsets.UTF_8));
    out.writeBytes(record);
    out.writeBytes("</collection>".getBytes(StandardCharsets.UTF_8));
    return out.toByteArray();
  }
}
