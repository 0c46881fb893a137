package merese.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EdtfTest {
  @Nested
  class TheOuterSpan {
    /** The default profile of dates in words (R8), as far as EDTF has them. */
    @ParameterizedTest
    @CsvSource({
      "1832, 1832-01-01/1832-12-31",
      "1790~, 1785-01-01/1795-12-31",
      "1790~/1810~, 1785-01-01/1815-12-31",
      "183X, 1830-01-01/1839-12-31",
      "1920/.., 1920-01-01/..",
      "../1779, ../1779-12-31"
    })
    void isByTheProfile(String edtf, String outer) {
      assertEquals(outer, Edtf.parse(edtf).outer().toString());
    }

    /** Our own choice, without a source. */
    @ParameterizedTest
    @CsvSource({
      "1984-06~, 1984-03-01/1984-09-30",
      "1984-11~, 1984-08-01/1985-02-28",
      "1984-06-11~, 1984-06-04/1984-06-18",
      "1790%, 1785-01-01/1795-12-31",
      "17XX~, 1695-01-01/1804-12-31",
      "Y12000~, +11995-01-01/+12005-12-31"
    })
    void reachesByTheSmallestApproximatePart(String edtf, String outer) {
      assertEquals(outer, Edtf.parse(edtf).outer().toString());
    }

    @ParameterizedTest
    @CsvSource({
      "2004-06-~03, 2004-06-01/2004-06-10",
      "2004-06-~28, 2004-06-21/2004-06-30",
      "2004-~11, 2004-08-01/2004-12-31",
      "~2004-02, 1999-02-01/2009-02-28",
      "2004-06~-11, 2004-03-11/2004-09-11",
      "~2004-06-~11, 1999-06-04/2009-06-18"
    })
    void staysInALargerPartThatIsKnown(String edtf, String outer) {
      assertEquals(outer, Edtf.parse(edtf).outer().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1984?", "1984-06?", "?1984-06", "1984?/1990?"})
    void isTheCoreOfWhatIsOnlyUncertain(String edtf) {
      Edtf date = Edtf.parse(edtf);
      assertEquals(date.core(), date.outer());
      assertTrue(date.qualification().isUncertain());
    }

    /**
     * The specification's examples: "some year between 1900 and 1999, estimated to be 1950", "some
     * year between 338000 and 338999, estimated to be 338800". Its third gives 171010000 to
     * 171010999 for three digits, which are six.
     */
    @ParameterizedTest
    @CsvSource({
      "1950S2, 1950-01-01/1950-12-31, 1900-01-01/1999-12-31",
      "Y3388E2S3, +338800-01-01/+338800-12-31, +338000-01-01/+338999-12-31",
      "Y171010000S3, +171010000-01-01/+171010000-12-31, +171000000-01-01/+171999999-12-31",
      "-1859S2, -1859-01-01/-1859-12-31, -1899-01-01/-1800-12-31",
      "0950S2, 0950-01-01/0950-12-31, 0950-01-01/0959-12-31",
      "1950S2~, 1950-01-01/1950-12-31, 1895-01-01/2004-12-31"
    })
    void takesInAllYearsOfTheSameSignificantDigits(String edtf, String core, String outer) {
      assertEquals(core, Edtf.parse(edtf).core().toString());
      assertEquals(outer, Edtf.parse(edtf).outer().toString());
    }

    @Test
    void takesAnotherProfile() {
      assertEquals(
          "1780-01-01/1800-12-31", Edtf.parse("1790~").outer(new Circa(10, 0, 0)).toString());
      assertThrows(IllegalArgumentException.class, () -> new Circa(-1, 0, 0));
    }
  }

  @Nested
  class TheCore {
    @ParameterizedTest
    @CsvSource({
      "156X-12-25, 1560-12-25/1569-12-25",
      "190X-02-29, 1904-02-29/1908-02-29",
      "-20XX, -2099-01-01/-2000-12-31",
      "1919-XX-31, 1919-01-31/1919-12-31",
      "1919-X1, 1919-01-01/1919-11-30",
      "1919-02-X9, 1919-02-09/1919-02-19",
      "XXXX-12-25, 0000-12-25/9999-12-25",
      "-XXXX, -9999-01-01/-0001-12-31",
      "1985-04-12T23:20:30Z, 1985-04-12/1985-04-12",
      "'[1667,1668,1670..1672]', 1667-01-01/1672-12-31",
      "'[..1760-12-03,1770]', ../1770-12-31",
      "Y-17E7, -170000000-01-01/-170000000-12-31"
    })
    void isFromTheFirstDayThatMayBeMeantToTheLast(String edtf, String core) {
      assertEquals(core, Edtf.parse(edtf).core().toString());
    }

    /** Quarters, thirds and halves: ISO 8601-2 calls them so; seasons are our own choice. */
    @ParameterizedTest
    @CsvSource({
      "2001-21, 2001-03-01/2001-05-31, 2001-01-01/2001-12-31",
      "2001-22, 2001-06-01/2001-08-31, 2001-01-01/2002-03-31",
      "2001-24, 2001-12-01/2001-12-31, 2001-01-01/2002-03-31",
      "2001-25, 2001-03-01/2001-05-31, 2001-03-01/2001-06-30",
      "2001-28, 2001-12-01/2001-12-31, 2001-01-01/2002-03-31",
      "2001-29, 2001-09-01/2001-11-30, 2001-09-01/2001-12-31",
      "2001-30, 2001-12-01/2001-12-31, 2001-01-01/2002-03-31",
      "2001-31, 2001-03-01/2001-05-31, 2001-03-01/2001-06-30",
      "2001-33, 2001-01-01/2001-03-31, 2001-01-01/2001-03-31",
      "2001-36, 2001-10-01/2001-12-31, 2001-10-01/2001-12-31",
      "2001-39, 2001-09-01/2001-12-31, 2001-09-01/2001-12-31",
      "2001-41, 2001-07-01/2001-12-31, 2001-07-01/2001-12-31",
      "2001-41~, 2001-07-01/2001-12-31, 2001-04-01/2002-03-31",
      "~2001-41, 2001-07-01/2001-12-31, 1996-07-01/2006-12-31"
    })
    void ofASeasonIsMonths(String edtf, String core, String outer) {
      assertEquals(core, Edtf.parse(edtf).core().toString());
      assertEquals(outer, Edtf.parse(edtf).outer().toString());
    }
  }

  @Nested
  class AQualification {
    private Qualification of(String edtf, Unit unit) {
      return Edtf.parse(edtf).qualification(unit);
    }

    /** The specification's examples of level 2 (from memory). */
    @Test
    void isOfOnePartOrOfAllBeforeIt() {
      assertEquals(Qualification.UNCERTAIN_AND_APPROXIMATE, of("2004-06-11%", Unit.YEAR));
      assertEquals(Qualification.UNCERTAIN_AND_APPROXIMATE, of("2004-06-11%", Unit.DAY));
      assertEquals(Qualification.APPROXIMATE, of("2004-06~-11", Unit.YEAR));
      assertEquals(Qualification.APPROXIMATE, of("2004-06~-11", Unit.MONTH));
      assertEquals(Qualification.NONE, of("2004-06~-11", Unit.DAY));
      assertEquals(Qualification.UNCERTAIN, of("?2004-06-~11", Unit.YEAR));
      assertEquals(Qualification.NONE, of("?2004-06-~11", Unit.MONTH));
      assertEquals(Qualification.APPROXIMATE, of("?2004-06-~11", Unit.DAY));
      assertEquals(Qualification.NONE, of("2004-%06-11", Unit.YEAR));
      assertEquals(Qualification.UNCERTAIN_AND_APPROXIMATE, of("2004-%06-11", Unit.MONTH));
      assertEquals(Qualification.UNCERTAIN_AND_APPROXIMATE, of("?2004-06~", Unit.YEAR));
    }

    @Test
    void ofAnIntervalIsThatOfItsEnds() {
      assertEquals(Qualification.UNCERTAIN_AND_APPROXIMATE, of("1984?/2004-06~", Unit.YEAR));
      assertEquals(
          List.of("1984?", "2004-06~"),
          Edtf.parse("1984?/2004-06~").parts().stream().map(Edtf::printed).toList());
      assertEquals(Qualification.NONE, Edtf.parse("1984/..").qualification());
    }
  }

  @Nested
  class AnUnknownEnd {
    private Span core(String edtf) {
      return Edtf.parse(edtf).core();
    }

    @Test
    void mayReachAnywhereAndSurelyReachesNowhere() {
      assertFalse(core("1785/").overlaps(core("1800")));
      assertTrue(core("1785/").mayOverlap(core("1800")));
      assertTrue(core("1785/").overlaps(core("1785-07")));
      assertTrue(core("/1785").overlaps(core("1785-07")));
      assertFalse(core("1785/").mayOverlap(core("1784")));
      assertFalse(core("/1785").overlaps(core("1784")));
      assertTrue(core("/1785").mayOverlap(core("1784")));
    }

    @Test
    void besideAnOpenEndLeavesNothingSure() {
      assertFalse(core("/..").overlaps(core("1785")));
      assertTrue(core("/..").mayOverlap(core("1785")));
    }

    @Test
    void isNoOpenEnd() {
      assertTrue(core("1785/..").overlaps(core("1800")));
      assertFalse(core("1785/..").overlaps(core("1784")));
      assertTrue(core("../..").overlaps(core("1784")));
      assertTrue(core("../1810").overlaps(core("1805/..")));
    }
  }

  @Nested
  class ARefusal {
    @ParameterizedTest
    @CsvSource({
      "178, 1, 'a year has only 3 digits', 'write 0178, or 178X for ten years'",
      "17, 1, 'a year has only 2 digits', 'write 0017, or 17XX for a century'",
      "179x, 4, 'an open digit is written x', 'write X'",
      "178u, 4, 'an open digit is written u', 'write X'",
      "1790-3, 6, 'a month has two digits', 'write 03'",
      "1790-xx, 6, 'an open digit is written x', 'write X'",
      "1790-13, 6, 'there is no month 13', 'write 01 to 12, or a season from 21 to 41'",
      "1790-02-30, 9, 'there is no day 30 in that month', 'write a day that the month has'",
      "XXXX-02-30, 9, 'there is no day 30 in that month', 'write a day that the month has'",
      "1790-21-01, 11, 'a day follows the season 21', 'write a month from 01 to 12'",
      "20067890, 1, 'a year has more than four digits', 'write Y before it: Y20067890'",
      "Y2006, 2, 'a year with Y has more than four digits',"
          + " 'write it without Y, in four digits'",
      "-0000, 1, 'there is no year -0000', 'write 0000 for the year before 1'",
      "1790?~, 6, 'two marks follow each other', 'write % for both ? and ~'",
      "c. 1790, 3, 'there is a space', 'leave it out'",
      "1790/1780, 6, 'the end is before the start', 'write the earlier date first'",
      "1790-06-11/1790-06, 12, 'the end begins before the start',"
          + " 'write the end as exactly as the start'",
      "1790/1800/1810, 10, 'there is a second stroke', 'write one start and one end'",
      "/, 1, 'neither start nor end is given', 'give one, as in 1790/ or /1810'",
      "Y20000/.., 1, 'a year with Y or S stands in an interval',"
          + " 'use years of four digits, or write it by itself'",
      "'[1790,1800', 11, 'the set has no end', 'end it with ]'",
      "'[1790,..1800,1810]', 7, 'an open range is in the middle of a set',"
          + " 'write an open start first and an open end last'",
      "'{1790}', 1, 'there is only one date in the set', 'write it without brackets'",
      "'{1790..1800-03,1810}', 8, 'a range needs two dates of one kind',"
          + " 'write two years, months or days'",
      "1790-06T10:00:00, 8, 'a time needs a day', 'write year, month and day before it'",
      "1790-06-11T25:00:00, 12, 'hours are at most 24', 'write a time as in 23:20:30'",
      "Y1E20, 2, 'a number has more than 15 digits',"
          + " 'that is more than is reckoned with; write a nearer year'"
    })
    void saysWhereWhatAndWhatToWrite(String text, int character, String problem, String remedy) {
      EdtfException refused = assertThrows(EdtfException.class, () -> Edtf.parse(text));
      assertEquals(
          "cannot read the date \""
              + text
              + "\" at character "
              + character
              + ": "
              + problem
              + "; "
              + remedy,
          refused.getMessage());
      assertEquals(character - 1, refused.offset());
    }

    @Test
    void namesTheLimitOfLength() {
      EdtfException refused =
          assertThrows(EdtfException.class, () -> Edtf.parse("1".repeat(1_001)));
      assertEquals("it has more than 1000 characters", refused.problem());
      assertTrue(refused.getMessage().length() < 300);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u00a0"})
    void isOfNothingToo(String text) {
      assertThrows(EdtfException.class, () -> Edtf.parse(text));
    }
  }
}
