package merese.time;

import java.util.Optional;
import merese.time.Span.End;
import merese.time.Span.On;
import merese.time.Span.Open;
import merese.time.WordedDate.Width;

/**
 * Dates while they are read: the four ends, each null where it is open, and EDTF for the start and
 * the end.
 *
 * @param edtf the whole as one EDTF date; null where it takes an interval
 */
record Reach(
    Day coreFrom,
    Day coreTo,
    Day outerFrom,
    Day outerTo,
    String edtf,
    String start,
    String end,
    Optional<String> period,
    Width width,
    boolean printed) {

  static Reach years(long from, long to, long outerFrom, long outerTo, Width width) {
    boolean same = from == outerFrom && to == outerTo;
    return new Reach(
        Day.firstOf(from),
        Day.lastOf(to),
        Day.firstOf(outerFrom),
        Day.lastOf(outerTo),
        null,
        fourDigits(from),
        fourDigits(to),
        Optional.empty(),
        same ? Width.SAME : width,
        false);
  }

  static Reach of(Edtf date, Circa circa) {
    Span core = date.core();
    Span outer = date.outer(circa);
    String edtf = date.printed();
    return new Reach(
        day(core.from()),
        day(core.to()),
        day(outer.from()),
        day(outer.to()),
        edtf,
        edtf,
        edtf,
        Optional.empty(),
        core.equals(outer) ? Width.SAME : Width.CIRCA,
        true);
  }

  private static Day day(End end) {
    return ((On) end).day();
  }

  static String fourDigits(long year) {
    String digits = Long.toString(year);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  Reach withEdtf(String whole) {
    return new Reach(
        coreFrom, coreTo, outerFrom, outerTo, whole, whole, whole, period, width, printed);
  }

  Reach asPrinted() {
    return new Reach(coreFrom, coreTo, outerFrom, outerTo, edtf, start, end, period, width, true);
  }

  Reach ofPeriod(String word) {
    return new Reach(
        coreFrom, coreTo, outerFrom, outerTo, edtf, start, end, Optional.of(word), width, printed);
  }

  /** With "~" at both ends in EDTF, and as far as it was. */
  Reach estimated() {
    return marked("~");
  }

  private Reach marked(String mark) {
    return new Reach(
        coreFrom,
        coreTo,
        outerFrom,
        outerTo,
        mark(edtf, mark),
        mark(start, mark),
        mark(end, mark),
        period,
        width,
        printed);
  }

  private static String mark(String date, String mark) {
    if (date == null || date.isEmpty() || date.equals("..") || date.endsWith("%")) {
      return date;
    }
    char last = date.charAt(date.length() - 1);
    if (last == mark.charAt(0)) {
      return date;
    }
    boolean marked = last == '?' || last == '~';
    return marked ? date.substring(0, date.length() - 1) + "%" : date + mark;
  }

  /** Possibly this, but not definitely. */
  Reach uncertain() {
    return marked("?");
  }

  /** About this: the outer span reaches further on both sides. */
  Reach about(Circa circa) {
    Reach marked = marked("~");
    return new Reach(
        coreFrom,
        coreTo,
        outerFrom == null ? null : circa.before(outerFrom, Unit.YEAR),
        outerTo == null ? null : circa.after(outerTo, Unit.YEAR),
        marked.edtf,
        marked.start,
        marked.end,
        period,
        width == Width.SAME ? Width.CIRCA : width,
        printed);
  }

  /** From the start of this to the end of another; null where that runs backwards. */
  Reach to(Reach other) {
    if (coreFrom == null || other.coreTo == null || coreFrom.compareTo(other.coreFrom) > 0) {
      return null;
    }
    return new Reach(
        coreFrom,
        other.coreTo,
        Day.earlier(outerFrom, other.outerFrom),
        Day.later(outerTo, other.outerTo),
        null,
        start,
        other.end,
        period.isPresent() ? period : other.period,
        width == Width.SAME ? other.width : width,
        printed && other.printed);
  }

  /** Before its start; generously, by as much later as it reaches beyond its end. */
  Reach before() {
    long late = outerTo.year() - coreTo.year();
    Day last = coreFrom.plusDays(-1);
    return until(last, last.plusYears(late), edtfOf(last));
  }

  /** After its end. */
  Reach after() {
    long early = coreFrom.year() - outerFrom.year();
    Day first = coreTo.plusDays(1);
    return from(first, first.plusYears(-early), edtfOf(first), false);
  }

  private String edtfOf(Day day) {
    String mark = start.endsWith("~") ? "~" : "";
    boolean years = start.indexOf('-', 1) < 0;
    return (years ? fourDigits(day.year()) : day.toString()) + mark;
  }

  Reach until() {
    return until(coreTo, outerTo, endYear()).printedAs(printed);
  }

  /** From its start on, without an end. */
  Reach onwards() {
    return from(coreFrom, outerFrom, startYear(), printed);
  }

  private Reach printedAs(boolean asPrinted) {
    return asPrinted ? asPrinted() : this;
  }

  /** An open interval starts with a year: 1920/.., not 192X/.. */
  private String startYear() {
    return start.indexOf('X') < 0 ? start : edtfOf(coreFrom);
  }

  private String endYear() {
    return end.indexOf('X') < 0 ? end : edtfOf(coreTo);
  }

  private Reach until(Day core, Day outer, String edtfEnd) {
    return new Reach(
        null,
        core,
        null,
        outer,
        null,
        "..",
        edtfEnd,
        period,
        core.equals(outer) ? Width.SAME : width,
        false);
  }

  private Reach from(Day core, Day outer, String edtfStart, boolean asPrinted) {
    return new Reach(
        core,
        null,
        outer,
        null,
        null,
        edtfStart,
        "..",
        period,
        core.equals(outer) ? Width.SAME : width,
        asPrinted);
  }

  WordedDate.Read read() {
    return new WordedDate.Read(
        new Span(end(coreFrom), end(coreTo)),
        new Span(end(outerFrom), end(outerTo)),
        edtf != null ? edtf : start + "/" + end,
        period,
        width,
        printed);
  }

  private static End end(Day day) {
    return day == null ? new Open() : new On(day);
  }
}
