package merese.time;

import java.util.ArrayList;
import java.util.List;
import merese.time.EdtfInterval.Dated;
import merese.time.EdtfInterval.Side;
import merese.time.EdtfInterval.Undated;

/** Reads a whole text: finds out which kind it is, and has its dates read by {@link DateReader}. */
final class EdtfReader {
  private static final String RANGE = "..";

  private EdtfReader() {}

  static Edtf read(String text) {
    Slice all = Slice.of(text);
    if (text.length() > Edtf.LONGEST) {
      throw all.error(
          Edtf.LONGEST,
          "it has more than " + Edtf.LONGEST + " characters",
          "write several shorter dates");
    }
    if (text.isBlank()) {
      throw all.error(0, "there is nothing in it", "write a year, as in 1790");
    }
    refuseSpaces(all);
    char first = all.at(0);
    if (first == '[' || first == '{') {
      return set(all, first);
    }
    if (all.indexOf("/") >= 0) {
      return interval(all);
    }
    int time = all.indexOf("T");
    return time >= 0 ? TimeReader.read(all, time) : DateReader.read(all);
  }

  private static void refuseSpaces(Slice all) {
    for (int i = all.from(); i < all.to(); i++) {
      char c = all.at(i);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        throw all.error(i, "there is a space", "leave it out");
      }
    }
  }

  private static Edtf interval(Slice all) {
    int stroke = all.indexOf("/");
    Slice start = all.between(0, stroke);
    Slice end = all.between(stroke + 1, all.to());
    int second = end.indexOf("/");
    if (second >= 0) {
      throw all.error(second, "there is a second stroke", "write one start and one end");
    }
    if (start.isEmpty() && end.isEmpty()) {
      throw all.error(0, "neither start nor end is given", "give one, as in 1790/ or /1810");
    }
    EdtfInterval interval = new EdtfInterval(side(start), side(end));
    if (interval.start() instanceof Dated from && interval.end() instanceof Dated to) {
      refuseReverse(from.point(), to.point(), end);
    }
    return interval;
  }

  private static Side side(Slice slice) {
    if (slice.isEmpty()) {
      return new Undated(false);
    }
    return slice.is(RANGE) ? new Undated(true) : new Dated(inside(slice, "an interval"));
  }

  /** A date that is not by itself. */
  private static EdtfPoint inside(Slice slice, String what) {
    int time = slice.indexOf("T");
    if (time >= 0) {
      throw slice.error(time, "there is a time of day in " + what, "give days only");
    }
    EdtfPoint point = DateReader.read(slice);
    if (point instanceof EdtfYear) {
      throw slice.error(
          slice.from(),
          "a year with Y or S stands in " + what,
          "use years of four digits, or write it by itself");
    }
    return point;
  }

  private static void refuseReverse(EdtfPoint from, EdtfPoint to, Slice at) {
    if (from.first().compareTo(to.startOfLast()) <= 0) {
      return;
    }
    boolean wholly = from.first().compareTo(to.last()) > 0;
    throw at.error(
        at.from(),
        wholly ? "the end is before the start" : "the end begins before the start",
        wholly ? "write the earlier date first" : "write the end as exactly as the start");
  }

  private static Edtf set(Slice all, char opening) {
    char closing = opening == '[' ? ']' : '}';
    int last = all.to() - 1;
    if (last == 0 || all.at(last) != closing) {
      throw all.error(all.to(), "the set has no end", "end it with " + closing);
    }
    List<EdtfSet.Member> members = new ArrayList<>();
    Slice rest = all.between(1, last);
    while (true) {
      int comma = rest.indexOf(",");
      Slice member = rest.between(rest.from(), comma < 0 ? last : comma);
      members.add(member(member, members.isEmpty(), comma < 0));
      if (comma < 0) {
        break;
      }
      rest = rest.between(comma + 1, last);
    }
    if (members.size() == 1 && !members.get(0).isRange()) {
      throw all.error(0, "there is only one date in the set", "write it without brackets");
    }
    return new EdtfSet(opening == '[', members);
  }

  private static EdtfSet.Member member(Slice slice, boolean first, boolean last) {
    if (slice.isEmpty()) {
      throw slice.error(slice.from(), "a date is missing in the set", "give it, or no comma");
    }
    int range = slice.indexOf(RANGE);
    if (range < 0) {
      Side only = new Dated(inside(slice, "a set"));
      return new EdtfSet.Member(only, only, false);
    }
    Slice start = slice.between(slice.from(), range);
    Slice end = slice.between(range + RANGE.length(), slice.to());
    if (start.isEmpty() && end.isEmpty()) {
      throw slice.error(range, "there is no date beside ..", "give one, as in ..1810");
    }
    if (start.isEmpty() && !first || end.isEmpty() && !last) {
      throw slice.error(
          range,
          "an open range is in the middle of a set",
          "write an open start first and an open end last");
    }
    Side from = inSet(start);
    Side to = inSet(end);
    if (from instanceof Dated starts && to instanceof Dated ends) {
      refuseUnlike(starts.point(), ends.point(), end);
      refuseReverse(starts.point(), ends.point(), end);
    }
    return new EdtfSet.Member(from, to, true);
  }

  private static Side inSet(Slice slice) {
    return slice.isEmpty() ? new Undated(true) : new Dated(inside(slice, "a set"));
  }

  private static void refuseUnlike(EdtfPoint from, EdtfPoint to, Slice at) {
    if (from.precision() != to.precision()) {
      throw at.error(
          at.from(), "a range needs two dates of one kind", "write two years, months or days");
    }
  }
}
