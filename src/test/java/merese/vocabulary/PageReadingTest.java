package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import merese.vocabulary.PageReading.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageReadingTest {
  private static List<String> exact(Run run) {
    return run.words().stream().map(PageWord::exact).toList();
  }

  private static List<List<String>> readings(String... lines) {
    List<List<String>> readings = new ArrayList<>();
    PageReading.of(List.of(lines)).runs().forEach(run -> readings.add(exact(run)));
    return readings;
  }

  @ParameterizedTest
  @ValueSource(strings = {"-", "\u2010", "\u00AD", "¬", "⸗", "- ", "-\t"})
  void aWordBrokenAtTheEndOfALineIsMended(String hyphen) {
    List<String> mended = readings("a cut deca" + hyphen, "  nter with rings").get(0);

    assertEquals(List.of("a", "cut", "decanter", "with", "ring"), mended);
  }

  @Test
  void aHyphenMayBelongToTheWordAndSoItIsReadInTwoAsWell() {
    assertEquals(
        List.of(List.of("a", "knifeedged", "ring"), List.of("a", "knife", "edged", "ring")),
        readings("a knife-", "edged ring"));
  }

  @Test
  void aSoftHyphenOnlyBreaksAWord() {
    assertEquals(List.of(List.of("decanter")), readings("deca\u00AD", "nter"));
  }

  @Test
  void beforeACapitalTheHyphenStaysAndTheMendedWordComesSecond() {
    assertEquals(
        List.of(List.of("anglo", "irish", "glass"), List.of("angloirish", "glass")),
        readings("Anglo-", "Irish glass"));
  }

  @Test
  void inCapitalsAWordIsMendedAsInSmallLetters() {
    assertEquals(List.of("decanter"), readings("DECAN-", "TERS").get(0));
  }

  @Test
  void twoYearsAreNotOneNumber() {
    assertEquals(List.of("1820", "30"), readings("1820-", "30").get(0));
  }

  @Test
  void aWordMayRunOverThreeLines() {
    assertEquals(List.of("reticulated"), readings("reti-", "cula-", "ted").get(0));
  }

  @Test
  void aDashBetweenLinesAndALoneHyphenMendNothing() {
    assertEquals(List.of(List.of("ring", "neck")), readings("ring —", "neck"));
    assertEquals(List.of(List.of("ring", "neck")), readings("ring -", "neck"));
    assertEquals(List.of(List.of("ring", "neck")), readings("ring-", "", "neck"));
    assertEquals(List.of(List.of("ring")), readings("ring-"));
  }

  @Test
  void wordsStandAsTheyArePrintedLessTheEndOfTheLine() {
    PageReading page = PageReading.of(List.of("The blown  glaſs deca-", "nter,   knife-", "edged"));
    Run mended = page.runs().get(0);

    assertEquals("blown glaſs decanter", page.printed(mended, 1, 3));
    assertEquals(
        "nter",
        page.text().substring(mended.words().get(3).end() - 4, mended.words().get(3).end()));
    Run second = page.runs().stream().filter(r -> exact(r).contains("knife")).findFirst().get();
    int at = exact(second).indexOf("knife");
    assertEquals("knife-edged", page.printed(second, at, at + 1));
  }

  @Test
  void aSecondReadingSaysWhatOnlyItHas() {
    Run second = PageReading.of(List.of("one two knife-", "edged three")).runs().get(1);

    assertEquals(List.of("knife", "edged"), exact(second).subList(second.from(), second.to()));
  }

  @Test
  void aPageWithoutWordsHasOneEmptyRun() {
    assertTrue(PageReading.of(List.of()).runs().get(0).words().isEmpty());
    assertTrue(PageReading.of(List.of("", " — * ")).runs().get(0).words().isEmpty());
    assertFalse(PageReading.of(List.of("1")).runs().get(0).words().isEmpty());
  }
}
