package merese.exchange.identifier;

import java.util.Optional;

/** Why a text is no ISBN. */
final class IsbnFault {
  private IsbnFault() {}

  static String of(String printed) {
    Optional<String> compact = Digits.compact(printed);
    if (compact.isEmpty()) {
      return "\"" + printed + "\" is not an ISBN: there is more in it than digits and hyphens";
    }
    String digits = compact.get();
    String isbn = "ISBN " + printed;
    Optional<Isbn> sbn = Isbn.ofSbn(printed);
    if (sbn.isPresent()) {
      return isbn
          + " is an SBN of nine digits, as British books had them before 1970; as an ISBN it reads "
          + sbn.get().hyphenated();
    }
    if (digits.length() != 10 && digits.length() != 13) {
      return isbn + " has " + digits.length() + " digits; an ISBN has 10 or 13";
    }
    if (digits.length() == 13 && digits.indexOf('X') >= 0 || !Digits.isTenOnlyLast(digits)) {
      return isbn + " has an X where only a digit can stand";
    }
    if (Isbn.isMusic(digits)) {
      return isbn
          + " starts with 979-0, so it is the number of printed music (ISMN), not of a book";
    }
    if (digits.length() == 13 && !digits.startsWith("978") && !digits.startsWith("979")) {
      return isbn
          + " starts with "
          + digits.substring(0, 3)
          + "; an ISBN of 13 digits starts with"
          + " 978 or 979";
    }
    return isbn + " fails its check digit";
  }
}
