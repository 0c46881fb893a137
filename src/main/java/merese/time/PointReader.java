package merese.time;

import java.util.List;
import java.util.Optional;
import merese.model.DateWord;
import merese.time.WordedDate.Width;

/** Reads one date in words: a year, a day, a decade, a century or part of one, a period. */
final class PointReader {
  private static final int LAST_HUNDRED = 99;

  private final DateCursor cursor;
  private final DateProfile profile;
  private boolean year;
  private boolean about;
  private boolean ofCentury;
  private boolean owesNoun;
  private boolean range;

  PointReader(DateCursor cursor, DateProfile profile) {
    this.cursor = cursor;
    this.profile = profile;
  }

  /** Whether the last one was a plain year. */
  boolean isYear() {
    return year;
  }

  boolean isAbout() {
    return about;
  }

  /** Whether the last one was a century or a part of one. */
  boolean isOfCentury() {
    return ofCentury;
  }

  /** Whether "century" has been left out and did not follow: "late 18th". */
  boolean owesNoun() {
    return owesNoun;
  }

  boolean saidRange() {
    return range;
  }

  void sayRange() {
    range = true;
  }

  /** Null where none stands here; of a day, "about" means days. */
  Reach read(boolean isAbout) {
    about = isAbout;
    year = false;
    ofCentury = false;
    Reach day = day();
    if (day != null) {
      return day;
    }
    Reach read = periodOrElse();
    return read != null && about ? read.about(profile.circa()) : read;
  }

  private Reach periodOrElse() {
    Reach period = period();
    if (period != null) {
      return period;
    }
    DateWord part = part();
    if (part != null) {
      return partOf(part);
    }
    Reach fraction = fraction();
    if (fraction != null) {
      return fraction;
    }
    if (Ordinals.century(cursor.peek(0)) > 0) {
      return century();
    }
    Reach decade = decade(0, 9, 0, 9);
    return decade == null ? year() : decade;
  }

  private Reach year() {
    String token = cursor.peek(0);
    if (!Ordinals.isNumber(token) || token.length() < 3 || token.length() > 4) {
      return null;
    }
    cursor.take();
    year = true;
    return ofYear(Integer.parseInt(token));
  }

  private static Reach ofYear(int number) {
    return Reach.years(number, number, number, number, Width.SAME)
        .withEdtf(Reach.fourDigits(number))
        .asPrinted();
  }

  /** The end of "1790–1810" that leaves out what it shares with the start: "1790–5", "1745–60". */
  Reach shortened(Reach first) {
    String token = cursor.peek(0);
    if (!Ordinals.isNumber(token) || token.length() > 2) {
      return null;
    }
    int step = token.length() == 1 ? 10 : 100;
    long start = first.coreFrom().year();
    long end = start / step * step + Integer.parseInt(token);
    if (end <= start) {
      return null;
    }
    cursor.take();
    about = false;
    return ofYear((int) end);
  }

  /** Some years of a decade, counted from its first; outer ones after the plain ones. */
  private Reach decade(int from, int to, int earliest, int latest) {
    String token = cursor.peek(0);
    String digits = token.isEmpty() ? "" : token.substring(0, token.length() - 1);
    if (!token.endsWith("0s") || digits.length() != 4 || !Ordinals.isNumber(digits)) {
      return null;
    }
    cursor.take();
    int first = Integer.parseInt(digits);
    Reach reach =
        Reach.years(first + from, first + to, first + earliest, first + latest, Width.CENTURY);
    return to - from == 9 ? reach.withEdtf(digits.substring(0, 3) + "X") : reach.estimated();
  }

  private Reach century() {
    int number = Ordinals.century(cursor.take());
    noun();
    int first = profile.firstYear(number);
    Reach reach =
        Reach.years(
            first,
            first + LAST_HUNDRED,
            first,
            first + LAST_HUNDRED + profile.yearsBeyondEnd(),
            Width.CENTURY);
    return first % 100 == 0
        ? reach.withEdtf(Reach.fourDigits(first).substring(0, 2) + "XX")
        : reach;
  }

  /** "Century" may be left out before a second one: "late 18th or early 19th century". */
  private void noun() {
    ofCentury = true;
    if (Ordinals.isCentury(cursor.peek(0))) {
      cursor.take();
      owesNoun = false;
    } else {
      owesNoun = true;
    }
  }

