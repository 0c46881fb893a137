package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

class LocalClockTest {
  @Test
  void isAsFarFromGreenwichAsJavasOwnZones() {
    TimeZone before = TimeZone.getDefault();
    try {
      for (String name : new String[] {"Europe/Dublin", "Asia/Kolkata", "America/St_Johns"}) {
        TimeZone.setDefault(TimeZone.getTimeZone(name));
        Instant time = Instant.parse("2025-01-01T00:30:00Z");
        for (int hour = 0; hour < 2 * 365 * 24; hour++) {
          assertEquals(
              ZoneId.of(name).getRules().getOffset(time),
              LocalClock.offsetAt(time),
              name + " " + time);
          time = time.plus(1, ChronoUnit.HOURS);
        }
      }
    } finally {
      TimeZone.setDefault(before);
    }
  }
}
