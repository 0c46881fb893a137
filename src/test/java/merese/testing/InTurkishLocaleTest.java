package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class InTurkishLocaleTest {
  @Test
  @InTurkishLocale
  void theLowerCaseOfCapitalIIsDotless() {
    assertEquals("rıng", "RING".toLowerCase());
  }
}
