package merese.time;

/** Reads a date with a time of day: hours, minutes and seconds, and perhaps a zone. */
final class TimeReader {
  private static final int LONGEST_ZONE_HOURS = 14;

  private final Slice slice;
  private int at;

  private TimeReader(Slice slice, int at) {
    this.slice = slice;
    this.at = at;
  }

  /**
   * @param t where the T is
   */
  static EdtfTime read(Slice slice, int t) {
    EdtfPoint date = DateReader.read(slice.between(slice.from(), t));
    if (!(date instanceof EdtfDate day) || day.precision() < 3) {
      throw slice.error(t, "a time needs a day", "write year, month and day before it");
    }
    if (day.isUnspecified() || day.qualification() != Qualification.NONE) {
      throw slice.error(t, "a time needs a day without X, ?, ~ or %", "leave the time out");
    }
    new TimeReader(slice, t + 1).check();
    return new EdtfTime(day, slice.text().substring(t + 1, slice.to()));
  }

  private void check() {
    int start = at;
    int hour = two("hours", 24);
    colon();
    int minute = two("minutes", 59);
    colon();
    int second = two("seconds", minute == 59 ? 60 : 59); // a leap second, ISO 8601-1
    if (hour == 24 && minute + second > 0) {
      throw slice.error(start, "there is no time after 24:00:00", "write hours from 00 to 23");
    }
    char sign = slice.at(at);
    if (sign == 'Z') {
      at++;
    } else if (sign == '+' || sign == '-') {
      zone();
    }
    if (at < slice.to()) {
      throw slice.error(
          at, "there is more after the time", "write a zone as Z, +01 or +01:00, or nothing");
    }
  }

  private void zone() {
    int start = at;
    boolean negative = slice.at(at) == '-';
    at++;
    int hours = two("hours of a zone", LONGEST_ZONE_HOURS);
    int minutes = 0;
    if (slice.at(at) == ':') {
      at++;
      minutes = two("minutes of a zone", hours == LONGEST_ZONE_HOURS ? 0 : 59);
    }
    if (negative && hours + minutes == 0) {
      throw slice.error(start, "there is no zone -00", "write +00 or Z");
    }
  }

  private void colon() {
    if (slice.at(at) != ':') {
      throw slice.error(at, "a colon is missing", "write a time as in 23:20:30");
    }
    at++;
  }

  private int two(String what, int most) {
    if (!slice.isDigit(at) || !slice.isDigit(at + 1)) {
      throw slice.error(at, "two digits are missing for " + what, "write a time as in 23:20:30");
    }
    int number = (slice.at(at) - '0') * 10 + slice.at(at + 1) - '0';
    if (number > most) {
      throw slice.error(at, what + " are at most " + most, "write a time as in 23:20:30");
    }
    at += 2;
    return number;
  }
}
