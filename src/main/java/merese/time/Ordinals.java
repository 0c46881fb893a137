package merese.time;

import java.util.List;

/** Numbers in words and with endings. */
final class Ordinals {
  private static final List<String> WORDS =
      List.of(
          "first",
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth",
          "thirteenth",
          "fourteenth",
          "fifteenth",
          "sixteenth",
          "seventeenth",
          "eighteenth",
          "nineteenth",
          "twentieth");
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

  private Ordinals() {}

  static boolean isNumber(String token) {
    for (int i = 0; i < token.length(); i++) {
      if (token.charAt(i) < '0' || token.charAt(i) > '9') {
        return false;
      }
    }
    return !token.isEmpty() && token.length() < 9;
  }

  /** The number of "18th" or "eighteenth"; 0 for none. */
  static int of(String token) {
    int word = WORDS.indexOf(token);
    if (word >= 0) {
      return word + 1;
    }
    if (token.length() < 3 || token.length() > 4) {
      return 0;
    }
    String digits = token.substring(0, token.length() - 2);
    if (!isNumber(digits)) {
      return 0;
    }
    int number = Integer.parseInt(digits);
    return token.endsWith(ending(number)) ? number : 0;
  }

  private static String ending(int number) {
    if (number / 10 % 10 == 1) {
      return "th";
    }
    return switch (number % 10) {
      case 1 -> "st";
      case 2 -> "nd";
      case 3 -> "rd";
      default -> "th";
    };
  }

  /** The number of a century from the 5th to the 21st; 0 for none. */
  static int century(String token) {
    int number = of(token);
    return number >= 5 && number <= 21 ? number : 0;
  }

  static boolean isCentury(String token) {
    return switch (token) {
      case "century", "centuries", "c", "cent", "cents", "cen" -> true;
      default -> false;
    };
  }

  /** From 1; 0 for none. */
  static int month(String token) {
    return MONTHS.indexOf(token) + 1;
  }
}
