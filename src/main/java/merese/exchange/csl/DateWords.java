package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.Readings;
import merese.exchange.csl.Json.Bare;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Members;

/**
 * A date of CSL in words.
 *
 * @param year the (first) year; empty where the item gives none
 * @param words the date as the item words it, or in our words: "12 May 1988", "Spring 1990", "c.
 *     1926"; empty where that is nothing but the year
 */
record DateWords(OptionalInt year, Optional<String> words) {
  private static final DateWords NONE = new DateWords(OptionalInt.empty(), Optional.empty());

  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final List<String> SEASONS = List.of("Spring", "Summer", "Autumn", "Winter");

  /** Empty of both where the value is no date. */
  static DateWords of(Optional<Json> value) {
    if (value.isEmpty()) {
      return NONE;
    }
    Json date = value.get();
    if (!(date instanceof Members members)) {
      return date.asText()
          .map(text -> EdtfWords.of(text).orElseGet(() -> literal(text)))
          .orElse(NONE);
    }
    List<int[]> parts = parts(members);
    Optional<String> literal = PlainWords.of(members.get("literal"));
    if (literal.isPresent()) {
      DateWords worded = literal(literal.get());
      return parts.isEmpty() ? worded : made(parts.get(0)[0], literal.get());
    }
    if (!parts.isEmpty()) {
      return made(parts.get(0)[0], circa(members) + range(parts, season(members)));
    }
    Optional<String> edtf = PlainWords.of(members.get("edtf"));
    Optional<String> raw = edtf.or(() -> PlainWords.of(members.get("raw")));
    return raw.map(text -> EdtfWords.of(text).orElseGet(() -> literal(text))).orElse(NONE);
  }

  static DateWords made(int year, String words) {
    return new DateWords(
        OptionalInt.of(year),
        words.equals(Integer.toString(year)) ? Optional.empty() : Optional.of(words));
  }

  /** Words that name one year, of four digits, are of that year. */
  private static DateWords literal(String text) {
    String words = PlainWords.of(text);
    OptionalInt year = Readings.year(words);
    return year.isPresent()
        ? made(year.getAsInt(), words)
        : new DateWords(year, Optional.of(words).filter(w -> !w.isEmpty()));
  }

  private static String circa(Members date) {
    Optional<Json> circa = date.get("circa");
    boolean is =
        circa.isPresent()
            && !circa.get().equals(new Bare("false"))
            && !circa.get().equals(new Bare("0"))
            && !circa.get().equals(Json.nothing())
            && !circa.get().equals(Json.of(""));
    return is ? "c. " : "";
  }

  private static String season(Members date) {
    String season = date.text("season").orElse("");
    boolean isNumber = season.length() == 1 && season.charAt(0) >= '1' && season.charAt(0) <= '4';
    return isNumber ? SEASONS.get(season.charAt(0) - '1') : PlainWords.of(season);
  }

  /** One date or two, each of one to three whole numbers; none where it is anything else. */
  private static List<int[]> parts(Members date) {
    List<int[]> all = new ArrayList<>();
    if (!(date.get("date-parts").orElse(Json.nothing()) instanceof Items dates)
        || dates.items().size() > 2) {
      return all;
    }
    for (Json each : dates.items()) {
      int[] read = each instanceof Items list ? numbers(list.items()) : new int[0];
      if (read.length > 0) {
        all.add(read);
      } else if (all.isEmpty() || each instanceof Items list && !list.items().isEmpty()) {
        return new ArrayList<>();
      }
    }
    return all;
  }

  private static int[] numbers(List<Json> list) {
    int[] numbers = new int[Math.min(3, list.size())];
    for (int i = 0; i < numbers.length; i++) {
      Optional<Integer> number = list.get(i).asText().flatMap(DateWords::number);
      if (number.isEmpty()) {
        return i == 0 ? new int[0] : java.util.Arrays.copyOf(numbers, i);
      }
      numbers[i] = number.get();
    }
    return numbers;
  }

  private static Optional<Integer> number(String text) {
    String digits = text.strip();
    int start = digits.startsWith("-") ? 1 : 0;
    if (digits.length() == start || digits.length() > start + 6) {
      return Optional.empty();
    }
    for (int i = start; i < digits.length(); i++) {
      if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
        return Optional.empty();
      }
    }
    return Optional.of(Integer.parseInt(digits));
  }

  private static String range(List<int[]> parts, String season) {
    int[] from = parts.get(0);
    String first = words(from, season);
    if (parts.size() == 1) {
      return first;
    }
    int[] to = parts.get(1);
    boolean sameYear = from[0] == to[0] && from.length > 1 && to.length == from.length;
    if (sameYear && from.length == 3 && from[1] == to[1]) {
      return from[2] == to[2] ? first : from[2] + "–" + words(to, "");
    }
    if (sameYear && from.length == 2) {
      return month(from[1]) + "–" + words(to, "");
    }
    return from.length == 1 && to.length == 1 ? first + "–" + to[0] : first + " – " + words(to, "");
  }

  static String words(int[] date, String season) {
    if (date.length == 1) {
      return season.isEmpty() ? Integer.toString(date[0]) : season + " " + date[0];
    }
    String month = month(date[1]) + " " + date[0];
    return date.length == 2 ? month : date[2] + " " + month;
  }

  /** Above the twelve months stand the seasons: 13 to 16 in CSL, 21 to 24 in EDTF. */
  private static String month(int number) {
    if (number >= 1 && number <= 12) {
      return MONTHS.get(number - 1);
    }
    if (number >= 13 && number <= 16) {
      return SEASONS.get(number - 13);
    }
    return number >= 21 && number <= 24 ? SEASONS.get(number - 21) : "month " + number;
  }

  /** A day as ISO 8601 has it; any other date in words. */
  static Optional<String> day(Optional<Json> value) {
    if (value.isPresent() && value.get() instanceof Members date) {
      List<int[]> parts = parts(date);
      if (parts.size() == 1 && parts.get(0).length == 3 && date.get("literal").isEmpty()) {
        int[] day = parts.get(0);
        boolean fits = day[0] >= 1000 && day[0] <= 9999;
        if (fits && day[1] >= 1 && day[1] <= 12 && day[2] >= 1 && day[2] <= 31) {
          return Optional.of(day[0] + "-" + two(day[1]) + "-" + two(day[2]));
        }
      }
    }
    DateWords words = of(value);
    return words.words().or(() -> yearAlone(words.year()));
  }

  private static Optional<String> yearAlone(OptionalInt year) {
    return year.isPresent() ? Optional.of(Integer.toString(year.getAsInt())) : Optional.empty();
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
