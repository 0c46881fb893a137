package merese.citation;

import de.undercouch.citeproc.csl.CSLDate;
import de.undercouch.citeproc.csl.CSLDateBuilder;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as printed, as CSL dates: in parts where the text says a day, otherwise literally. */
final class CslDates {
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})(?:T.*)?");
  private static final Pattern DAYS =
      Pattern.compile("(\\d{1,2})(?:\\s*[–-]\\s*(\\d{1,2}))?\\s+(\\p{L}{3,9})\\.?,?\\s+(\\d{4})");
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

  private CslDates() {}

  static CSLDate year(int year) {
    return new CSLDateBuilder().dateParts(year).build();
  }

  static CSLDate literal(String words) {
    return new CSLDateBuilder().literal(words).build();
  }

  /** Reads "2025-03-02", "12 May 1988" and "12–13 May 1988"; keeps anything else as words. */
  static CSLDate of(String printed, UnaryOperator<String> text) {
    return day(printed.strip()).orElseGet(() -> literal(text.apply(printed)));
  }

  static Optional<CSLDate> day(String text) {
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      int month = Integer.parseInt(iso.group(2));
      int day = Integer.parseInt(iso.group(3));
      return month >= 1 && month <= 12 && day <= 31
          ? Optional.of(date(Integer.parseInt(iso.group(1)), month, day))
          : Optional.empty();
    }
    Matcher days = DAYS.matcher(text);
    int month = days.matches() ? month(days.group(3)) : 0;
    if (month == 0) {
      return Optional.empty();
    }
    int year = Integer.parseInt(days.group(4));
    int first = Integer.parseInt(days.group(1));
    return Optional.of(
        days.group(2) == null
            ? date(year, month, first)
            : new CSLDateBuilder()
                .dateParts(
                    new int[] {year, month, first},
                    new int[] {year, month, Integer.parseInt(days.group(2))})
                .build());
  }

  private static CSLDate date(int year, int month, int day) {
    return new CSLDateBuilder().dateParts(year, month, day).build();
  }

  private static int month(String word) {
    String folded = word.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).startsWith(folded)) {
        return i + 1;
      }
    }
    return 0;
  }
}
