package merese.exchange.bibtex;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Imprint;

/**
 * Dates for biblatex, in the part of level 1 of the Extended Date/Time Format (ISO 8601-2:2019)
 * that its manual lists (version 3.17, section 2.3.8): a day, a year, "1926~" for "c. 1926",
 * "1926?", "192X", and spans of them.
 *
 * @param edtf the date; empty where neither the year nor what is printed is one
 * @param saysAll whether nothing of what is printed is lost, as it is with the brackets of "[1926]"
 */
record BiblatexDate(Optional<String> edtf, boolean saysAll) {
  private static final Pattern DAYS =
      Pattern.compile("(?:(\\d{1,2})\\s*[–-]\\s*)?(\\d{1,2})\\s+(\\p{L}{3,9})\\.?,?\\s+(\\d{4})");
  private static final Pattern MONTH = Pattern.compile("(\\p{L}{3,9})\\.?,?\\s+(\\d{4})");
  private static final Pattern CIRCA = Pattern.compile("(?:c\\.?|ca\\.?|circa)\\s*(\\d{4})");
  private static final Pattern YEARS =
      Pattern.compile("(\\d{2})(\\d{2})\\s*[–/-]\\s*(\\d{2})?(\\d{2})");
  private static final Pattern DECADE = Pattern.compile("(\\d{3})-\\??");
  private static final String ONE = "\\d{2}[\\dX]{2}(?:-\\d{2}){0,2}[?~%]?";
  private static final Pattern EDTF =
      Pattern.compile(ONE + "(?:/(?:" + ONE + "|\\.\\.)?)?|(?:\\.\\.)?/" + ONE);
  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  /**
   * What is printed where it agrees with the year; the year where not.
   *
   * @param days of a sale, as printed
   */
  static BiblatexDate of(Imprint imprint, Optional<String> days) {
    String printed = imprint.yearPrinted().orElse("").strip();
    boolean bracketed = printed.startsWith("[") && printed.endsWith("]");
    String bare = bracketed ? printed.substring(1, printed.length() - 1).strip() : printed;
    Optional<String> read = read(bare).filter(date -> isOfYear(date, imprint.year()));
    Optional<String> year = year(imprint.year());
    boolean saysAll =
        printed.isEmpty() || printed.equals(year.orElse("")) || !bracketed && read.isPresent();
    Optional<String> ofSale =
        days.flatMap(d -> read(d.strip())).filter(date -> isOfYear(date, imprint.year()));
    return new BiblatexDate(ofSale.or(() -> read).or(() -> year), saysAll);
  }

  /**
   * A year with four digits at least; empty for one that BibTeX's successors take for something
   * else.
   */
  static Optional<String> year(OptionalInt year) {
    return year.isPresent() && year.getAsInt() >= 0 && year.getAsInt() <= 9999
        ? Optional.of(padded(year.getAsInt(), 4))
        : Optional.empty();
  }

  private static boolean isOfYear(String date, OptionalInt year) {
    return year.isEmpty()
        || date.startsWith(padded(year.getAsInt(), 4))
        || date.startsWith(padded(Math.floorDiv(year.getAsInt(), 10), 3) + "X")
        || date.startsWith(padded(Math.floorDiv(year.getAsInt(), 100), 2) + "XX");
  }

  private static Optional<String> read(String printed) {
    Matcher days = DAYS.matcher(printed);
    if (days.matches()) {
      return days(days);
    }
    Matcher month = MONTH.matcher(printed);
    if (month.matches()) {
      int number = month(month.group(1));
      return number == 0 ? Optional.empty() : Optional.of(month.group(2) + "-" + padded(number, 2));
    }
    Matcher circa = CIRCA.matcher(printed);
    if (circa.matches()) {
      return Optional.of(circa.group(1) + "~");
    }
    Matcher years = YEARS.matcher(printed);
    if (years.matches()) {
      String from = years.group(1) + years.group(2);
      String to = (years.group(3) == null ? years.group(1) : years.group(3)) + years.group(4);
      return from.compareTo(to) < 0 ? Optional.of(from + "/" + to) : Optional.empty();
    }
    Matcher decade = DECADE.matcher(printed);
    if (decade.matches()) {
      return Optional.of(decade.group(1) + "X");
    }
    return Optional.of(printed).filter(date -> EDTF.matcher(date).matches());
  }

  private static Optional<String> days(Matcher days) {
    int month = month(days.group(3));
    try {
      LocalDate last =
          LocalDate.of(Integer.parseInt(days.group(4)), month, Integer.parseInt(days.group(2)));
      if (days.group(1) == null) {
        return Optional.of(last.toString());
      }
      LocalDate first = last.withDayOfMonth(Integer.parseInt(days.group(1)));
      return first.isBefore(last) ? Optional.of(first + "/" + last) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** From 1; 0 where it is none. */
  private static int month(String word) {
    String folded = word.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).startsWith(folded)) {
        return i + 1;
      }
    }
    return 0;
  }

  private static String padded(int number, int digits) {
    String all = Integer.toString(number);
    return "0".repeat(Math.max(0, digits - all.length())) + all;
  }
}
