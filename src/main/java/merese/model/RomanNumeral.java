package merese.model;

/**
 * Roman numerals from I to MMMMDCCCCLXXXXVIIII. Reading allows four of a kind (IIII, XXXX) and a
 * final j, as old books print them; writing uses the usual subtractive forms. From memory.
 */
final class RomanNumeral {
  private static final int[] VALUES = {1000, 900, 500, 400, 100, 90, 50, 40, 10, 9, 5, 4, 1};
  private static final String[] SIGNS = {
    "m", "cm", "d", "cd", "c", "xc", "l", "xl", "x", "ix", "v", "iv", "i"
  };
  private static final int FOUR_OF_A_KIND = 4;

  /** What can be written. */
  static final int LARGEST = 4999;

  private RomanNumeral() {}

  /** More signs than any numeral has: mmmdccclxxxviii, 3888, has 15. */
  private static final int LONGEST = 32;

  /** The length of the longest numeral, all in one case, that the word starts with; or 0. */
  static int lengthIn(String word) {
    if (word.isEmpty()) {
      return 0;
    }
    boolean upper = Character.isUpperCase(word.charAt(0));
    int end = 0;
    int longest = Math.min(word.length(), LONGEST);
    while (end < longest && isSign(word.charAt(end), upper)) {
      end++;
    }
    while (end > 0 && value(word.substring(0, end)) == 0) {
      end--;
    }
    return end;
  }

  private static boolean isSign(char c, boolean upper) {
    return (upper ? "IVXLCDMJ" : "ivxlcdmj").indexOf(c) >= 0;
  }

  /** The value of a numeral, or 0 if the word is none. Either case, no mixture checked. */
  static int value(String word) {
    int at = 0;
    int sum = 0;
    for (int i = 0; i < VALUES.length; i++) {
      boolean once =
          SIGNS[i].length() == 2
              || SIGNS[i].equals("d")
              || SIGNS[i].equals("l")
              || SIGNS[i].equals("v");
      int times = 0;
      while (times < (once ? 1 : FOUR_OF_A_KIND) && startsWith(word, at, SIGNS[i])) {
        sum += VALUES[i];
        at += SIGNS[i].length();
        times++;
      }
      if (times > 0 && SIGNS[i].length() == 2) {
        i = lastOfSameDecade(i);
      } else if (times > 0 && once) {
        i++;
      }
    }
    return at == word.length() ? sum : 0;
  }

  /**
   * After "ix" neither v, iv nor i may follow; after "iv" no i; after v no iv; so in each decade.
   */
  private static int lastOfSameDecade(int index) {
    return (index - 1) / 4 * 4 + 4;
  }

  private static boolean startsWith(String word, int at, String sign) {
    if (at + sign.length() > word.length()) {
      return false;
    }
    for (int i = 0; i < sign.length(); i++) {
      char c = word.charAt(at + i);
      c = c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c;
      boolean finalJ = c == 'j' && at + i == word.length() - 1;
      if ((finalJ ? 'i' : c) != sign.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** The usual numeral for a value from 1 to 4999. */
  static String write(long value, boolean upper) {
    StringBuilder out = new StringBuilder();
    long rest = value;
    for (int i = 0; i < VALUES.length; i++) {
      while (rest >= VALUES[i]) {
        out.append(SIGNS[i]);
        rest -= VALUES[i];
      }
    }
    if (upper) {
      for (int i = 0; i < out.length(); i++) {
        out.setCharAt(i, Character.toUpperCase(out.charAt(i)));
      }
    }
    return out.toString();
  }
}
