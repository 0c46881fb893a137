package merese.exchange.marc;

import java.util.Optional;
import merese.model.Edition;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * Leader and field 008 of a source: what the library does not know is not coded ("|"), which
 * includes the day on which the record was made.
 */
final class FixedField {
  static final int LENGTH = 40;

  private FixedField() {}

  static String leader(Work work, Edition edition, boolean part) {
    return "00000n" + type(work.kind()) + level(work.kind(), edition, part) + " a2200000ui 4500";
  }

  /** Leader, position 6; a thesis is a manuscript, as most catalogues have it (from memory). */
  private static char type(SourceKind kind) {
    return switch (kind) {
      case MANUSCRIPT, STATEMENT, THESIS -> 't';
      case VIDEO -> 'g';
      default -> 'a';
    };
  }

  /** Leader, position 7. */
  private static char level(SourceKind kind, Edition edition, boolean part) {
    if (part) {
      return 'a';
    }
    if (edition.container().isPresent()) {
      return isInSerial(kind) ? 'b' : 'a';
    }
    return kind == SourceKind.WEB_PAGE ? 'i' : 'm';
  }

  static boolean isInSerial(SourceKind kind) {
    return kind == SourceKind.JOURNAL_ARTICLE || kind == SourceKind.NEWSLETTER;
  }

  static String general(Work work, Edition edition, boolean part) {
    char[] field = "||||||nuuuuuuuuxx |||||||||||||||||||||d".toCharArray();
    put(dates(edition, part), 6, field);
    put(work.language().flatMap(LanguageCodes::code).orElse("   "), 35, field);
    field[38] = '|';
    if (work.kind() == SourceKind.VIDEO) {
      field[33] = 'v';
    }
    if (work.kind() == SourceKind.WEB_PAGE) {
      field[21] = 'w';
    }
    return new String(field);
  }

  private static void put(String text, int at, char[] into) {
    text.getChars(0, text.length(), into, at);
  }

  /** Positions 6 to 14: a single date, that of a reprint with the original's, or none. */
  private static String dates(Edition edition, boolean part) {
    if (edition.imprint().year().isEmpty()) {
      return "nuuuuuuuu";
    }
    String year = year(edition.imprint().year().getAsInt());
    Optional<Edition.Lineage> again = edition.lineage().filter(l -> !part && isRepeat(l));
    return again
        .map(l -> "r" + year + year(l.originalYear().getAsInt()))
        .orElse("s" + year + "    ");
  }

  private static boolean isRepeat(Edition.Lineage lineage) {
    boolean repeat =
        lineage.form() == Edition.Lineage.Form.REPRINT
            || lineage.form() == Edition.Lineage.Form.FACSIMILE;
    return repeat && lineage.originalYear().isPresent();
  }

  private static String year(int year) {
    return year >= 0 && year <= 9999 ? "0".repeat(4 - digits(year)) + year : "uuuu";
  }

  private static int digits(int year) {
    return Integer.toString(year).length();
  }
}
