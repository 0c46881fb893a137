package merese.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.TimeZone;

/**
 * The system's clock, in the time of the place. {@link ZoneId#systemDefault} would look into every
 * jar of the class path for zones, which takes longer than all else of a short note.
 */
final class LocalClock extends Clock {
  private static final int MILLISECONDS = 1_000;

  @Override
  public ZoneId getZone() {
    return offsetAt(instant());
  }

  static ZoneOffset offsetAt(Instant time) {
    return ZoneOffset.ofTotalSeconds(
        TimeZone.getDefault().getOffset(time.toEpochMilli()) / MILLISECONDS);
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return Clock.system(zone);
  }

  @Override
  public Instant instant() {
    return Clock.systemUTC().instant();
  }
}
