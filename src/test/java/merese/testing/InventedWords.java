package merese.testing;

import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Words, names and towns that are nobody's, with many accents; a few of them very common. */
final class InventedWords {
  private static final int WORDS = 20_000;
  private static final int FAMILIES = 8_000;
  private static final int GIVEN = 400;
  private static final int TOWNS = 300;
  private static final int PUBLISHERS = 900;
  private static final int JOURNALS = 150;

  private static final String[] STARTS = {
    "qu", "tr", "m", "n", "v", "br", "d", "f", "gl", "h", "k", "l", "p", "r", "s", "st", "w", "z",
    "ø", "š", "ł", "č", "å", "ž"
  };
  private static final String[] MIDDLES = {
    "a", "e", "i", "o", "u", "ä", "ö", "ü", "é", "è", "ê", "á", "ó", "í", "ő", "ā", "ů", "ñ", "æ"
  };
  private static final String[] ENDS = {
    "n", "r", "l", "nd", "rt", "ss", "ß", "ç", "ck", "m", "x", "th", "ř", "ń", "lm", "ng", "st", ""
  };

  private static final Ranked BY_WORD = new Ranked(WORDS, rank -> word(1, rank, 1));
  private static final Ranked BY_FAMILY = new Ranked(FAMILIES, rank -> capital(word(2, rank, 2)));
  private static final Ranked BY_GIVEN = new Ranked(GIVEN, rank -> capital(word(3, rank, 1)));
  private static final Ranked BY_TOWN = new Ranked(TOWNS, rank -> capital(word(4, rank, 2)));
  private static final Ranked BY_PUBLISHER = new Ranked(PUBLISHERS, InventedWords::firm);
  private static final Zipf BY_JOURNAL = new Zipf(JOURNALS);

  /** Texts, of which the first are met most often. */
  private record Ranked(String[] texts, Zipf zipf) {
    Ranked(int size, IntFunction<String> text) {
      this(IntStream.range(0, size).mapToObj(text).toArray(String[]::new), new Zipf(size));
    }

    String next(Random random) {
      return texts[zipf.next(random)];
    }
  }

  private InventedWords() {}

  static String word(Random random) {
    return BY_WORD.next(random);
  }

  static String family(Random random) {
    return BY_FAMILY.next(random);
  }

  static String given(Random random) {
    return BY_GIVEN.next(random);
  }

  static String town(Random random) {
    return BY_TOWN.next(random);
  }

  static String publisher(Random random) {
    return BY_PUBLISHER.next(random);
  }

  private static String firm(int rank) {
    String name = capital(word(5, rank, 2));
    return rank % 3 == 0 ? name + " & " + capital(word(6, rank, 2)) : name + " Press";
  }

  /** A journal by its rank, which is also how often it is met. */
  static int journal(Random random) {
    return BY_JOURNAL.next(random);
  }

  static String journal(int rank) {
    return capital(word(7, rank, 2)) + " Society Journal";
  }

  static String words(Random random, int count) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < count; i++) {
      words.append(i == 0 ? "" : " ").append(word(random));
    }
    return capital(words.toString());
  }

  /** The word of a rank in a list: the same each time. */
  private static String word(int list, int rank, int least) {
    Random random = new Random(list * 1_000_003L + rank);
    random.nextInt();
    StringBuilder word = new StringBuilder();
    for (int left = least + random.nextInt(2); left > 0; left--) {
      word.append(STARTS[rare(random, STARTS.length)])
          .append(MIDDLES[rare(random, MIDDLES.length)])
          .append(ENDS[rare(random, ENDS.length)]);
    }
    return word.toString();
  }

  /** Towards the start of a list, where the letters without accents are. */
  private static int rare(Random random, int size) {
    return Math.min(random.nextInt(size), random.nextInt(size));
  }

  static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
