package merese.exchange.csl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Received;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Items beyond the limits that {@link CslJsonReader} states, and what else a file may be. */
class CslLimitsTest {
  private static final int MORE_THAN_FOUR_MEBIBYTES = 5 << 20;

  @ParameterizedTest
  @ValueSource(strings = {"x", "\\\\", "é"})
  void anItemOfMoreThanFourMebibytesIsRefusedWithItsBeginning(String piece) {
    String text =
        "[\n  {\"id\": \"a\", \"title\": \"One\", \"x\": \""
            + piece.repeat(MORE_THAN_FOUR_MEBIBYTES / piece.length())
            + "\"},\n  {\"id\": \"b\", \"title\": \"Two\"}\n]\n";
    Received received = Received.of(new CslJsonReader(), text);
    Refused refused = received.refusals().get(0);
    assertEquals("the item is longer than 4 MiB; this is its beginning", refused.what());
    assertEquals(4 << 20, refused.verbatim().length);
    assertEquals(1, received.refusals().size());
    assertEquals("Two", received.sources().get(0).work().title());
    assertEquals(3, received.sources().get(0).place().line());
  }

  @Test
  void manyBracketsAreNeitherDeepNorSlow() {
    Received received = Received.of(new CslJsonReader(), "[{\"id\":" + "[".repeat(300_000));
    assertEquals(1, received.refusals().size());
  }

  @Test
  void anItemThatOpensManyOthersIsPartedFromThem() {
    Received received = Received.of(new CslJsonReader(), "{\"id\":[".repeat(2000));
    assertEquals(2000, received.refusals().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32BE"})
  void aFileOfAnotherEncodingIsRefusedAsAWhole(String charset) throws Exception {
    byte[] file = "[{\"id\":\"a\",\"title\":\"One\"}]".getBytes(charset);
    Received received = Received.of(new CslJsonReader(), file);
    assertEquals(0, received.sources().size());
    assertEquals("the file is UTF-16 or UTF-32", received.refusals().get(0).what());
    assertEquals(1, received.refusals().size());
  }

  @Test
  void aReceiverCanBreakTheReadingOff() {
    Receiver unwilling =
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
    ByteArrayInputStream file =
        new ByteArrayInputStream("{\"title\":\"One\"}".getBytes(StandardCharsets.UTF_8));
    String message =
        assertThrows(
                IllegalStateException.class,
                () -> new CslJsonReader().read("file", file, unwilling))
            .getMessage();
    assertEquals("enough", message);
  }

  @Test
  void whatIsRefusedCanBeReadAgainInItsWrapping() {
    String text = "[{\"id\":\"a\"},{\"id\":\"b\",\"title\":\"T\"},{\"id\":\"c\"}]";
    CslJsonReader reader = new CslJsonReader();
    Received received = Received.of(reader, text);
    StringBuilder again = new StringBuilder(reader.wrapping().before());
    for (Refused each : received.refusals()) {
      boolean first = again.length() == reader.wrapping().before().length();
      again.append(first ? "" : reader.wrapping().between());
      again.append(new String(each.verbatim(), StandardCharsets.UTF_8).replace("}", ",\"title\":\"M\"}"));
    }
    Received mended = Received.of(reader, again.append(reader.wrapping().after()).toString());
    assertEquals(2, mended.sources().size());
    assertTrue(mended.refusals().isEmpty());
  }
}
