package merese.answer;

import merese.answer.CoverageQuestion.Narrowing;
import merese.shelf.Source;

/** Which sources a question wants, and what to say of those it does not. */
final class Wanted {
  private final Narrowing narrowing;

  Wanted(Narrowing narrowing) {
    this.narrowing = narrowing;
  }

  boolean includes(Source source) {
    return reasonAgainst(source).isEmpty();
  }

  /** Why a source is left out; an empty text where it is wanted. */
  String reasonAgainst(Source source) {
    String reasons = "";
    if (narrowing.owned() && !source.owned()) {
      reasons = "no copy of your own";
    }
    if (!narrowing.kinds().isEmpty() && !narrowing.kinds().contains(source.kind())) {
      reasons = and(reasons, "another kind of source");
    }
    if (narrowing.years().isPresent() && !narrowing.years().get().contains(source.year())) {
      reasons = and(reasons, source.year().isPresent() ? "other years" : "undated");
    }
    return reasons;
  }

  private static String and(String reasons, String reason) {
    return reasons.isEmpty() ? reason : reasons + ", " + reason;
  }
}
