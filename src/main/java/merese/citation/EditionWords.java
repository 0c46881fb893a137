package merese.citation;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Imprint;

/** An edition's statement and its series, in the form that CSL styles complete. */
final class EditionWords {
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?:the"
              + " )?(?:(?<number>\\d{1,4})(?:st|nd|rd|th|\\.)?|(?<word>\\p{L}+))\\s+(?:ed|edn|edition)\\.?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern WORD =
      Pattern.compile("(?<=\\S)\\s+(?:ed|edn|edition)\\.?$", Pattern.CASE_INSENSITIVE);
  private static final Pattern SERIES =
      Pattern.compile("(.*[^\\s,;])[,;]?\\s+(?:(?:no|vol)\\.?\\s*)?(\\d+|[IVXLC]+)");
  private static final Map<String, Integer> WORDS =
      Map.ofEntries(
          Map.entry("first", 1),
          Map.entry("second", 2),
          Map.entry("third", 3),
          Map.entry("fourth", 4),
          Map.entry("fifth", 5),
          Map.entry("sixth", 6),
          Map.entry("seventh", 7),
          Map.entry("eighth", 8),
          Map.entry("ninth", 9),
          Map.entry("tenth", 10));

  private EditionWords() {}

  record Series(String title, Optional<String> number) {}

  /** The bare number of a numbered edition, and any other statement as printed. */
  static Optional<String> neutral(Imprint imprint) {
    if (imprint.statement().filter(words -> !words.isBlank()).isEmpty()) {
      return imprint.number().isPresent()
          ? Optional.of(Integer.toString(imprint.number().getAsInt()))
          : Optional.empty();
    }
    int number = number(imprint.statement().get());
    return number == 0 ? imprint.statement() : Optional.of(Integer.toString(number));
  }

  /** Which edition a statement counts that does nothing but count; 0 for any other. */
  private static int number(String statement) {
    Matcher matcher = NUMBERED.matcher(statement);
    if (!matcher.matches()) {
      return 0;
    }
    return matcher.group("number") != null
        ? Integer.parseInt(matcher.group("number"))
        : WORDS.getOrDefault(matcher.group("word").toLowerCase(Locale.ROOT), 0);
  }

  /**
   * "2nd" for a second edition, since a style adds the word and citeproc-java prints a bare number
   * as it is ("2 ed."); the whole statement for a style that does not, and any other statement as
   * printed. A first edition is not mentioned.
   */
  static Optional<String> of(Imprint imprint, StyleTraits style) {
    String language = style.language();
    Optional<String> printed =
        imprint.statement().map(PlainText::of).filter(words -> !words.isEmpty());
    boolean asGiven = style.editions() == StyleTraits.Editions.AS_GIVEN;
    if (printed.isEmpty()) {
      Optional<String> number =
          imprint.number().isPresent()
              ? numbered(imprint.number().getAsInt(), language)
              : Optional.empty();
      return asGiven && english(language) ? number.map(n -> n + " edn") : number;
    }
    if (asGiven) {
      return printed;
    }
    int number = number(printed.get());
    if (number > 0) {
      return numbered(number, language);
    }
    return style.editions() == StyleTraits.Editions.COMPLETED
        ? printed.map(words -> WORD.matcher(words).replaceFirst(""))
        : printed;
  }

  private static Optional<String> numbered(int number, String language) {
    return number < 2 ? Optional.empty() : Optional.of(ordinal(number, language));
  }

  private static String ordinal(int number, String language) {
    if (!english(language)) {
      boolean french = Locale.forLanguageTag(language).getLanguage().equals("fr");
      return number + (french ? "e" : Marks.STOP);
    }
    boolean teen = number % 100 / 10 == 1;
    return number
        + switch (teen ? 0 : number % 10) {
          case 1 -> "st";
          case 2 -> "nd";
          case 3 -> "rd";
          default -> "th";
        };
  }

  private static boolean english(String language) {
    return Locale.forLanguageTag(language).getLanguage().equals("en");
  }

  static Series series(String printed) {
    Matcher matcher = SERIES.matcher(printed);
    return matcher.matches()
        ? new Series(matcher.group(1), Optional.of(matcher.group(2)))
        : new Series(printed, Optional.empty());
  }
}
