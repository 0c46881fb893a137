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

  /** What is read over the end of a page, in brackets, among what stands around it. */
  private static List<String> overTheEnd(String page, String next) {
    List<String> lines = List.of(page.split("/", -1));
    PageReading read = PageReading.of(lines, List.of(next.split("/", -1)));
    assertEquals(PageReading.of(lines).runs(), read.runs(), "the page itself is as it was");
    assertEquals(read.overTheEnd(), PageReading.ofKept(read.kept()).overTheEnd());
    assertEquals(read.text(), PageReading.ofKept(read.kept()).text());
    List<String> runs = new ArrayList<>();
    for (Run run : read.overTheEnd()) {
      List<String> words = new ArrayList<>(exact(run));
      words.add(run.to(), "]");
      words.add(run.from(), "[");
      runs.add(String.join(" ", words));
    }
    return runs;
  }

  @Test
  void aWordBrokenOverTheEndOfThePageIsMended() {
    assertEquals(
        List.of("with [ annulated ] ring", "with annu [ ] lated ring"),
        overTheEnd("with annu-", "lated rings"));
    assertEquals(List.of("a [ decanter ] of"), overTheEnd("a deca\u00AD", "nter of"));
    assertEquals(
        List.of("a decanter with [ annulated ] ring", "a decanter with annu [ ] lated ring"),
        overTheEnd("a deca-/nter with annu-", "lated ring"),
        "what is read in two within the page is not read again");
  }

  @Test
  void headsNumbersSignaturesAndCatchwordsStandBetween() {
    for (String foot : List.of("", "/", "/41", "/ [41] ", "/B 2", "/lated", "/lated/B2", "/xli/")) {
      for (String head :
          List.of("", "/", "42/", "THE RINGED DECANTER/", "The Neck  42/OF RINGS/")) {
        assertEquals(
            "with [ annulated ] ring",
            overTheEnd("with annu-" + foot, head + "lated rings").get(0),
            foot + " | " + head);
      }
    }
  }

  @Test
  void wordsOnEitherPageStandSideBySide() {
    assertEquals(List.of("a bladed [ ] ring and"), overTheEnd("a bladed", "rings and"));
    assertEquals(
        List.of("r q p o n m l k [ ] a b c d e f g h"),
        overTheEnd("t r q p o n m l k", "a b c d e f g h i j"));
  }

  @Test
  void nothingIsReadOverTheEndOfASentenceOrWhereTheNextPageBeginsAnew() {
    assertEquals(List.of(), overTheEnd("a bladed.", "ring"));
    assertEquals(List.of(), overTheEnd("a bladed", "Ring/Of Collars"));
    assertEquals(List.of(), overTheEnd("a bladed", ""));
    assertEquals(List.of(), overTheEnd("", "ring"));
    assertEquals(List.of(), overTheEnd("a bladed", "A/B/C/ring"));
  }

  @Test
  void whatRunsOverTheEndIsPrintedAsItStandsOnBothPages() {
    PageReading page =
        PageReading.of(
            List.of("The neck with  annu-", "41"), List.of("THE NECK", "lated", "rings"));
    Run over = page.overTheEnd().get(0);
    int at = over.from();

    assertEquals("with annulated rings", page.printed(over, at - 1, at + 1));
    assertFalse(page.isOverTheEnd(over.words().get(at - 1).end()));
    assertTrue(page.isOverTheEnd(over.words().get(at).end()));
    OneLine line = page.oneLineOverTheEnd();
    assertEquals("The neck with  annu-|lated rings", line.text());
    assertEquals(
        "annu-|lated",
        line.text()
            .substring(line.at(over.words().get(at).start()), line.at(over.words().get(at).end())));
    Run apart = page.overTheEnd().get(1);
    assertEquals("annu-lated", page.printed(apart, apart.from() - 1, apart.from()));
    PageReading two = PageReading.of(List.of("a bladed"), List.of("ring"));
    assertEquals("bladed ring", two.printed(two.overTheEnd().get(0), 1, 2));
    assertEquals("a bladed|ring", two.oneLineOverTheEnd().text());
  }

  @Test
  void aPageWithoutWordsHasOneEmptyRun() {
    assertTrue(PageReading.of(List.of()).runs().get(0).words().isEmpty());
    assertTrue(PageReading.of(List.of("", " — * ")).runs().get(0).words().isEmpty());
    assertFalse(PageReading.of(List.of("1")).runs().get(0).words().isEmpty());
  }
}
