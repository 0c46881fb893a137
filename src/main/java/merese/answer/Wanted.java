package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.CoverageQuestion.Narrowing;
import merese.model.SourceKind;
import merese.search.SourceSelection;
import merese.search.SourceSet;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** Which sources a question wants, and what to say of those it does not. */
final class Wanted {
  private final Shelf shelf;
  private final Narrowing narrowing;
  private SourceSet sources;

  Wanted(Shelf shelf, Narrowing narrowing) {
    this.shelf = shelf;
    this.narrowing = narrowing;
  }

  /** Whether some sources may not be wanted. */
  boolean narrows() {
    return narrowing.owned() || !narrowing.kinds().isEmpty() || narrowing.years().isPresent();
  }

  /** The sources that are wanted and not the user's own work. */
  SourceSelection selection() {
    Set<String> kinds = new HashSet<>();
    for (SourceKind kind : narrowing.kinds()) {
      kinds.add(kind.code());
    }
    Optional<Collection<OptionalInt>> years = Optional.empty();
    if (narrowing.years().isPresent()) {
      List<OptionalInt> within = new ArrayList<>();
      for (OptionalInt year : shelf.years()) {
        if (narrowing.years().get().contains(year)) {
          within.add(year);
        }
      }
      years = Optional.of(within);
    }
    return new SourceSelection(narrowing.owned(), kinds, years);
  }

  /** The same as a set. */
  SourceSet sources() {
    if (sources == null) {
      sources = shelf.census().selected(selection());
    }
    return sources;
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
