package merese.exchange.identifier;

import java.util.Optional;

/**
 * An ISBN whose check digit is right (ISO 2108).
 *
 * @param digits ten or thirteen, without hyphens; X for ten
 * @param asPrinted as it was written
 */
record Isbn(String digits, String asPrinted) {
  static Optional<Isbn> of(String printed) {
    Optional<String> digits = Digits.compact(printed);
    return digits.filter(Isbn::passes).map(d -> new Isbn(d, Digits.withoutClosing(printed)));
  }

  /** The ISBN of a book with a British Standard Book Number of nine digits, as printed to 1970. */
  static Optional<Isbn> ofSbn(String printed) {
    return Digits.compact(printed)
        .filter(d -> d.length() == 9)
        .map(d -> "0" + d)
        .filter(Isbn::passes)
        .map(d -> new Isbn(d, d));
  }

  private static boolean passes(String digits) {
    return switch (digits.length()) {
      case 10 -> Digits.isTenOnlyLast(digits) && Digits.weighted(digits) % 11 == 0;
      case 13 ->
          (digits.startsWith("978") || digits.startsWith("979"))
              && !isMusic(digits)
              && digits.indexOf('X') < 0
              && sum13(digits) % 10 == 0;
      default -> false;
    };
  }

  /** 979-0 is the prefix of the International Standard Music Number (ISO 10957). */
  static boolean isMusic(String digits) {
    return digits.length() == 13 && digits.startsWith("9790");
  }

  private static int sum13(String digits) {
    int sum = 0;
    for (int i = 0; i < digits.length(); i++) {
      sum += (i % 2 == 0 ? 1 : 3) * Digits.value(digits.charAt(i));
    }
    return sum;
  }

  /** The same number with thirteen digits. */
  String thirteen() {
    if (digits.length() == 13) {
      return digits;
    }
    String twelve = "978" + digits.substring(0, 9);
    return twelve + (10 - sum13(twelve) % 10) % 10;
  }

  /** With hyphens between its parts; as printed where no range of the agency has it. */
  String hyphenated() {
    boolean ten = digits.length() == 10;
    Optional<IsbnRanges.Parts> parts = IsbnRanges.get().parts(ten ? "978" + digits : digits);
    if (parts.isEmpty()) {
      return asPrinted;
    }
    int group = ten ? 0 : 3;
    int registrant = group + parts.get().group();
    int publication = registrant + parts.get().registrant();
    int check = digits.length() - 1;
    return (ten ? "" : digits.substring(0, group) + "-")
        + digits.substring(group, registrant)
        + "-"
        + digits.substring(registrant, publication)
        + "-"
        + digits.substring(publication, check)
        + "-"
        + digits.substring(check);
  }
}
