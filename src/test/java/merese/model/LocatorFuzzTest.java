package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random texts, always the same: every one is read or refused, and what is read holds together. */
class LocatorFuzzTest {
  private static final String[] PIECES = {
    "p. ",
    "pp. ",
    "pl. ",
    "pls ",
    "plates ",
    "fig. ",
    "figs ",
    "col. pl. ",
    "colour pls ",
    "no. ",
    "cat. nos ",
    "lots ",
    "fol. ",
    "fols ",
    "col. ",
    "vol. ",
    "II, ",
    "n. ",
    "caption",
    "frontispiece",
    "front endpaper",
    "facing ",
    "§ ",
    "part ",
    "item ",
    "photo ",
    "1",
    "2",
    "9",
    "12",
    "214",
    "16",
    "XL",
    "XII",
    "iv",
    "x",
    "A",
    "B",
    "C",
    "a",
    "b",
    "r",
    "v",
    " r",
    " bis",
    "*",
    "[",
    "]",
    ":",
    ".",
    "–",
    "-",
    " to ",
    ", ",
    "; ",
    " and ",
    " & ",
    " except ",
    " (top)",
    "(",
    ")",
    " ",
    "f",
    "ff.",
    "03:15",
    "İ",
    "ı",
    "\u0000",
    "\ud83c",
    "ſ",
    "K"
  };

  private static final int MEMBERS_CHECKED = 500;

  @Test
  void everyTextIsReadOrRefusedAndWhatIsReadHoldsTogether() {
    Random random = new Random(20250302);
    int read = 0;
    for (int i = 0; i < 40_000; i++) {
      StringBuilder text = new StringBuilder();
      int pieces = 1 + random.nextInt(9);
      for (int j = 0; j < pieces; j++) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      read += holds(text.toString()) ? 1 : 0;
    }
    assertTrue(read > 800, "too few of the random texts are locators to prove much: " + read);
  }

  @Test
  void aFixtureLineWithOneCharacterChangedIsReadOrRefused() {
    Random random = new Random(41);
    List<String[]> rows = LocatorFixtures.rows("locator-lines.txt", 2);
    for (int i = 0; i < 12_000; i++) {
      StringBuilder text = new StringBuilder(rows.get(random.nextInt(rows.size()))[0]);
      int at = random.nextInt(text.length());
      switch (random.nextInt(3)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
        default -> text.setCharAt(at, text.charAt(random.nextInt(text.length())));
      }
      holds(text.toString());
    }
  }

  @Test
  void aVeryLongTextIsReadOrRefusedQuickly() {
    holds("p. " + "1, ".repeat(9_000) + "1");
    holds("p. " + "1, ".repeat(200_000) + "1");
    holds("(".repeat(100_000));
    holds("pl. 1, fig. 2, ".repeat(5_000) + "p. 3");
    holds("pls 1–9000 except " + "5, ".repeat(500) + "6");
  }

  private static boolean holds(String text) {
    Locator locator;
    try {
      locator = Locator.parse(text);
    } catch (LocatorException e) {
      assertTrue(e.offset() >= 0 && e.offset() <= text.length(), e.getMessage());
      return false;
    } catch (RuntimeException e) {
      return fail("\"" + text + "\" is neither read nor refused", e);
    }
    try {
      assertEquals(text, locator.printed());
      if (locator.count() > MEMBERS_CHECKED) {
        return true;
      }
      LocatorCorpusTest.assertMembersHold(locator);
      assertEquals(locator.members(), locator.withExceptionsApplied().members());
      assertTrue(!Locator.inPhysicalOrder(List.of(locator)).isEmpty());
    } catch (RuntimeException | AssertionError e) {
      return fail("\"" + text + "\" does not hold together: " + e.getMessage(), e);
    }
    return true;
  }
}
