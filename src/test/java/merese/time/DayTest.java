package merese.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Against java.time, as far as that reaches. */
class DayTest {
  private static final long LAST = 365_241_780_471L; // the last day of java.time

  private static Day day(LocalDate date) {
    return new Day(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
  }

  @Property(seed = "1")
  void daysMonthsAndYearsAreAddedAsJavaDoes(
      @ForAll @LongRange(min = -1_000_000, max = 1_000_000) long number,
      @ForAll @IntRange(min = -100_000, max = 100_000) int more) {
    LocalDate date = LocalDate.ofEpochDay(number);
    assertEquals(day(date.plusDays(more)), day(date).plusDays(more));
    assertEquals(day(date.plusMonths(more)), day(date).plusMonths(more));
    assertEquals(day(date.plusYears(more)), day(date).plusYears(more));
    assertEquals(
        date.compareTo(date.plusDays(more)) > 0, day(date).compareTo(day(date.plusDays(more))) > 0);
  }

  @Property(seed = "1")
  void farDaysToo(@ForAll @LongRange(min = -LAST / 2, max = LAST / 2) long number) {
    LocalDate date = LocalDate.ofEpochDay(number);
    assertEquals(day(date.plusDays(1)), day(date).plusDays(1));
    assertEquals(date.lengthOfMonth(), day(date).endOfMonth().day());
    assertEquals(date.toString(), day(date).toString());
  }

  @Test
  void yearsBeyondJavaAreDaysToo() {
    assertEquals(new Day(1_000_000_000_000L, 3, 1), new Day(1_000_000_000_000L, 2, 29).plusDays(1));
    assertTrue(new Day(-1_000_000_000_000L, 1, 1).compareTo(new Day(0, 1, 1)) < 0);
  }

  @Test
  void aDayIsInTheCalendar() {
    assertThrows(IllegalArgumentException.class, () -> new Day(1900, 2, 29));
    assertThrows(IllegalArgumentException.class, () -> new Day(1900, 13, 1));
    assertThrows(IllegalArgumentException.class, () -> new Day(1900, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Day(Long.MIN_VALUE, 1, 1));
  }
}
