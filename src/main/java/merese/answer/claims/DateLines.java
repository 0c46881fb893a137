package merese.answer.claims;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.claims.ClaimsAnswer.DateLine;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.model.Claim;
import merese.time.DateWords;
import merese.time.Edtf;
import merese.time.EdtfException;
import merese.time.Span;
import merese.time.WordedDate;
import merese.time.WordedDate.Read;
import merese.time.WordedDate.Width;

/**
 * What date claims come to in years. A date that a note gives in EDTF counts before the words;
 * where the words say the same, what they say beyond it counts too.
 */
final class DateLines {
  private static final List<String> OF_COPIES =
      List.of("copied ", "reproduced ", "revived ", "copies ", "reproductions ");
  private static final List<String> REGISTRATION =
      List.of("registered", "registration", "patented", "patent of");
  private static final List<String> PUBLICATION =
      List.of("advertised", "advertisement", "published", "price list of");

  private final DateWords dates;

  DateLines(DateWords dates) {
    this.dates = dates;
  }

  DateLine of(Claim claim) {
    Optional<Read> value = value(claim);
    String words = claim.about() == Claim.About.COPIES ? bare(claim.words()) : claim.words();
    WordedDate said = dates.read(words);
    Optional<Read> read = said instanceof Read each ? Optional.of(each) : Optional.empty();
    boolean same =
        value.isPresent() && read.isPresent() && value.get().core().equals(read.get().core());
    Optional<Read> counted = value.isPresent() && !same ? value : read;
    if (counted.isEmpty()) {
      List<String> choices =
          said instanceof WordedDate.Asks asks ? asks.choices() : List.<String>of();
      return unread(choices, claim);
    }
    Read date = counted.get();
    boolean fromValue = value.isPresent() && !same;
    return new DateLine(
        Optional.of(years(date.core())),
        Optional.of(years(date.outer())),
        fromValue ? !areIn(years(date.core()), claim.words()) : !date.printed(),
        date.width() == Width.CIRCA
            ? OptionalInt.of(dates.profile().circa().years())
            : OptionalInt.empty(),
        date.period(),
        fromValue,
        fromValue && read.isPresent() ? Optional.of(years(read.get().core())) : Optional.empty(),
        List.of(),
        dated(claim));
  }

  private static DateLine unread(List<String> choices, Claim claim) {
    return new DateLine(
        Optional.empty(),
        Optional.empty(),
        false,
        OptionalInt.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        choices,
        dated(claim));
  }

  private Optional<Read> value(Claim claim) {
    if (claim.value().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(dates.edtf(Edtf.parse(claim.value().get())));
    } catch (EdtfException e) {
      return Optional.empty(); // what is no EDTF is left to the words
    }
  }

  /** What is said of copies without the word for them: "copied from the 1920s". */
  private static String bare(String words) {
    String lower = words.toLowerCase(Locale.ROOT);
    for (String start : OF_COPIES) {
      if (lower.startsWith(start)) {
        return words.substring(start.length());
      }
    }
    return words;
  }

  /** Dates of making, of registration and of publication are kept apart. */
  private static Optional<String> dated(Claim claim) {
    String words = claim.words().toLowerCase(Locale.ROOT);
    if (claim.kind() != Claim.Kind.DATE) {
      return Optional.empty();
    } else if (holds(words, REGISTRATION)) {
      return Optional.of("registration");
    } else if (words.contains("watermark")) {
      return Optional.of("paper");
    }
    return holds(words, PUBLICATION) ? Optional.of("publication") : Optional.empty();
  }

  private static boolean holds(String words, List<String> any) {
    for (String each : any) {
      if (words.contains(each)) {
        return true;
      }
    }
    return false;
  }

  private static boolean areIn(YearSpan years, String words) {
    return isIn(years.from(), words) && isIn(years.to(), words);
  }

  /** Whether a year stands there as such, and not as part of "1990s". */
  private static boolean isIn(OptionalInt year, String words) {
    if (year.isEmpty()) {
      return true;
    }
    String digits = String.valueOf(year.getAsInt());
    int at = words.indexOf(digits);
    while (at >= 0) {
      int end = at + digits.length();
      if (end == words.length() || !Character.isLetterOrDigit(words.charAt(end))) {
        return true;
      }
      at = words.indexOf(digits, end);
    }
    return false;
  }

  static YearSpan years(Span span) {
    return new YearSpan(
        year(span.from()),
        year(span.to()),
        span.from() instanceof Span.Open,
        span.to() instanceof Span.Open);
  }

  private static OptionalInt year(Span.End end) {
    if (end instanceof Span.On on) {
      return OptionalInt.of((int) Math.max(-99_999, Math.min(99_999, on.day().year())));
    }
    return OptionalInt.empty();
  }
}
