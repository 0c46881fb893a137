package merese.exchange.identifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IdentifiersTest {
  private static Identifier right(Scheme scheme, String value) {
    return Identifier.of(scheme, value);
  }

  private static Identifier wrong(Scheme scheme, String value) {
    return new Identifier(scheme, value, Optional.empty(), true);
  }

  @Nested
  class AnIsbn {
    /**
     * Hyphenated numbers that are widely used as examples of the ranges (from memory: the articles
     * "ISBN" and "List of ISBN registration groups" of the free encyclopaedia, and the ISBN Users'
     * Manual); each is taken apart and must come out as it went in.
     */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "978-0-306-40615-7",
          "0-306-40615-2",
          "978-3-16-148410-0",
          "99921-58-10-7",
          "9971-5-0210-0",
          "960-425-059-0",
          "80-902734-1-6",
          "85-359-0277-5",
          "1-84356-028-3",
          "0-684-84328-5",
          "0-8044-2957-X",
          "0-85131-041-9",
          "93-86954-21-4",
          "0-943396-04-2",
          "0-9752298-0-X",
          "979-10-90636-07-1"
        })
    void getsHyphensByItsRange(String published) {
      assertEquals(right(Scheme.ISBN, published), Identifiers.isbn(published.replace("-", "")));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "ISBN 0-306-40615-2",
          "isbn: 0306406152",
          "ISBN-10: 0-306-40615-2",
          "ISBN 10 0 306 40615 2",
          "ISBN-10 0306406152",
          "ISBN0306406152",
          "0–306–40615–2",
          "0\u2011306\u201140615\u20112",
          "0\u00a0306\u00a040615\u00a02",
          "0 306 40615 2 :",
          " 0-3064-0615-2. "
        })
    void isReadThroughItsLabelAndAnyHyphens(String printed) {
      assertEquals(right(Scheme.ISBN, "0-306-40615-2"), Identifiers.isbn(printed));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"ISBN-13: 9780306406157", "ISBN 13 978 0 306 40615 7", "ISBN13:9780306406157"})
    void mayHaveItsLengthInTheLabel(String printed) {
      assertEquals(right(Scheme.ISBN, "978-0-306-40615-7"), Identifiers.isbn(printed));
    }

    @Test
    void keepsWhatItIsTheNumberOf() {
      assertEquals(
          new Identifier(Scheme.ISBN, "0-306-40615-2", Optional.of("pbk. : v. 1"), false),
          Identifiers.isbn("ISBN 0306406152 (pbk. : v. 1)"));
    }

    /** 99999 is the group of no country (the ranges of the ISBN agency, 3 October 2024). */
    @Test
    void ofNoKnownRangeStaysAsTyped() {
      assertEquals(right(Scheme.ISBN, "99999-00 02X"), Identifiers.isbn("ISBN 99999-00 02X"));
    }

    @Test
    void mayEndInASmallX() {
      assertEquals(right(Scheme.ISBN, "0-8044-2957-X"), Identifiers.isbn("080442957x"));
    }

    @ParameterizedTest
    @CsvSource({
      "0-306-40615-3, ISBN 0-306-40615-3 fails its check digit",
      "0–603–40615–2, ISBN 0–603–40615–2 fails its check digit",
      "978-0-306-40615-1, ISBN 978-0-306-40615-1 fails its check digit",
      "0-306-4061-2, ISBN 0-306-4061-2 has 9 digits; an ISBN has 10 or 13",
      "0-306-X0615-2, \"0-306-X0615-2\" is not an ISBN: there is more in it than digits and hyphens",
      "no isbn, \"no isbn\" is not an ISBN: there is more in it than digits and hyphens",
      "03064061, ISBN 03064061 has 8 digits; an ISBN has 10 or 13",
      "4006381333931, ISBN 4006381333931 starts with 400; an ISBN of 13 digits starts with 978 or"
          + " 979",
      "979-0-2600-0043-8, 'ISBN 979-0-2600-0043-8 starts with 979-0, so it is the number of printed"
          + " music (ISMN), not of a book'",
      "978030640615X, ISBN 978030640615X has an X where only a digit can stand",
    })
    void thatFailsStaysJustAsItStands(String printed, String fault) {
      Identifier read = Identifiers.isbn(printed);
      assertEquals(wrong(Scheme.ISBN, printed), read);
      assertEquals(Optional.of(fault), Identifiers.fault(read));
    }

    /** SBN 901690546 is ISBN 0901690546: the example of the free encyclopaedia (from memory). */
    @Test
    void ofNineDigitsIsAnSbnAndNotMended() {
      Identifier sbn = Identifiers.isbn("SBN 90169054 6");
      assertEquals(wrong(Scheme.ISBN, "90169054 6"), sbn);
      assertEquals(
          Optional.of(
              "ISBN 90169054 6 is an SBN of nine digits, as British books had them before 1970; as"
                  + " an ISBN it reads 0-901690-54-6"),
          Identifiers.fault(sbn));
      assertTrue(Identifiers.isSame(sbn, Identifiers.isbn("0901690546")));
    }

    @Test
    void ofTenDigitsIsTheSameAsThatOfThirteen() {
      Identifier ten = Identifiers.isbn("0306406152");
      Identifier thirteen = Identifiers.isbn("978-0-306-40615-7 (hbk.)");
      assertTrue(Identifiers.isSame(ten, thirteen));
      assertFalse(Identifiers.isSame(ten, Identifiers.isbn("0306406153")));
      assertFalse(Identifiers.isSame(ten, Identifiers.isbn("080442957X")));
    }

    @Test
    void thatFailsIsTheSameAsOneOfTheSameDigits() {
      assertTrue(
          Identifiers.isSame(Identifiers.isbn("0-306-40615-3"), Identifiers.isbn("0306406153")));
    }

    @Test
    void isCompactInCatalogueRecords() {
      assertEquals("080442957X", Identifiers.compact(Identifiers.isbn("0-8044-2957-x")));
    }
  }

  @Nested
  class AnIssn {
    /**
     * 0378-5955 is the standard's example (ISO 3297, from memory); 2434-561X and 0317-8471 are
     * those of its agency's and the free encyclopaedia's pages on check digits (from memory).
     */
    @ParameterizedTest
    @CsvSource({
      "03785955, 0378-5955",
      "ISSN 0378-5955, 0378-5955",
      "ISSN-L: 0378–5955, 0378-5955",
      "eISSN 2434561x, 2434-561X",
      "e-ISSN: 2434-561X, 2434-561X",
      "0317 8471, 0317-8471"
    })
    void getsItsHyphen(String printed, String usual) {
      assertEquals(right(Scheme.ISSN, usual), Identifiers.issn(printed));
    }

    @Test
    void keepsWhatItIsTheNumberOf() {
      assertEquals(Optional.of("print"), Identifiers.issn("0378-5955 (print)").qualifier());
    }

    @ParameterizedTest
    @CsvSource({
      "0378-5956, ISSN 0378-5956 fails its check digit",
      "0378-595, ISSN 0378-595 has 7 digits; an ISSN has 8",
      "none, \"none\" is not an ISSN: there is more in it than digits and a hyphen"
    })
    void thatFailsStaysJustAsItStands(String printed, String fault) {
      Identifier read = Identifiers.issn(printed);
      assertEquals(wrong(Scheme.ISSN, printed), read);
      assertEquals(Optional.of(fault), Identifiers.fault(read));
    }

    @Test
    void isTheSameWithAndWithoutHyphen() {
      assertTrue(
          Identifiers.isSame(Identifiers.issn("03785955"), Identifiers.issn("ISSN 0378-5955")));
      assertFalse(Identifiers.isSame(Identifiers.issn("03785955"), Identifiers.issn("0317-8471")));
    }
  }

  @Nested
  class ADoi {
    /** 10.1000/182 is the DOI Handbook itself; 10.1006/jmbi.1998.2354 an example in it (memory). */
    @ParameterizedTest
    @CsvSource({
      "10.1000/182, 10.1000/182",
      "doi:10.1000/182, 10.1000/182",
      "DOI: 10.1000/182, 10.1000/182",
      "https://doi.org/10.1000/182, 10.1000/182",
      "http://dx.doi.org/10.1000/182, 10.1000/182",
      "HTTPS://DOI.ORG/10.1000/182, 10.1000/182",
      "doi.org/10.1000/182, 10.1000/182",
      "doi:https://doi.org/10.1000/182, 10.1000/182",
      "info:doi/10.1006/jmbi.1998.2354, 10.1006/jmbi.1998.2354",
      "10.1000.10/123456, 10.1000.10/123456",
      "10.1000/182., 10.1000/182",
      "10.1000/a-., 10.1000/a-.",
      "10.1000/182;, 10.1000/182;",
      "10.1000/ABC(x), 10.1000/ABC(x)",
      "10.1000/a%2Fb, 10.1000/a%2Fb",
      "https://doi.org/10.1000/a%2Fb, 10.1000/a/b",
      "https://doi.org/10.1000/%zz, 10.1000/%zz",
      "https://doi.org/10.1000/%ff, 10.1000/%ff",
      "https://doi.org/10.1000/%E2%82%AC, 10.1000/€"
    })
    void isBare(String printed, String bare) {
      assertEquals(right(Scheme.DOI, bare), Identifiers.doi(printed));
    }

    /** A serial item's number in a DOI, as publishers gave them in the 1990s (from memory). */
    @Test
    void mayHoldAlmostAnything() {
      String sici = "10.1002/(SICI)1097-0258(19980815/30)17:15/16<1661::AID-SIM968>3.0.CO;2-#";
      assertEquals(right(Scheme.DOI, sici), Identifiers.doi("https://doi.org/" + sici));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "10.1000/",
          "10.1000",
          "11.1000/182",
          "10./182",
          "10.a/182",
          "10.1000./182",
          "10.1000/1 82",
          "https://example.org/10.1000/182"
        })
    void needsItsParts(String printed) {
      Identifier read = Identifiers.doi(printed);
      assertEquals(wrong(Scheme.DOI, printed), read);
      assertEquals(
          Optional.of(
              "\""
                  + printed
                  + "\" is not a DOI: one has \"10.\", a number, a stroke and more, without spaces,"
                  + " as in 10.1000/182"),
          Identifiers.fault(read));
    }

    /** ISO 26324: names are compared without regard to the case of ASCII letters. */
    @Test
    void hasNoCase() {
      assertTrue(
          Identifiers.isSame(
              Identifiers.doi("10.1000/GLIS"), Identifiers.doi("https://doi.org/10.1000/glis")));
      assertFalse(Identifiers.isSame(Identifiers.doi("10.1000/É"), Identifiers.doi("10.1000/é")));
    }
  }

  @Test
  void numbersOfDifferentSchemesAreNeverTheSame() {
    assertFalse(Identifiers.isSame(wrong(Scheme.ISBN, "03785955"), wrong(Scheme.ISSN, "03785955")));
  }
}
