package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindCommandTest {
  private static final Map<String, String> TERMINAL =
      Map.of("MERESE_TTY", "out err", "MERESE_COLUMNS", "80", "TERM", "xterm");

  @TempDir private static Path folder;

  @BeforeAll
  static void aCopyOfTheDemoLibrary() throws IOException {
    DemoLibrary.copyTo(folder);
    find(Map.of(), "ring"); // makes the index
  }

  private static Ran find(Map<String, String> environment, String... words) {
    String[] args = new String[words.length + 1];
    args[0] = "find";
    System.arraycopy(words, 0, args, 1, words.length);
    return Ran.in(folder, environment, args);
  }

  private static Ran find(String... words) {
    return find(Map.of(), words);
  }

  @Test
  void printsWhatEachHitIsWhereItIsAndTheWordsInTheirSentence() {
    Ran ran = find("\"wet hand\"");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(
        """
        1 hit for “"wet hand"”.

        1. Note: Quenby 1926 [missing], pl. XII, fig. 3 (text p. 41)
           “knife-edged rings” → bladed ring
           “The knife-edged rings give a sure hold to a «wet hand», and are pleasanter
             to look upon than to touch.”

        Words on the page, not yet noted
          Directory of Brackenford and the Vale 1817, for the year 1818, pl. I: “… The
            ſame, the neck with two ſharp or knife-edged rings, which will not ſlip in a
            «wet hand». 4. …”
        """,
        ran.out().replace('\u00A0', ' '));
  }

  @Test
  void marksInBoldWhereTheTerminalTakesItAndInSignsWhereNot() {
    String bold = find(TERMINAL, "\"wet hand\"").out();
    assertTrue(bold.contains("\u001B[1mwet hand\u001B[0m"), bold);
    assertFalse(bold.contains("«"), bold);
    String plain =
        find(Map.of("MERESE_TTY", "out", "TERM", "xterm", "NO_COLOR", "1"), "\"wet hand\"").out();
    assertTrue(plain.contains("«wet hand»"), plain);
  }

  @Test
  void breaksLinesAtTheSamePlacesWithBoldAsWithout() {
    String bold = find(TERMINAL, "knife edged rings").out();
    bold.lines()
        .map(line -> line.replace("\u001B[1m", "").replace("\u001B[0m", ""))
        .forEach(line -> assertTrue(Wrap.columns(line) <= 80, line));
    bold.lines()
        .forEach(
            line ->
                assertEquals(
                    line.split("\u001B\\[1m", -1).length,
                    line.split("\u001B\\[0m", -1).length,
                    line));
  }

  @Test
  void printsTwentyUnlessToldOtherwiseAndSaysHowManyMoreThereAre() {
    Ran usual = find("bladed ring");
    assertTrue(usual.out().contains("\n20. "), usual.out());
    assertFalse(usual.out().contains("\n21. "), usual.out());
    assertTrue(usual.out().contains(" more"), usual.out());
    Ran few = find("bladed ring", "--limit", "2");
    assertTrue(few.out().contains("\n2. ") && !few.out().contains("\n3. "), few.out());
    assertEquals(2, find("bladed", "--limit", "0").code());
  }

  @Test
  void saysWhatToTryWhereThereIsNothing() {
    Ran ran = find("qqqqqq");
    assertEquals(1, ran.code());
    assertTrue(ran.out().startsWith("Nothing in this library has “qqqqqq”."), ran.out());
    assertTrue(ran.out().contains("Try "), ran.out());
    Ran mistyped = find("moustachio", "hospise");
    assertTrue(mistyped.out().contains("Did you mean: moustachio hospice?"), mistyped.out());
  }

  @Test
  void refusesWhatItCannotReadWithACaretAndTheCodeOfWrongUse() {
    Ran ran = find("ring", "year:1950..1900");
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertEquals(
        """
        merese find: this span runs backwards; write the earlier year first: 1900..1950
          ring year:1950..1900
                    ^
        """,
        ran.err());
    assertEquals(2, find("").code());
    assertEquals(2, find().code());
    assertEquals(2, find("source:nobody").code());
  }

  @Test
  void saysWhoseWordsTheUsersOwnAre() {
    assertTrue(find("reading:sovereign").out().contains("my reading: "));
    assertTrue(find("necklet").out().contains("My untraced word: “«necklet»”"));
    assertTrue(find("\"hollow behind and none\"").out().contains("My experience of blown-out"));
    assertTrue(find("roman").out().contains("My piece d-17"));
    assertTrue(find("Ruddick", "is:mine").out().contains("My coinage: “tail-over ring”"));
    assertTrue(find("nobody", "aloud").out().contains("My preferred term: “feathered ring”"));
  }

  @Test
  void printsTheAnswerAsJsonWithMarksInChars() throws IOException {
    Ran ran = find("\"wet hand\"", "--json");
    assertEquals(0, ran.code(), ran.err());
    JsonNode hit = new ObjectMapper().readTree(ran.out()).get("hits").get(0);
    assertEquals("NOTE", hit.get("kind").asText());
    assertEquals("quenby-1926/n1", hit.get("id").asText());
    assertEquals("pl. XII, fig. 3", hit.get("pictured").get(0).asText());
    JsonNode text = hit.get("passages").get(0).get("text");
    JsonNode mark = text.get("marks").get(0);
    assertEquals(
        "wet hand",
        text.get("words").asText().substring(mark.get("start").asInt(), mark.get("end").asInt()));
  }

  @Test
  void printsNothingThatATerminalWouldObey() {
    Ran ran = find(TERMINAL, "ring\u001B[31m\u0007");
    assertFalse(ran.out().contains("\u001B[31m") || ran.out().contains("\u0007"), ran.out());
  }

  @Test
  void isNotBroughtDownByHostileQuestions() {
    for (String hostile :
        new String[] {
          "*",
          "\"",
          ")",
          "(((((",
          "AND",
          "-",
          "title:",
          "a:b:c",
          "\u0000",
          "[1 TO 2]",
          "ring~2",
          "ring^4",
          "\\",
          "/r.*/",
          "((a) OR (b",
          "\uD83D",
          "x".repeat(5000),
          "(".repeat(3000),
        }) {
      Ran ran = find(hostile, "--limit", "1");
      assertFalse(ran.err().contains("fault in merese"), hostile + ": " + ran.err());
      assertFalse(ran.err().contains("\tat "), hostile + ": " + ran.err());
    }
  }
}
