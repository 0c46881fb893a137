package merese.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class InTurkishLocaleTest {
  @Test
  @InTurkishLocale
  void theLowerCaseOfCapitalIIsDotless() {
    assertEquals("rıng", "RING".toLowerCase(Locale.getDefault()));
  }
}
