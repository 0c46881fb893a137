package merese.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import merese.exchange.Incoming;
import merese.exchange.Received;
import merese.exchange.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows beyond the limits that {@link RowSplitter} states. */
class CsvLimitsTest {
  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A header, a piece often enough to pass the limit, and a row behind it. */
  private static Received read(String piece) throws Exception {
    InputStream long5 =
        new SequenceInputStream(
            Collections.enumeration(
                List.of(
                    stream("Title,Year\n"),
                    stream(piece.repeat(5 * (1 << 20) / piece.length())),
                    stream("\nGlass,1949\n"))));
    Received received = new Received();
    new CsvReader().read("file", long5, received);
    return received;
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", ",", "x,", "\"\""})
  void aRowOfMoreThanFourMebibytesIsRefusedWithItsBeginning(String piece) throws Exception {
    Received received = read(piece);
    Refused first = received.refusals().get(0);
    assertEquals(1, received.refusals().size());
    assertEquals("the row is longer than 4 MiB; this is its beginning", first.what());
    assertEquals(4 << 20, first.verbatim().length);
    Incoming next = received.sources().get(0);
    assertEquals("Glass", next.work().title());
    assertEquals(3, next.place().line());
  }

  @Test
  void aTableOfMoreThanTenThousandColumnsIsRefused() {
    Received received = Received.of(new CsvReader(), "Title" + ",x".repeat(10_000) + "\na\n");
    assertEquals(0, received.sources().size());
    assertEquals(
        "the header row has 10001 cells, and at most 10,000 are read",
        received.refusals().get(0).what());
  }

  @Test
  void aRowWithManyMoreCellsThanTheHeaderIsRefused() {
    Received received =
        Received.of(new CsvReader(), "Title,Year\na,1" + ",".repeat(20_000) + "x\nb,2\n");
    assertEquals("the row has 20002 cells, the header row 2", received.refusals().get(0).what());
    assertEquals(1, received.sources().size());
  }
}