  private DateWord part() {
    DateWord found = words(profile.parts());
    if (found == null && cursor.is("middle")) {
      for (DateWord part : profile.parts()) {
        if (part.word().equals("mid")) {
          cursor.take();
          return part;
        }
      }
    }
    return found;
  }

  private Reach partOf(DateWord first) {
    DateWord last = first;
    int before = cursor.position();
    if (cursor.accept("to") || cursor.accept(DateTokens.DASH)) {
      last = part();
      if (last == null) {
        cursor.backTo(before);
        return null;
      }
    }
    int number = Ordinals.century(cursor.peek(0));
    if (number == 0) {
      return tenths(first, last);
    }
    cursor.take();
    noun();
    int start = profile.firstYear(number);
    return Reach.years(
            start + first.from(),
            start + last.to(),
            start + Math.min(first.earliest(), last.earliest()),
            start + Math.max(first.latest(), last.latest()),
            Width.CENTURY)
        .estimated();
  }

  /** Parts of a decade, by the same share of its ten years: "late 1790s" is 1797–1799. */
  private Reach tenths(DateWord first, DateWord last) {
    int from = (first.from() + 9) / 10;
    int to = Math.max(from, last.to() / 10);
    return decade(
        from, to, Math.min(from, first.earliest() / 10), Math.max(to, last.latest() / 10));
  }

  private Reach period() {
    DateWord period = words(profile.periods());
    if (period == null) {
      return null;
    }
    cursor.accept("period");
    return Reach.years(period.from(), period.to(), period.earliest(), period.latest(), Width.PERIOD)
        .ofPeriod(period.word());
  }

  /** The longest of them that stands here, taken. */
  private DateWord words(List<DateWord> known) {
    DateWord longest = null;
    int length = 0;
    for (DateWord word : known) {
      List<String> tokens = DateTokens.of(word.word());
      int before = cursor.position();
      if (tokens.size() > length && cursor.acceptAll(tokens)) {
        longest = word;
        length = tokens.size();
      }
      cursor.backTo(before);
    }
    cursor.backTo(cursor.position() + length);
    return longest;
  }

  private Reach fraction() {
    int parts =
        switch (cursor.peek(1)) {
          case "half" -> 2;
          case "third" -> 3;
          case "quarter" -> 4;
          default -> 0;
        };
    int which = cursor.is("last") ? parts : Ordinals.of(cursor.peek(0));
    int number = Ordinals.century(cursor.peek(2));
    if (parts == 0 || which == 0 || which > parts || number == 0) {
      return null;
    }
    cursor.backTo(cursor.position() + 3);
    noun();
    int first = profile.firstYear(number);
    int from = first + boundary(which - 1, parts);
    int to = first + boundary(which, parts) - 1;
    return Reach.years(from, to, from, to + profile.yearsBeyondEnd(), Width.CENTURY);
  }

  /** Thirds begin at 0, 34 and 67, as early, mid and late do (R8). */
  private static int boundary(int index, int parts) {
    return (100 * index + parts - 1) / parts;
  }

  /** "14 June 1869", "June 14, 1869" or "June 1869". */
  private Reach day() {
    int before = cursor.position();
    String written = dayAsEdtf();
    if (written == null) {
      cursor.backTo(before);
      return null;
    }
    try {
      return Reach.of(Edtf.parse(written + (about ? "~" : "")), profile.circa());
    } catch (EdtfException e) {
      cursor.backTo(before);
      return null;
    }
  }

  private String dayAsEdtf() {
    Optional<String> day = dayNumber();
    int month = Ordinals.month(cursor.peek(0));
    if (month == 0) {
      return null;
    }
    cursor.take();
    if (day.isEmpty()) {
      day = dayNumber();
    }
    cursor.accept(",");
    String number = cursor.peek(0);
    if (number.length() != 4 || !Ordinals.isNumber(number)) {
      return null;
    }
    cursor.take();
    return number + "-" + twoDigits(month) + (day.isPresent() ? "-" + day.get() : "");
  }

  private Optional<String> dayNumber() {
    String token = cursor.peek(0);
    int number = Ordinals.isNumber(token) && token.length() < 3 ? Integer.parseInt(token) : 0;
    number =
        number == 0 && !token.isEmpty() && token.charAt(0) <= '9' ? Ordinals.of(token) : number;
    if (number < 1 || number > 31) {
      return Optional.empty();
    }
    cursor.take();
    return Optional.of(twoDigits(number));
  }

  private static String twoDigits(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
