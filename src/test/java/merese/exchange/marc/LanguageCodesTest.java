package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LanguageCodesTest {
  /** Against the Java library, which has the codes of ISO 639-2/T. */
  @Test
  void everyTerminologicalCodeHasItsTag() {
    Set<String> missing = new HashSet<>();
    Set<String> old = Set.of("iw", "in", "ji", "mo", "sh");
    for (String two : Locale.getISOLanguages()) {
      String three = Locale.forLanguageTag(two).getISO3Language();
      if (!old.contains(two) && !LanguageCodes.tag(three).equals(Optional.of(two))) {
        missing.add(two + " " + three);
      }
    }
    assertEquals(Set.of(), missing);
  }

  /** The twenty that differ: ISO 639-2, clause 4.1 and its list; from memory. */
  @ParameterizedTest
  @CsvSource({
    "alb, sq", "arm, hy", "baq, eu", "bur, my", "chi, zh", "cze, cs", "dut, nl", "fre, fr",
    "geo, ka", "ger, de", "gre, el", "ice, is", "mac, mk", "mao, mi", "may, ms", "per, fa",
    "rum, ro", "slo, sk", "tib, bo", "wel, cy"
  })
  void aBibliographicCodeHasItsTagAndTheTagHasIt(String code, String tag) {
    assertEquals(Optional.of(tag), LanguageCodes.tag(code));
    assertEquals(Optional.of(code), LanguageCodes.code(tag));
  }

  @Test
  void aLanguageWithoutTwoLettersKeepsItsThree() {
    assertEquals(Optional.of("grc"), LanguageCodes.tag("grc"));
    assertEquals(Optional.of("grc"), LanguageCodes.code("grc"));
  }

  @Test
  void aCodeThatNamesNoLanguageHasNoTag() {
    for (String code : List.of("   ", "|||", "und", "mul", "zxx", "mis", "12", "e", "\u0131ta")) {
      assertTrue(LanguageCodes.tag(code).isEmpty(), code);
    }
  }

  @Test
  void theCountryOfATagIsNotCoded() {
    assertEquals(Optional.of("eng"), LanguageCodes.code("en-GB"));
    assertEquals(Optional.empty(), LanguageCodes.code("x-private"));
  }
}
