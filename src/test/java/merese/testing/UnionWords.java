package merese.testing;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;

/** A language of 50,000 invented words, of which the common ones are short (Zipf's law). */
final class UnionWords {
  static final int SIZE = 50_000;

  private static final String[] STARTS = {
    "b", "br", "d", "dr", "f", "fl", "g", "gr", "h", "k", "l", "m", "n", "p", "pr", "r", "s", "sk",
    "st", "t", "tr", "v", "w", "y"
  };
  private static final String[] MIDDLES = {"a", "e", "i", "o", "u", "ai", "oa", "ei"};
  private static final String[] ENDS = {"", "l", "n", "r", "m", "nd", "lm", "st", "lk", "th", "s"};

  /** From which rank on words have two syllables, and three. */
  private static final int[] LONGER = {40, 2_000};

  /** One in so many of the rarer words has an accent. */
  private static final int ACCENTED = 23;

  private final String[] words = new String[SIZE];
  private final Zipf zipf = new Zipf(SIZE);

  UnionWords() {
    Random random = new Random(50_000);
    Set<String> made = new HashSet<>();
    for (int rank = 0; rank < SIZE; rank++) {
      do {
        words[rank] = word(random, rank);
      } while (!made.add(words[rank]));
    }
  }

  private static String word(Random random, int rank) {
    StringBuilder word = new StringBuilder();
    for (int syllable = 0; syllable < 3; syllable++) {
      if (syllable == 0 || rank >= LONGER[syllable - 1]) {
        word.append(STARTS[random.nextInt(STARTS.length)])
            .append(MIDDLES[random.nextInt(MIDDLES.length)])
            .append(ENDS[random.nextInt(ENDS.length)]);
      }
    }
    return word.toString();
  }

  /** The word of a rank, in letters from a to z. */
  String plain(int rank) {
    return words[rank];
  }

  /** The word of a rank as it is printed: in a few, one letter has an accent. */
  private String printed(int rank) {
    boolean accented = rank >= LONGER[1] && rank % ACCENTED == 0;
    return accented ? words[rank].replaceFirst("e", "é").replaceFirst("o", "ö") : words[rank];
  }

  /** A word as a text of the language has it. */
  String next(Random random) {
    return printed(zipf.next(random));
  }

  /** So many words of a text, with spaces between. */
  String text(Random random, int count) {
    StringBuilder text = new StringBuilder(count * 8);
    for (int i = 0; i < count; i++) {
      text.append(i == 0 ? "" : " ").append(next(random));
    }
    return text.toString();
  }

  /** The same with a capital and a full stop. */
  String sentence(Random random, int count) {
    return InventedWords.capital(text(random, count)) + ".";
  }

  /** A name, each as often as any other. */
  String name(Random random) {
    return InventedWords.capital(plain(LONGER[0] + random.nextInt(SIZE - LONGER[0])));
  }
}
