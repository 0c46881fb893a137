package merese.answer.pull;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import merese.model.LocatorNumber;

/** Numbers and years in English words, "one hundred and twelve" (ICU's rules, CLDR). */
final class SpokenNumber {
  private static final String WITH_AND = "%spellout-cardinal-verbose";

  private SpokenNumber() {}

  private static final class Rules {
    static final RuleBasedNumberFormat ENGLISH =
        new RuleBasedNumberFormat(ULocale.UK, RuleBasedNumberFormat.SPELLOUT);
  }

  /** A cardinal number from 0 up. */
  static String of(long value) {
    synchronized (Rules.ENGLISH) { // it formats for one at a time
      return Rules.ENGLISH.format(value, WITH_AND).replace(",", "");
    }
  }

  /**
   * A year from 1 up as one says it: in two halves from 1010 on, but "two thousand and nine" in the
   * first ten years of a thousand. Common practice, no source.
   */
  static String year(int year) {
    if (year < 1) {
      throw new IllegalArgumentException("no year is said of " + year);
    }
    int half = year / 100;
    int rest = year % 100;
    if (half == 0 || year % 1000 < 10 || half >= 100) {
      return of(year);
    } else if (rest == 0) {
      return of(half) + " hundred";
    }
    return of(half) + (rest < 10 ? " oh " : " ") + of(rest);
  }

  /**
   * The number of a page, plate and so on, whatever its numerals: "nine A", "twelve recto", "B",
   * "sixteen bis". Common practice, no source.
   */
  static String of(LocatorNumber number) {
    StringBuilder words = new StringBuilder();
    if (!number.prefix().isEmpty()) {
      words.append(number.prefix()).append(' ');
    }
    words.append(
        switch (number.style()) {
          case LETTER_UPPER, LETTER_LOWER -> String.valueOf((char) ('A' + number.value() - 1));
          default -> of(number.value());
        });
    for (long decimal : number.decimals()) {
      words.append(" point ").append(of(decimal));
    }
    if (!number.suffix().isEmpty()) {
      words.append(' ').append(suffix(number.suffix()));
    }
    return switch (number.side()) {
      case RECTO -> words.append(" recto").toString();
      case VERSO -> words.append(" verso").toString();
      case NONE -> words.toString();
    };
  }

  private static String suffix(String suffix) {
    if (suffix.equals("*")) {
      return "star";
    }
    return suffix.length() == 1 ? String.valueOf(Character.toUpperCase(suffix.charAt(0))) : suffix;
  }
}
