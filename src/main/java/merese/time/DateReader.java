package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one date: a year with what follows it, a season, or a letter year. */
final class DateReader {
  private static final int YEAR_DIGITS = 4;
  private static final int LAST_MONTH = 12;

  private final Slice slice;
  private int at;

  private DateReader(Slice slice) {
    this.slice = slice;
    this.at = slice.from();
  }

  static EdtfPoint read(Slice slice) {
    return new DateReader(slice).read();
  }

  private EdtfPoint read() {
    if (slice.at(at) == 'Y' || slice.at(at) == 'y') {
      return YearReader.letterYear(slice);
    }
    List<EdtfPart> parts = new ArrayList<>();
    Qualification before = mark();
    String year = year();
    if (slice.at(at) == 'S' && before == Qualification.NONE && year.indexOf('X') < 0) {
      return YearReader.significant(slice, at, Long.parseLong(year));
    }
    parts.add(new EdtfPart(before, year, mark()));
    while (slice.at(at) == '-' && parts.size() < Unit.values().length) {
      at++;
      parts.add(part(parts.size() == 1 ? "month" : "day"));
    }
    if (at < slice.to()) {
      throw unexpected(parts.get(parts.size() - 1));
    }
    return dated(parts);
  }

  private EdtfPoint dated(List<EdtfPart> parts) {
    if (parts.size() > 1) {
      EdtfPart month = parts.get(1);
      if (!month.isUnspecified() && month.least() >= EdtfSeason.FIRST) {
        return season(parts);
      }
    }
    Optional<EdtfDate> date = EdtfDate.of(parts);
    if (date.isEmpty()) {
      throw noSuchDay(parts);
    }
    return date.get();
  }

  private EdtfPoint season(List<EdtfPart> parts) {
    int number = parts.get(1).least();
    if (number > EdtfSeason.LAST) {
      throw noSuchDay(parts);
    }
    if (parts.size() > 2) {
      throw slice.error(
          slice.to(), "a day follows the season " + number, "write a month from 01 to 12");
    }
    EdtfPart year = parts.get(0);
    if (year.isNegative() && year.greatest() == 0) {
      throw noSuchDay(parts);
    }
    return new EdtfSeason(year, parts.get(1));
  }

  private Qualification mark() {
    if (!Qualification.isMark(slice.at(at))) {
      return Qualification.NONE;
    }
    char mark = slice.at(at);
    at++;
    if (Qualification.isMark(slice.at(at))) {
      throw slice.error(at, "two marks follow each other", "write % for both ? and ~");
    }
    return Qualification.ofMark(mark);
  }

  private String year() {
    int start = at;
    if (slice.at(at) == '-') {
      at++;
    }
    if (slice.at(at) == '+') {
      throw slice.error(at, "there is a plus", "write the year without it");
    }
    int digits = at;
    while (isDigitOrX(at)) {
      at++;
    }
    int count = at - digits;
    String year = slice.text().substring(start, at);
    if (count == 0) {
      throw smallX(at, slice.error(at, "a year is missing", "write four digits, as in 1790"));
    }
    if (count < YEAR_DIGITS) {
      throw smallX(at, tooShort(digits, count));
    }
    if (count > YEAR_DIGITS) {
      throw slice.error(
          digits,
          "a year has more than four digits",
          year.indexOf('X') < 0 && slice.at(digits) != '0'
              ? "write Y before it: Y" + year
              : "write four");
    }
    return year;
  }

  private EdtfException tooShort(int digits, int count) {
    String year = slice.text().substring(digits, digits + count);
    String padded = "0".repeat(YEAR_DIGITS - count) + year;
    String open = year + "X".repeat(YEAR_DIGITS - count);
    boolean decade = count > 1 && year.indexOf('X') < 0;
    return slice.error(
        digits,
        "a year has only " + count + (count == 1 ? " digit" : " digits"),
        "write "
            + padded
            + (decade ? ", or " + open + " for " + (count == 2 ? "a century" : "ten years") : ""));
  }

  private EdtfPart part(String what) {
    Qualification before = mark();
    int start = at;
    while (isDigitOrX(at)) {
      at++;
    }
    if (at - start != 2) {
      throw smallX(
          at,
          slice.error(
              start,
              at == start ? "a " + what + " is missing" : "a " + what + " has two digits",
              at - start == 1 && slice.at(start) != 'X'
                  ? "write 0" + slice.at(start)
                  : "write two, as in 1790-03" + (what.equals("day") ? "-07" : "")));
    }
    return new EdtfPart(before, slice.text().substring(start, at), mark());
  }

  private boolean isDigitOrX(int place) {
    return slice.isDigit(place) || slice.at(place) == 'X';
  }

  /** What is usual elsewhere for an open digit, else the error that was found. */
  private EdtfException smallX(int place, EdtfException otherwise) {
    char c = slice.at(place);
    return c == 'x' || c == 'u' || c == 'U'
        ? slice.error(place, "an open digit is written " + c, "write X")
        : otherwise;
  }

  private EdtfException unexpected(EdtfPart last) {
    EdtfException other =
        slice.error(
            at,
            "there is more after \"" + last.printed() + "\"",
            "write a date as in 1790, 1790-03 or 1790-03-07");
    return Qualification.isMark(slice.at(at))
        ? slice.error(at, "two marks follow each other", "write % for both ? and ~")
        : smallX(at, other);
  }

  private EdtfException noSuchDay(List<EdtfPart> parts) {
    EdtfPart year = parts.get(0);
    if (year.isNegative() && year.greatest() == 0) {
      return slice.error(
          slice.from(), "there is no year -0000", "write 0000 for the year before 1");
    }
    int afterYear = slice.from() + year.printed().length() + 1;
    EdtfPart month = parts.get(1);
    if (month.least() > LAST_MONTH || month.greatest() == 0) {
      return slice.error(
          afterYear,
          "there is no month " + month.digits(),
          "write 01 to 12, or a season from " + EdtfSeason.FIRST + " to " + EdtfSeason.LAST);
    }
    if (parts.size() == 2) {
      return slice.error(afterYear, "there is no month " + month.digits(), "write 01 to 12");
    }
    return slice.error(
        afterYear + month.printed().length() + 1,
        "there is no day " + parts.get(2).digits() + " in that month",
        "write a day that the month has");
  }
}
