package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** Why a source is left out; empty where it is wanted. */
  Optional<String> reasonAgainst(Source source) {
    List<String> reasons = new ArrayList<>();
    if (narrowing.owned() && !source.edition().owned()) {
      reasons.add("no copy of your own");
    }
    if (!narrowing.kinds().isEmpty() && !narrowing.kinds().contains(source.work().kind())) {
      reasons.add("another kind of source");
    }
    if (narrowing.years().isPresent() && !narrowing.years().get().contains(source.year())) {
      reasons.add(source.year().isPresent() ? "other years" : "undated");
    }
    return reasons.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", reasons));
  }
}
