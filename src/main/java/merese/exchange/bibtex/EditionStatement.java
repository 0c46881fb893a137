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
