package merese.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/**
 * One of any number of invented sources; the same number gives the same one. In each twenty, four
 * are chapters of the last, which is a collection.
 *
 * @param journal its rank; only of an article
 * @param isbn every fifth source has one, without hyphens and right; unique up to the 50,000th
 * @param collection the number of the collection that a chapter is in
 */
public record InventedSource(
    int number,
    Kind kind,
    List<Person> people,
    String title,
    Optional<String> subtitle,
    int year,
    String town,
    String publisher,
    OptionalInt journal,
    int volume,
    int firstPage,
    int pages,
    Optional<String> isbn,
    Optional<String> doi,
    String language,
    String summary,
    OptionalInt collection) {
  /** How many go together. */
  private static final int BLOCK = 20;

  private static final String[] LANGUAGES = {"eng", "eng", "eng", "ger", "fre", "cze"};

  /** What it is. */
  public enum Kind {
    BOOK,
    ARTICLE,
    CHAPTER,
    COLLECTION,
    THESIS
  }

  /**
   * A person.
   *
   * @param particle "van der", in one of ten
   */
  public record Person(String family, String given, Optional<String> particle) {
    /** "van der Quenmar, Nöl". */
    public String inverted() {
      return particle.map(p -> p + " ").orElse("") + family + ", " + given;
    }
  }

  public static InventedSource of(int number) {
    Random random = new Random(number * 7_919L + 11);
    random.nextInt();
    int place = number % BLOCK;
    Kind kind = kind(place);
    int year = 1_850 + random.nextInt(170);
    boolean subtitled = random.nextInt(3) == 0;
    return new InventedSource(
        number,
        kind,
        people(random),
        InventedWords.words(random, 3 + random.nextInt(6)),
        subtitled ? Optional.of(InventedWords.words(random, 4)) : Optional.empty(),
        year,
        InventedWords.town(random),
        InventedWords.publisher(random),
        kind == Kind.ARTICLE ? OptionalInt.of(InventedWords.journal(random)) : OptionalInt.empty(),
        1 + random.nextInt(90),
        1 + random.nextInt(400),
        1 + random.nextInt(40),
        place % 5 == 4 ? Optional.of(isbn(number / 5)) : Optional.empty(),
        kind == Kind.ARTICLE && random.nextBoolean()
            ? Optional.of("10.5555/merese." + number)
            : Optional.empty(),
        LANGUAGES[random.nextInt(LANGUAGES.length)],
        InventedWords.words(random, 10 + random.nextInt(30)) + ".",
        kind == Kind.CHAPTER ? OptionalInt.of(number - place + BLOCK - 1) : OptionalInt.empty());
  }

  private static Kind kind(int place) {
    if (place == BLOCK - 1) {
      return Kind.COLLECTION;
    }
    return place >= 10 && place < 14
        ? Kind.CHAPTER
        : place % 5 == 4 ? Kind.BOOK : place == 3 ? Kind.THESIS : Kind.ARTICLE;
  }

  private static List<Person> people(Random random) {
    List<Person> people = new ArrayList<>();
    for (int left = 1 + random.nextInt(3); left > 0; left--) {
      Optional<String> particle =
          random.nextInt(10) == 0 ? Optional.of("van der") : Optional.empty();
      String given =
          InventedWords.given(random) + " " + InventedWords.given(random).charAt(0) + ".";
      people.add(new Person(InventedWords.family(random), given, particle));
    }
    return people;
  }

  /** Of ten digits, from 1-9999000-0 on, which no publisher has (from memory). */
  private static String isbn(int number) {
    String four = String.format(Locale.ROOT, "%04d", number % 10_000);
    String nine = "19999" + four;
    int sum = 0;
    for (int i = 0; i < nine.length(); i++) {
      sum += (i + 1) * (nine.charAt(i) - '0');
    }
    return nine + (sum % 11 == 10 ? "X" : Integer.toString(sum % 11));
  }

  /** By which a bibliography calls it. */
  public String key() {
    return "s" + number;
  }

  public String pageRange() {
    return firstPage + "-" + (firstPage + pages);
  }

  /** The title with what follows the colon. */
  public String wholeTitle() {
    return title + subtitle.map(s -> ": " + s).orElse("");
  }
}
