package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.function.Function;
import merese.shelf.Shelf;
import merese.testing.Shuffle.Shuffled;

/** Asks a library, and again with its names, keys, ids and order shuffled. */
public final class Shuffles {
  private static final int SEEDS = 5;

  private Shuffles() {}

  /**
   * Asserts that the answer is the same each time.
   *
   * @param named what the question names, such as a key; given shuffled as the works are
   */
  public static void assertAnswer(
      Path folder, SmallLibrary library, String named, String expected, Asked asked) {
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      assertEquals(expected, asked.answer(shelf, named));
    }
    for (int seed = 1; seed <= SEEDS; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = library.withWorks(shuffled.works());
      Function<String, String> renamed = name -> renamed(shuffled, name);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        String answer = asked.answer(shelf, renamed.apply(named));
        assertEquals(expected, shuffled.restore(answer), "seed " + seed);
      }
    }
  }

  private static String renamed(Shuffled shuffled, String name) {
    return shuffled.originals().entrySet().stream()
        .filter(e -> e.getValue().equals(name))
        .map(java.util.Map.Entry::getKey)
        .findFirst()
        .orElse(name);
  }

  /** A question to a library. */
  public interface Asked {
    String answer(Shelf shelf, String named);
  }
}
