package merese.exchange.identifier;

import java.util.Optional;

/** The number of a serial: eight digits, the last a check digit that may be X (ISO 3297). */
final class Issn {
  private static final int LENGTH = 8;

  private Issn() {}

  static Optional<String> usualForm(String printed) {
    return Digits.compact(printed)
        .filter(Issn::passes)
        .map(d -> d.substring(0, LENGTH / 2) + "-" + d.substring(LENGTH / 2));
  }

  private static boolean passes(String digits) {
    return digits.length() == LENGTH
        && Digits.isTenOnlyLast(digits)
        && Digits.weighted(digits) % 11 == 0;
  }

  static Optional<String> fault(String printed) {
    Optional<String> digits = Digits.compact(printed);
    if (digits.isEmpty()) {
      return Optional.of(
          "\"" + printed + "\" is not an ISSN: there is more in it than digits and a hyphen");
    }
    if (passes(digits.get())) {
      return Optional.empty();
    }
    int length = digits.get().length();
    return Optional.of(
        "ISSN "
            + printed
            + (length == LENGTH
                ? " fails its check digit"
                : " has " + length + " digits; an ISSN has 8"));
  }
}
