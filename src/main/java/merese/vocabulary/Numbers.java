package merese.vocabulary;

import java.util.List;
import java.util.OptionalInt;

/** Small numbers in digits or English words. */
public final class Numbers {
  private static final List<String> WORDS =
      List.of(
          "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private static final int DIGITS = 4;

  private Numbers() {}

  /** The number that a word in small letters is. */
  public static OptionalInt of(String word) {
    int inWords = WORDS.indexOf(word);
    if (inWords > 0) {
      return OptionalInt.of(inWords);
    }
    if (word.isEmpty() || word.length() > DIGITS) {
      return OptionalInt.empty();
    }
    for (int i = 0; i < word.length(); i++) {
      if (word.charAt(i) < '0' || word.charAt(i) > '9') {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.of(Integer.parseInt(word));
  }
}
