package merese.time;

import java.util.Optional;

/**
 * From one day to another, both included; either end may be open (there is none) or unknown (there
 * is one).
 */
public record Span(End from, End to) {
  /** Where a span ends. */
  public sealed interface End permits On, Open, Unknown {}

  /** On a known day. */
  public record On(Day day) implements End {
    @Override
    public String toString() {
      return day.toString();
    }
  }

  /** Never. */
  public record Open() implements End {
    @Override
    public String toString() {
      return "..";
    }
  }

  /**
   * On an unknown day.
   *
   * @param reached how far it reaches at the least, by the plain reading: of "1785/" to the end of
   *     that year; empty where the other end is open
   */
  public record Unknown(Optional<Day> reached) implements End {
    @Override
    public String toString() {
      return "";
    }
  }

  public Span {
    if (from instanceof On first && to instanceof On last && isAfter(first.day(), last.day())) {
      throw new IllegalArgumentException("a span ends before it starts: " + from + ", " + to);
    }
  }

  private static boolean isAfter(Day one, Day other) {
    return one.compareTo(other) > 0;
  }

  static Span of(Day from, Day to) {
    return new Span(new On(from), new On(to));
  }

  /**
   * Whether some day is in both: an open end takes in everything beyond, an unknown one nothing
   * beyond what it reaches at the least.
   */
  public boolean overlaps(Span other) {
    return isUpTo(from, other.to, false) && isUpTo(other.from, to, false);
  }

  /** Whether some day may be in both: an unknown end counts as an open one. */
  public boolean mayOverlap(Span other) {
    return isUpTo(from, other.to, true) && isUpTo(other.from, to, true);
  }

  private static boolean isUpTo(End start, End end, boolean unknownIsOpen) {
    if (!unknownIsOpen && (reachesNowhere(start) || reachesNowhere(end))) {
      return false;
    }
    Optional<Day> first = day(start, unknownIsOpen);
    Optional<Day> last = day(end, unknownIsOpen);
    return first.isEmpty() || last.isEmpty() || !isAfter(first.get(), last.get());
  }

  private static boolean reachesNowhere(End end) {
    return end instanceof Unknown unknown && unknown.reached().isEmpty();
  }

  private static Optional<Day> day(End end, boolean unknownIsOpen) {
    if (end instanceof On on) {
      return Optional.of(on.day());
    }
    return end instanceof Unknown unknown && !unknownIsOpen ? unknown.reached() : Optional.empty();
  }

  /** The smallest that has both in it, where neither has an unknown end. */
  Span hull(Span other) {
    return new Span(further(from, other.from, true), further(to, other.to, false));
  }

  private static End further(End one, End other, boolean earlier) {
    if (one instanceof On first && other instanceof On second) {
      return new On(
          earlier ? Day.earlier(first.day(), second.day()) : Day.later(first.day(), second.day()));
    }
    return new Open();
  }

  /** As an EDTF interval: "1785-01-01/1795-12-31", "1785-01-01/..", "/1795-12-31". */
  @Override
  public String toString() {
    return from + "/" + to;
  }
}
