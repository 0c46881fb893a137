package merese.exchange.identifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import merese.model.Identifier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class IdentifierPropertiesTest {
  /** Ten digits of which the last is found by trying, so independently of how we sum. */
  @Provide
  Arbitrary<String> tens() {
    return Arbitraries.strings().numeric().ofLength(9).map(s -> completed(s, "0123456789X"));
  }

  @Provide
  Arbitrary<String> thirteens() {
    return Arbitraries.strings()
        .numeric()
        .ofLength(9)
        .flatMap(s -> Arbitraries.of("978", "9791", "9798").map(p -> (p + s).substring(0, 12)))
        .map(s -> completed(s, "0123456789"));
  }

  @Provide
  Arbitrary<String> isbns() {
    return Arbitraries.oneOf(tens(), thirteens());
  }

  private static String completed(String start, String digits) {
    return digits
        .chars()
        .mapToObj(c -> start + (char) c)
        .filter(s -> !Identifiers.isbn(s).wrongInPrint())
        .reduce((a, b) -> a + " and " + b)
        .orElseThrow();
  }

  @Property(seed = "1")
  void exactlyOneCheckDigitFits(@ForAll("isbns") String isbn) {
    assertTrue(isbn.length() == 10 || isbn.length() == 13, isbn);
  }

  @Property(seed = "1")
  void hyphensChangeNoDigit(@ForAll("isbns") String isbn) {
    Identifier read = Identifiers.isbn(isbn);
    assertEquals(isbn, read.value().replace("-", ""));
    assertEquals(isbn, Identifiers.compact(read));
    assertEquals(read, Identifiers.isbn(read.value()));
    assertEquals(Optional.empty(), Identifiers.fault(read));
  }

  @Property(seed = "1")
  void oneChangedDigitIsAlwaysFound(
      @ForAll("isbns") String isbn,
      @ForAll @IntRange(max = 12) int at,
      @ForAll @IntRange(max = 9) int digit) {
    int place = at % isbn.length();
    char changed = (char) ('0' + digit);
    Assume.that(isbn.charAt(place) != changed);
    String misprint = isbn.substring(0, place) + changed + isbn.substring(place + 1);
    Identifier read = Identifiers.isbn(misprint);
    assertTrue(read.wrongInPrint());
    assertEquals(misprint, read.value());
    assertTrue(Identifiers.fault(read).isPresent());
    assertFalse(Identifiers.isSame(read, Identifiers.isbn(isbn)));
  }

  @Property(seed = "1")
  void twoSwappedNeighboursAreAlwaysFoundInTenDigits(
      @ForAll("tens") String isbn, @ForAll @IntRange(max = 8) int at) {
    char first = isbn.charAt(at);
    char second = isbn.charAt(at + 1);
    Assume.that(first != second);
    String misprint = isbn.substring(0, at) + second + first + isbn.substring(at + 2);
    assertTrue(Identifiers.isbn(misprint).wrongInPrint());
  }

  @Property(seed = "1")
  void tenDigitsAndThirteenAreTheSameBook(@ForAll("tens") String isbn) {
    String thirteen = completed("978" + isbn.substring(0, 9), "0123456789");
    assertTrue(Identifiers.isSame(Identifiers.isbn(isbn), Identifiers.isbn(thirteen)));
  }

  @Property(seed = "1")
  void anyTextIsReadAndReadAgainTheSame(@ForAll("texts") String text) {
    Assume.that(!text.isBlank());
    Identifier isbn = Identifiers.isbn(text);
    assertEquals(isbn.value(), Identifiers.isbn(isbn.value()).value());
    assertEquals(isbn.wrongInPrint(), Identifiers.fault(isbn).isPresent());
    Identifier issn = Identifiers.issn(text);
    assertEquals(issn.value(), Identifiers.issn(issn.value()).value());
    assertEquals(issn.wrongInPrint(), Identifiers.fault(issn).isPresent());
    Identifier doi = Identifiers.doi(text);
    assertEquals(doi.value(), Identifiers.doi(doi.value()).value());
    assertEquals(doi.wrongInPrint(), Identifiers.fault(doi).isPresent());
  }

  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "ISBN",
            "ISSN",
            "-13",
            "-10",
            ":",
            " ",
            "-",
            "–",
            "(pbk.)",
            "(",
            ")",
            "X",
            "x",
            ".",
            "978",
            "0306406152",
            "03785955",
            "10.",
            "1000",
            "/",
            "182",
            "doi",
            "https://doi.org/",
            "%2F",
            "%",
            "e",
            "L",
            "é",
            "\u0000");
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(20),
        pieces.list().ofMinSize(1).ofMaxSize(8).map(list -> String.join("", list)));
  }
}
