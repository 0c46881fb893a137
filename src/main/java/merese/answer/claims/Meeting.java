package merese.answer.claims;

import java.util.OptionalInt;
import merese.answer.claims.ClaimsAnswer.YearSpan;

/** Whether spans of years have a year in common. */
final class Meeting {
  private Meeting() {}

  /** An end that is open or unknown takes in everything beyond. */
  static boolean mayMeet(YearSpan one, YearSpan other) {
    return isUpTo(one.from(), other.to()) && isUpTo(other.from(), one.to());
  }

  /** As the plain reading has it: nothing is known beyond an unknown end. */
  static boolean meet(YearSpan one, YearSpan asked) {
    return mayMeet(closed(one), asked);
  }

  /** An unknown end is taken to be where the other one is. */
  private static YearSpan closed(YearSpan span) {
    OptionalInt from = span.from().isEmpty() && !span.openStart() ? span.to() : span.from();
    OptionalInt to = span.to().isEmpty() && !span.openEnd() ? span.from() : span.to();
    return new YearSpan(from, to, span.openStart(), span.openEnd());
  }

  private static boolean isUpTo(OptionalInt start, OptionalInt end) {
    return start.isEmpty() || end.isEmpty() || start.getAsInt() <= end.getAsInt();
  }
}
