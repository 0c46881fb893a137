package merese.exchange;

import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Locator;
import merese.model.LocatorException;

/** What words of other formats mean to the library, where several formats have such words. */
public final class Readings {
  private Readings() {}

  /**
   * Pages as a locator: "12-15", "xii–xv, 3", or with a label of their own, "fols 3–5". Empty where
   * the words are no place in a source.
   */
  public static Optional<Locator> pages(String words) {
    String dashed = words.replace("--", "–").replace('-', '–');
    boolean several = dashed.indexOf('–') > 0 || dashed.indexOf(',') > 0;
    String text = hasLabel(words) ? words : (several ? "pp. " : "p. ") + dashed;
    try {
      return Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      return Optional.empty();
    }
  }

  private static boolean hasLabel(String words) {
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if (!isDigit(c) && "-–, ivxlcIVXLC".indexOf(c) < 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a word has the form of a language tag (BCP 47) with a language of two or three letters.
   */
  public static boolean isLanguageTag(String tag) {
    int subtag = 0;
    for (int i = 0; i <= tag.length(); i++) {
      if (i == tag.length() || tag.charAt(i) == '-') {
        boolean isFirst = subtag == 0;
        if (i == subtag || i - subtag > 8 || isFirst && (i < 2 || i > 3)) {
          return false;
        }
        subtag = i + 1;
      } else if (tag.charAt(i) >= 128 || !Character.isLetterOrDigit(tag.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** Where a whole title has the colon before its subtitle; -1 for a title without one. */
  public static int subtitleMark(String whole) {
    int colon = whole.indexOf(": ");
    return colon > 0 && isSplit(whole, colon) ? colon : -1;
  }

  /** Whether words stand on both sides of a mark. */
  public static boolean isSplit(String whole, int mark) {
    return !whole.substring(0, mark).isBlank() && !whole.substring(mark + 1).isBlank();
  }

  /** The number of "2", "2." or "2nd"; empty for all else. */
  public static OptionalInt ordinal(String words) {
    for (String ending : new String[] {"st", "nd", "rd", "th", "."}) {
      if (words.endsWith(ending)) {
        return whole(words.substring(0, words.length() - ending.length()));
      }
    }
    return whole(words);
  }

  /** A number of up to four digits; empty for all else. */
  public static OptionalInt whole(String digits) {
    if (digits.isEmpty() || digits.length() > 4) {
      return OptionalInt.empty();
    }
    for (int i = 0; i < digits.length(); i++) {
      if (!isDigit(digits.charAt(i))) {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.of(Integer.parseInt(digits));
  }

  /**
   * The one number of four digits in some words, or the first of two with a dash between them; empty
   * where there is none, or several otherwise.
   */
  public static OptionalInt year(String words) {
    OptionalInt year = OptionalInt.empty();
    for (int i = 0; i < words.length(); ) {
      int end = i;
      while (end < words.length() && isDigit(words.charAt(end))) {
        end++;
      }
      if (end - i == 4) {
        if (year.isPresent()) {
          boolean range = i > 4 && "-–/".indexOf(words.charAt(i - 1)) >= 0;
          return range && isFour(words, i - 5) ? year : OptionalInt.empty();
        }
        year = OptionalInt.of(Integer.parseInt(words.substring(i, end)));
      }
      i = end + 1;
    }
    return year;
  }

  private static boolean isFour(String words, int from) {
    boolean four = true;
    for (int i = from; i < from + 4; i++) {
      four &= isDigit(words.charAt(i));
    }
    return four;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
