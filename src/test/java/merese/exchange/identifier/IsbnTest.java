package merese.exchange.identifier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsbnTest {
  /** ISO 2108; the first is the standard's own kind of example (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0-306-40615-2, true",
    "978-0-306-40615-7, true",
    "080442957X, true",
    "0-306-40615-3, false",
    "no isbn, false"
  })
  void anIsbnIsOneIfItsCheckDigitIsRight(String printed, boolean valid) {
    assertEquals(valid, Isbn.isValid(printed));
  }
}
