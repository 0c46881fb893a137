package merese.cli;

import java.util.List;
import merese.answer.claims.ClaimWords;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.model.Locator;

/** What stands beside a claim: where it is from, its years, and what limits it. */
final class ClaimRows {
  private static final ClaimWords WORDS = new ClaimWords(Wrap::together);

  private ClaimRows() {}

  /** As in "pl. XII (text p. 41)". */
  static String places(Row row) {
    return WORDS.places(row);
  }

  static String locators(List<Locator> locators) {
    return WORDS.locators(locators);
  }

  /** Source, place and words on one line. */
  static String brief(Row row) {
    return WORDS.brief(row);
  }

  static List<String> remarks(Row row) {
    return WORDS.remarks(row);
  }
}
