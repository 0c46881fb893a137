package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Times are read and written as Java's own slow formatter does. */
class ScalarsTest {
  @Test
  void timesAreWrittenAndReadAsJavaDoes() {
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      long second = random.nextLong(-90_000_000_000L, 300_000_000_000L);
      Instant time = Instant.ofEpochSecond(second, i % 5 == 0 ? random.nextInt(1_000_000_000) : 0);
      assertEquals(time.toString(), Scalars.text(time));
      assertEquals(time, Scalars.time(time.toString()));
    }
  }

  @Test
  void whatJavaTakesForNoTimeIsNone() {
    for (String text :
        List.of(
            "2025-02-30T09:15:00Z",
            "2025-03-02T25:15:00Z",
            "2025-03-02T09:60:00Z",
            "2025-03-02T09:15:61Z",
            "2025-03-02 09:15:00Z",
            "2025-03-02T-9:15:00Z",
            "2025-03-02T09:15:00",
            "")) {
      assertThrows(DateTimeParseException.class, () -> Instant.parse(text), text);
      assertThrows(DateTimeParseException.class, () -> Scalars.time(text), text);
    }
    for (String text : List.of("2025-03-02T24:00:00Z", "2016-12-31T23:59:60Z")) {
      assertEquals(Instant.parse(text), Scalars.time(text));
    }
  }
}
