package merese.exchange.bibtex;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Imprint;

/**
 * An edition's statement for BibTeX, whose styles add the word "edition" themselves.
 *
 * @param field "2nd", or the words before "edn"; empty for a first edition
 * @param rest the statement as printed, where the field does not say all of it
 */
record EditionStatement(Optional<String> field, Optional<String> rest) {
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?:the )?(?:(\\d{1,3})(?:st|nd|rd|th|\\.)?|(\\p{L}+)) (?:edition|edn?\\.?)(.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Pattern NAMED =
      Pattern.compile("([^\\d,;]+?) (?:edition|edn?\\.?)", Pattern.CASE_INSENSITIVE);

  /** No series has a longer name; the patterns are slow with one that has. */
  private static final int LONGEST = 500;

  private static final Pattern SERIES =
      Pattern.compile("(.*[^\\s,;])[,;]?\\s+(?:(?:no|vol)\\.?\\s*)?(\\d+|[IVXLC]+)");
  private static final Pattern PATENT =
      Pattern.compile("(\\p{L}\\D*?)[,;]?\\s+(?:[Nn]o\\.?\\s*)?(\\S*\\d\\S*)");
  private static final Map<String, Integer> WORDS =
      Map.of(
          "first", 1, "second", 2, "third", 3, "fourth", 4, "fifth", 5, "sixth", 6, "seventh", 7,
          "eighth", 8, "ninth", 9, "tenth", 10);

  static EditionStatement of(Imprint imprint) {
    Optional<String> printed = imprint.statement().map(String::strip).filter(s -> !s.isEmpty());
    if (printed.isEmpty()) {
      return new EditionStatement(ordinal(imprint.number().orElse(1)), Optional.empty());
    }
    Matcher numbered = NUMBERED.matcher(printed.get());
    if (numbered.matches()) {
      int number = number(numbered.group(1), numbered.group(2));
      if (number > 0) {
        boolean all = numbered.group(3).isBlank();
        return new EditionStatement(ordinal(number), all ? Optional.empty() : printed);
      }
    }
    Matcher named = NAMED.matcher(printed.get());
    boolean short_ = named.matches() && named.group(1).split("\\s+").length <= 3;
    return short_
        ? new EditionStatement(Optional.of(named.group(1)), Optional.empty())
        : new EditionStatement(ordinal(imprint.number().orElse(1)), printed);
  }

  /** The field, or else all that is printed. */
  Optional<String> either() {
    return rest.or(() -> field);
  }

  /** For biblatex: a number, which its styles make "2nd ed.", or else the words as printed. */
  static Optional<String> whole(Imprint imprint) {
    Optional<String> printed = imprint.statement().map(String::strip).filter(s -> !s.isEmpty());
    if (printed.isEmpty()) {
      return imprint.number().isPresent() && imprint.number().getAsInt() > 0
          ? Optional.of(Integer.toString(imprint.number().getAsInt()))
          : Optional.empty();
    }
    Matcher numbered = NUMBERED.matcher(printed.get());
    int number =
        numbered.matches() && numbered.group(3).isBlank()
            ? number(numbered.group(1), numbered.group(2))
            : 0;
    return number > 0 ? Optional.of(Integer.toString(number)) : printed;
  }

  static String ordinal(String number) {
    return number.equals("1") ? "1st" : ordinal(Integer.parseInt(number)).orElse(number);
  }

  /** The name of a series, and its number where it has one. */
  record Series(String title, Optional<String> number) {}

  static Series series(String printed) {
    return split(SERIES, printed);
  }

  /** What gives the number of a patent or design, such as "Registered design", and the number. */
  static Series patent(String printed) {
    return split(PATENT, printed);
  }

  private static Series split(Pattern pattern, String printed) {
    Matcher matcher = pattern.matcher(printed);
    return printed.length() <= LONGEST && matcher.matches()
        ? new Series(matcher.group(1), Optional.of(matcher.group(2)))
        : new Series(printed, Optional.empty());
  }

  private static int number(String digits, String word) {
    return digits != null
        ? Integer.parseInt(digits)
        : WORDS.getOrDefault(word.toLowerCase(Locale.ROOT), 0);
  }

  private static Optional<String> ordinal(int number) {
    if (number < 2) {
      return Optional.empty();
    }
    boolean teen = number / 10 % 10 == 1;
    return Optional.of(
        number
            + switch (teen ? 0 : number % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            });
  }
}
