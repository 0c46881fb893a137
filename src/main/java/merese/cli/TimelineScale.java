package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import merese.answer.claims.ClaimsAnswer.Bar;
import merese.answer.claims.ClaimsAnswer.YearSpan;

/**
 * The years that a timeline shows.
 *
 * @param from the first of them
 * @param to the year after the last
 */
record TimelineScale(int from, int to) {
  private static final int[] STEPS = {1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 5000, 20_000};
  private static final int MARGIN = 10;

  /** All years that are named, and some beyond an end that is open. */
  static TimelineScale of(List<Bar> bars) {
    int from = Integer.MAX_VALUE;
    int to = Integer.MIN_VALUE;
    boolean openStart = false;
    boolean openEnd = false;
    for (Bar bar : bars) {
      for (OptionalInt year : ends(bar.outer())) {
        if (year.isPresent()) {
          from = Math.min(from, year.getAsInt());
          to = Math.max(to, year.getAsInt() + 1);
        }
      }
      openStart |= bar.outer().from().isEmpty();
      openEnd |= bar.outer().to().isEmpty();
    }
    if (from > to) {
      return new TimelineScale(0, 1);
    }
    return new TimelineScale(
        Math.floorDiv(from - (openStart ? MARGIN : 0), 10) * 10,
        -Math.floorDiv(-(to + (openEnd ? MARGIN : 0)), 10) * 10);
  }

  private static List<OptionalInt> ends(YearSpan span) {
    return List.of(span.from(), span.to());
  }

  /** Where a year starts, on a line so long. */
  double at(int year, double length) {
    return (year - from) * length / (to - from);
  }

  /** Round years, at most so many. */
  List<Integer> ticks(int most) {
    for (int step : STEPS) {
      List<Integer> ticks = new ArrayList<>();
      for (int year = -Math.floorDiv(-from, step) * step; year <= to; year += step) {
        ticks.add(year);
        if (ticks.size() > most) {
          break;
        }
      }
      if (ticks.size() <= most) {
        return ticks;
      }
    }
    return List.of();
  }
}
