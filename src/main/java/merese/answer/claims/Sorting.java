package merese.answer.claims;

import java.util.Optional;
import merese.answer.CoverageQuestion.Years;
import merese.answer.claims.ClaimsAnswer.DateLine;
import merese.answer.claims.ClaimsAnswer.PlaceLine;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Sense;
import merese.answer.claims.ClaimsAnswer.Standing;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.model.Claim;

/** Says how a claim stands to the year or the place that was asked for, and why. */
final class Sorting {
  /** A standing with its reason, where that is not plain. */
  record Sorted(Standing standing, Optional<String> reason) {
    static Sorted plainly(Standing standing) {
      return new Sorted(standing, Optional.empty());
    }

    static Sorted because(Standing standing, String reason) {
      return new Sorted(standing, Optional.of(reason));
    }
  }

  private final ClaimsQuestion question;

  Sorting(ClaimsQuestion question) {
    this.question = question;
  }

  Sorted of(Row row) {
    if (row.kind() == Claim.Kind.DATE && question.years().isPresent()) {
      return date(row.date().get(), asked(question.years().get()));
    } else if (row.kind() == Claim.Kind.PLACE && question.place().isPresent()) {
      return place(row.place().get(), PlaceNames.of(question.place().get()));
    }
    return Sorted.plainly(Standing.CLAIMED);
  }

  private static YearSpan asked(Years years) {
    return new YearSpan(years.from(), years.to(), years.from().isEmpty(), years.to().isEmpty());
  }

  private static Sorted date(DateLine date, YearSpan asked) {
    if (!date.isRead()) {
      return Sorted.plainly(Standing.NOT_READ);
    } else if (date.dates().isPresent()) {
      return Sorted.because(
          Standing.DATES_SOMETHING_ELSE, "the " + date.dates().get() + ", not the making");
    } else if (Meeting.meet(date.core().get(), asked)) {
      return Sorted.plainly(Standing.SUPPORTS);
    } else if (Meeting.mayMeet(date.outer().get(), asked)) {
      return Sorted.because(Standing.BORDERLINE, onlyWithin(date));
    }
    return Sorted.plainly(Standing.DOES_NOT);
  }

  private static String onlyWithin(DateLine date) {
    if (date.circaYears().isPresent()) {
      return "only within circa ±" + date.circaYears().getAsInt();
    } else if (date.core().equals(date.outer())) {
      return "only if its unknown end reaches so far";
    }
    return "only in the outer years";
  }

  private static Sorted place(PlaceLine place, String asked) {
    if (place.denied().contains(asked)) {
      return Sorted.because(Standing.DOES_NOT, "its words say no");
    } else if (place.places().isEmpty()) {
      return Sorted.because(Standing.NOT_READ, "names no place that is known");
    }
    boolean named = false;
    boolean others = false;
    boolean wider = false;
    for (String each : place.places()) {
      boolean within = PlaceNames.liesIn(each, asked);
      named |= within;
      wider |= !within && PlaceNames.liesIn(asked, each);
      others |= !within;
    }
    if (named) {
      return others
          ? Sorted.because(Standing.BORDERLINE, "names it beside another place")
          : hedged(place.sense());
    }
    return wider
        ? Sorted.because(Standing.BORDERLINE, "names a wider place")
        : Sorted.plainly(Standing.DOES_NOT);
  }

  private static Sorted hedged(Sense sense) {
    return switch (sense) {
      case HEDGED -> Sorted.because(Standing.BORDERLINE, "hedged");
      case STYLE -> Sorted.because(Standing.BORDERLINE, "or only in its style");
      case FOUND -> Sorted.because(Standing.BORDERLINE, "found there, not said to be made there");
      case DENIED -> Sorted.because(Standing.DOES_NOT, "its words say no");
      case MAINLY -> Sorted.because(Standing.SUPPORTS, "mainly, so not only");
      case PLAIN, ONLY -> Sorted.plainly(Standing.SUPPORTS);
    };
  }
}
