package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter err = new StringWriter();
  private long now;

  private Progress on(Screen screen) {
    return new Progress(new PrintWriter(err), screen, () -> now);
  }

  private void halfOfTwentyThousand(Progress progress) {
    progress.start("Indexing notes", 20_000);
    now += 2_000_000_000L;
    progress.at(10_000);
  }

  @Nested
  class InAPipe {
    @Test
    void thereIsALineAtTheStartAndOneAtTheEnd() {
      try (Progress progress = on(new Screen(false, 80, false))) {
        halfOfTwentyThousand(progress);
        progress.at(20_000);
      }
      assertEquals("Indexing notes: 20,000 …\nIndexing notes: 20,000 in 2.0 s\n", err.toString());
    }
  }

  @Nested
  class OnATerminal {
    @Test
    void theBarIsDrawnOverItselfWithCountAndRate() {
      halfOfTwentyThousand(on(new Screen(true, 80, false)));
      String[] drawn = err.toString().split("\r");
      assertEquals(
          "Indexing notes  [##########----------]  10,000 of 20,000 (50 %)  5,000 a second",
          drawn[drawn.length - 1]);
    }

    @Test
    void noDrawingReachesTheLastColumnOfANarrowScreen() {
      halfOfTwentyThousand(on(new Screen(true, 40, false)));
      for (String drawn : err.toString().split("\r")) {
        assertTrue(drawn.length() < 40, drawn);
      }
    }

    @Test
    void theLastLineHidesTheBar() {
      Progress progress = on(new Screen(true, 80, false));
      halfOfTwentyThousand(progress);
      progress.close();
      String[] drawn = err.toString().split("\r");
      String last = drawn[drawn.length - 1];
      assertTrue(last.startsWith("Indexing notes: 10,000 in 2.0 s "), last);
      assertEquals(drawn[drawn.length - 2].length(), last.length() - 1);
    }

    @Test
    void itIsNotDrawnMoreOftenThanTheEyeCanFollow() {
      Progress progress = on(new Screen(true, 80, false));
      progress.start("Indexing notes", 1000);
      for (int i = 0; i < 1000; i++) {
        now += 1_000_000L;
        progress.at(i);
      }
      assertTrue(err.toString().split("\r").length <= 12);
    }
  }
}
