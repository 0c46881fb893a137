package merese.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.DateSettings;
import merese.model.DateWord;
import merese.time.WordedDate.Asks;
import merese.time.WordedDate.Read;
import merese.time.WordedDate.Unread;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The recommended profile is our own (R8); what is common practice or from memory is marked. */
class DateWordsTest {
  private static String years(Span span) {
    return end(span.from()) + "–" + end(span.to());
  }

  private static String end(Span.End end) {
    return end instanceof Span.On on
        ? Reach.fourDigits(on.day().year())
        : end instanceof Span.Open ? "open" : "?";
  }

  private static Read read(String words, DateProfile profile) {
    return assertInstanceOf(Read.class, new DateWords(profile).read(words), words);
  }

  private static void assertReads(String words, String core, String outer, String edtf) {
    Read read = read(words, DateProfile.DEFAULT);
    assertEquals(
        List.of(core, outer.equals("same") ? core : outer, edtf),
        List.of(years(read.core()), years(read.outer()), read.edtf()),
        words);
    assertEquals(read.core(), Edtf.parse(edtf).core(), edtf);
  }

  /** Row by row, the column of EDTF too; where the table gives none, "interval". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1832                      | 1832–1832 | same      | 1832
          c. 1790                   | 1790–1790 | 1785–1795 | 1790~
          c. 1790–1810              | 1790–1810 | 1785–1815 | 1790~/1810~
          1830s                     | 1830–1839 | same      | 183X
          18th century              | 1700–1799 | 1700–1800 | 17XX
          early 18th c.             | 1700–1733 | 1700–1740 | 1700~/1733~
          mid 18th c.               | 1734–1766 | 1730–1770 | 1734~/1766~
          late 18th c.              | 1767–1799 | 1760–1800 | 1767~/1799~
          1st half of the 18th c.   | 1700–1749 | 1700–1750 | 1700/1749
          last quarter of the 18th c. | 1775–1799 | 1775–1800 | 1775/1799
          before 1780               | open–1779 | same      | ../1779
          from the 1920s, still copied | 1920–open | same   | 1920/..
          Regency                   | 1811–1820 | 1800–1830 | 1811/1820
          """)
  void theRecommendedProfileIsKeptRowByRow(String words, String core, String outer, String edtf) {
    assertReads(words, core, outer, edtf);
  }

  @Test
  void theTurnOfACenturyIsAsked() {
    assertEquals(
        new Asks(List.of("c. 1800", "c. 1900")),
        new DateWords(DateProfile.DEFAULT).read("turn of the 19th century"));
    assertInstanceOf(
        Asks.class, new DateWords(DateProfile.DEFAULT).read("the turn of the nineteenth century"));
    assertInstanceOf(Asks.class, new DateWords(DateProfile.DEFAULT).read("turn of the century"));
  }

  @ParameterizedTest
  @CsvSource({"1800s,1800–1809,1800–1899", "1810-12,1810 to 1812,1810-12"})
  void whatMeansTwoDatesIsAsked(String words, String one, String other) {
    assertEquals(new Asks(List.of(one, other)), new DateWords(DateProfile.DEFAULT).read(words));
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          circa 1790                | 1790–1790 | 1785–1795 | 1790~
          ca. 1790                  | 1790–1790 | 1785–1795 | 1790~
          c1790                     | 1790–1790 | 1785–1795 | 1790~
          about 1705–15             | 1705–1715 | 1700–1720 | 1705~/1715~
          c. 1750–5                 | 1750–1755 | 1745–1760 | 1750~/1755~
          1790–c. 1810              | 1790–1810 | 1790–1815 | 1790/1810~
          1785 or thereabouts       | 1785–1785 | 1780–1790 | 1785~
          1790-1810                 | 1790–1810 | same      | 1790/1810
          1925-40                   | 1925–1940 | same      | 1925/1940
          between 1780 and 1820     | 1780–1820 | same      | 1780/1820
          from 1780 to 1820         | 1780–1820 | same      | 1780/1820
          1770s to 1790s            | 1770–1799 | same      | 177X/179X
          1790s–1810s               | 1790–1819 | same      | 179X/181X
          the 1770s                 | 1770–1779 | same      | 177X
          1790's                    | 1790–1799 | same      | 179X
          late 1790s                | 1797–1799 | 1796–1800 | 1797~/1799~
          late eighteenth century   | 1767–1799 | 1760–1800 | 1767~/1799~
          Late 18th-century         | 1767–1799 | 1760–1800 | 1767~/1799~
          mid-18th century          | 1734–1766 | 1730–1770 | 1734~/1766~
          middle of the 18th century | 1734–1766 | 1730–1770 | 1734~/1766~
          mid to late 18th century  | 1734–1799 | 1730–1800 | 1734~/1799~
          late 18th or early 19th century | 1767–1833 | 1760–1840 | 1767~/1833~
          late 18th–early 19th century | 1767–1833 | 1760–1840 | 1767~/1833~
          18th and 19th centuries   | 1700–1899 | 1700–1900 | 17XX/18XX
          second quarter of the 18th century | 1725–1749 | 1725–1750 | 1725/1749
          2nd quarter of the nineteenth century | 1825–1849 | 1825–1850 | 1825/1849
          last third of the eighteenth century | 1767–1799 | 1767–1800 | 1767/1799
          after 1820                | 1821–open | same      | 1821/..
          before c. 1780            | open–1779 | open–1784 | ../1779~
          after c. 1780             | 1781–open | 1776–open | 1781~/..
          until 1790                | open–1790 | same      | ../1790
          to about 1750             | open–1750 | open–1755 | ../1750~
          by 1780                   | open–1780 | same      | ../1780
          not before 1790           | 1790–open | same      | 1790/..
          from the 1920s onwards    | 1920–open | same      | 1920/..
          the 1780s and after       | 1780–open | same      | 1780/..
          since 1951                | 1951–open | same      | 1951/..
          18th century and later    | 1700–open | same      | 1700/..
          from the mid-17th century | 1634–open | 1630–open | 1634~/..
          probably 1790             | 1790–1790 | same      | 1790?
          perhaps c. 1790           | 1790–1790 | 1785–1795 | 1790%
          1790?                     | 1790–1790 | same      | 1790?
          [1790]                    | 1790–1790 | same      | 1790
          “Regency”                 | 1811–1820 | 1800–1830 | 1811/1820
          Regency period            | 1811–1820 | 1800–1830 | 1811/1820
          14 June 1869              | 1869–1869 | same      | 1869-06-14
          18th June, 1869           | 1869–1869 | same      | 1869-06-18
          June 1869                 | 1869–1869 | same      | 1869-06
          1790~/1810~               | 1790–1810 | 1785–1815 | 1790~/1810~
          """)
  void otherWordsAreReadLikeThem(String words, String core, String outer, String edtf) {
    assertReads(words, core, outer, edtf);
  }

  /** Reigns from memory. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          George I                  | 1714–1727
          George III                | 1760–1820
          Queen Anne to about 1715  | 1702–1715
          William and Mary          | 1689–1694
          """)
  void theLongestPeriodWordCounts(String words, String core) {
    assertEquals(core, years(read(words, DateProfile.DEFAULT).core()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "few after 1760",
        "1745–60, with stragglers",
        "last quarter of the 18th century, and on to 1820",
        "early Victorian",
        "late Regency to early Victorian",
        "end of the 18th century",
        "after the 'Forty-five",
        "early eighteenth, and again about 1760",
        "late 18th",
        "1810–1790",
        "1790–85",
        "hardly after the middle of the century",
        "for 1818",
        "31 June 1790",
        "watermark 1822",
        "fifth quarter of the 18th century",
        "18st century",
        "–",
        "c."
      })
  void whatIsNotReadWholeIsNotReadAtAll(String words) {
    assertEquals(new Unread(), new DateWords(DateProfile.DEFAULT).read(words));
  }

  @Test
  void aPeriodWordIsKept() {
    Read read = read("regency", DateProfile.DEFAULT);
    assertEquals(Optional.of("Regency"), read.period());
    assertEquals(WordedDate.Width.PERIOD, read.width());
  }

  @Test
  void yearsAreComputedUnlessTheyArePrinted() {
    assertEquals(true, read("c. 1790–1810", DateProfile.DEFAULT).printed());
    assertEquals(true, read("1745–60", DateProfile.DEFAULT).printed());
    assertEquals(true, read("from 1951", DateProfile.DEFAULT).printed());
    assertEquals(false, read("1830s", DateProfile.DEFAULT).printed());
    assertEquals(false, read("before 1780", DateProfile.DEFAULT).printed());
  }

  @Nested
  @DisplayName("A library's own profile")
  class OwnProfile {
    private final DateProfile own =
        DateProfile.of(
            Optional.of(
                new DateSettings(
                    Optional.of("ours"),
                    OptionalInt.of(10),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    OptionalInt.of(1),
                    OptionalInt.of(0),
                    List.of(
                        DateWord.of("early", 0, 24, 0, 24), DateWord.of("end", 90, 99, 85, 100)),
                    List.of(
                        DateWord.of("regency", 1795, 1830, 1795, 1837),
                        DateWord.of("the 'Forty-five", 1745, 1746, 1745, 1746)))));

    @ParameterizedTest
    @CsvSource({
      "c. 1790,1790–1790,1780–1800",
      "18th century,1701–1800,1701–1800",
      "early 18th century,1701–1725,1701–1725",
      "end of the 18th century,1791–1800,1786–1801",
      "late 18th century,1768–1800,1761–1801",
      "Regency,1795–1830,1795–1837",
      "after the 'Forty-five,1747–open,1747–open",
      "George III,1760–1820,1760–1820"
    })
    void takesThePlaceOfTheDefault(String words, String core, String outer) {
      Read read = read(words, own);
      assertEquals(core + " " + outer, years(read.core()) + " " + years(read.outer()));
    }

    @Test
    void isTheDefaultWhereNothingIsSet() {
      assertEquals(DateProfile.DEFAULT, DateProfile.of(Optional.empty()));
      assertEquals(DateProfile.DEFAULT, DateProfile.of(Optional.of(DateSettings.DEFAULT)));
    }
  }
}
