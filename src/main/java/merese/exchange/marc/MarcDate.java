package merese.exchange.marc;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The date of an imprint: "c1949", "[1926?]", "MCMXXVI", "1937 [i.e. 1938]".
 *
 * @param year the year of publication, failing that of the copyright
 * @param printed what stands there, where it is more than a year
 */
record MarcDate(OptionalInt year, Optional<String> printed) {
  static final MarcDate NONE = new MarcDate(OptionalInt.empty(), Optional.empty());

  private static final Pattern YEAR = Pattern.compile("(?<!\\d)(1[0-9]{3}|20[0-9]{2})(?![\\d])");
  private static final Pattern CORRECTED =
      Pattern.compile("i\\. ?e\\.,? (1[0-9]{3}|20[0-9]{2})(?!\\d)");
  private static final Pattern COPYRIGHT =
      Pattern.compile("(?:©|℗|\\(c\\)|\\b[cp]|copyright|cop\\.|phonogram) ?$");
  private static final Pattern ROMAN =
      Pattern.compile("(?<![\\p{L}])M[. ]{0,2}(?:[MDCLXVI][. ]{0,2}){2,20}(?![\\p{L}])");
  private static final Pattern NOTHING =
      Pattern.compile(
          "\\[?(?:date of (?:publication|production|distribution) not identified|"
              + "date not identified|s\\. ?d\\.|s\\. ?a\\.)\\]?");

  /** A text that stands in subfield c of 260 or 264. */
  static MarcDate of(String text, boolean punctuated) {
    String printed = MarcText.withPairedBrackets(MarcText.bare(text, punctuated));
    if (printed.isEmpty() || NOTHING.matcher(printed.toLowerCase(Locale.ROOT)).matches()) {
      return NONE;
    }
    OptionalInt year = year(printed);
    boolean plain = year.isPresent() && printed.equals(Integer.toString(year.getAsInt()));
    return new MarcDate(year, plain ? Optional.empty() : Optional.of(printed));
  }

  /** The first year of a text; empty where it names none. */
  static OptionalInt year(String text) {
    Matcher corrected = CORRECTED.matcher(text);
    if (corrected.find()) {
      return OptionalInt.of(Integer.parseInt(corrected.group(1)));
    }
    OptionalInt copyright = OptionalInt.empty();
    Matcher year = YEAR.matcher(text);
    while (year.find()) {
      OptionalInt found = OptionalInt.of(Integer.parseInt(year.group(1)));
      String before = text.substring(Math.max(0, year.start() - 12), year.start());
      boolean between = before.toLowerCase(Locale.ROOT).endsWith("between ");
      if (between) {
        return OptionalInt.empty();
      }
      if (!COPYRIGHT.matcher(before.toLowerCase(Locale.ROOT)).find()) {
        return found;
      }
      copyright = copyright.isPresent() ? copyright : found;
    }
    return copyright.isPresent() ? copyright : roman(text);
  }

  private static OptionalInt roman(String text) {
    Matcher roman = ROMAN.matcher(text);
    if (!roman.find()) {
      return OptionalInt.empty();
    }
    int value = 0;
    int last = 0;
    String digits = roman.group().replace(".", "").replace(" ", "");
    for (int i = digits.length() - 1; i >= 0; i--) {
      int digit =
          switch (digits.charAt(i)) {
            case 'M' -> 1000;
            case 'D' -> 500;
            case 'C' -> 100;
            case 'L' -> 50;
            case 'X' -> 10;
            case 'V' -> 5;
            default -> 1;
          };
      value += digit < last ? -digit : digit;
      last = Math.max(last, digit);
    }
    return value >= 1400 && value < 2100 ? OptionalInt.of(value) : OptionalInt.empty();
  }
}
