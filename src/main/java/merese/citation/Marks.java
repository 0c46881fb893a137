package merese.citation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in for text that the processor must not touch: Unicode noncharacters, which are meant
 * for such inside use and which {@link PlainText} drops from data, and for a locator a word that it
 * takes for a number.
 */
final class Marks {
  /** A full stop, as in "2.", that leaves a number numeric to the processor. */
  static final String STOP = "zqstop";

  private static final String LOCATOR = "zqlocator";
  private static final Pattern LOCATORS =
      Pattern.compile(LOCATOR + "(?:1(?:[–-]" + LOCATOR + "2)?)?", Pattern.CASE_INSENSITIVE);

  static final char OPEN_DOUBLE = '\uFDD1';
  static final char CLOSE_DOUBLE = '\uFDD2';
  static final char OPEN_SINGLE = '\uFDD3';
  static final char CLOSE_SINGLE = '\uFDD4';

  /** The processor reads these in a number as signs of a list or of two labels. */
  private static final String IN_NUMBERS = " ,;:-–&[]()/.";

  private static final char FIRST_IN_NUMBERS = '\uFDD5';

  private Marks() {}

  /**
   * What the processor is given for a locator. It would take the text apart as a list of numbers
   * and lose what it does not know ("[12]" would come out as "12").
   */
  static String locator(boolean numeric, boolean plural) {
    return !numeric ? LOCATOR : plural ? LOCATOR + "1-" + LOCATOR + "2" : LOCATOR + "1";
  }

  static boolean holdsLocator(String text) {
    return LOCATORS.matcher(text).find();
  }

  static String withLocator(String text, String locator) {
    return LOCATORS.matcher(text).replaceAll(Matcher.quoteReplacement(locator));
  }

  /** A number, such as a patent's, that the processor is to print as it is. */
  static String hidden(String number) {
    StringBuilder out = new StringBuilder(number);
    for (int i = 0; i < out.length(); i++) {
      int known = IN_NUMBERS.indexOf(out.charAt(i));
      if (known >= 0) {
        out.setCharAt(i, (char) (FIRST_IN_NUMBERS + known));
      }
    }
    return out.toString();
  }

  /** Undoes {@link #hidden}. */
  static String shown(String text) {
    StringBuilder out = new StringBuilder(text.replace(STOP, "."));
    for (int i = 0; i < out.length(); i++) {
      int known = out.charAt(i) - FIRST_IN_NUMBERS;
      if (known >= 0 && known < IN_NUMBERS.length()) {
        out.setCharAt(i, IN_NUMBERS.charAt(known));
      }
    }
    return out.toString();
  }

  /** Text that does not go through the processor, with its quotation marks back. */
  static String removedFrom(String text) {
    return text.replace(OPEN_DOUBLE, '“')
        .replace(CLOSE_DOUBLE, '”')
        .replace(OPEN_SINGLE, '‘')
        .replace(CLOSE_SINGLE, '’');
  }
}
