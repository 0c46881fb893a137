package merese.model;

import java.util.ArrayList;
import java.util.List;
import merese.model.LocatorNumber.Side;
import merese.model.LocatorNumber.Style;

/**
 * Reads one number at the cursor. What a letter alone means depends on the kind only, so that the
 * same text always means the same: I, V and X are roman everywhere; C, D, L and M are roman for
 * pages, C and L for plates in capitals, all four for volumes and parts in capitals; any other
 * letter is a letter, as colour plates and figures are often lettered. So a plate C among plates A,
 * B and D is read as plate 100. Common practice, no source.
 */
final class LocatorNumberReader {
  private static final int MOST_DIGITS = 15;
  private static final int MOST_PREFIX_LETTERS = 3;

  private final LocatorScanner scanner;

  LocatorNumberReader(LocatorScanner scanner) {
    this.scanner = scanner;
  }

  /**
   * Reads a number.
   *
   * @param previous the number before it in a list or range, or null: after 9a a "b" alone is 9b,
   *     and after 12r a "v" alone is 12v
   * @param counted whether it stands in square brackets, which are the caller's to read
   */
  LocatorNumber read(LocatorKind kind, LocatorNumber previous, boolean counted) {
    int begin = scanner.at;
    String word = scanner.word();
    LocatorNumber number = continued(kind, previous, word);
    if (number != null) {
      scanner.at += word.length();
      return counted ? number.withCounted(true).written(0) : number;
    }
    number = tail(kind, decimals(numeral(kind, word)));
    String typed = scanner.text.substring(begin, scanner.at);
    return number.withCounted(counted).withPrinted(counted ? "[" + typed + "]" : typed);
  }

  private LocatorNumber continued(LocatorKind kind, LocatorNumber previous, String word) {
    if (previous == null || word.length() != 1) {
      return null;
    }
    char after = scanner.peek(1);
    if (after == '.' || LocatorScanner.isDigit(after)) {
      return null;
    }
    if (kind == LocatorKind.FOLIO && previous.side() != Side.NONE && side(word) != Side.NONE) {
      return previous.withSide(side(word)).written(0);
    }
    char letter = word.charAt(0);
    boolean sameCase =
        previous.hasLetterSuffix()
            && Character.isLowerCase(letter) == Character.isLowerCase(previous.suffix().charAt(0));
    boolean mayContinue = previous.style() == Style.ARABIC || Character.isLowerCase(letter);
    if (!sameCase || !mayContinue || !isAscii(letter)) {
      return null;
    }
    LocatorNumber next = previous.withSuffix(word).written(0);
    return readsBack(kind, next) ? next : null;
  }

  /** Whether the number, printed alone, is read as itself: leaf 12 with suffix v is not. */
  static boolean readsBack(LocatorKind kind, LocatorNumber number) {
    LocatorScanner alone = new LocatorScanner(number.withCounted(false).written(0).printed());
    try {
      LocatorNumber again = new LocatorNumberReader(alone).read(kind, null, false);
      return alone.atEnd() && again.sameAs(number.withCounted(false));
    } catch (LocatorException e) {
      return false;
    }
  }

  private LocatorNumber numeral(LocatorKind kind, String word) {
    int begin = scanner.at;
    if (word.isEmpty()) {
      return LocatorNumber.unprinted(Style.ARABIC, "", digits(begin));
    }
    int afterWord = word.length();
    boolean hyphen = afterWord == 1 && scanner.peek(1) == '-' && romanLength(kind, word) == 0;
    int toDigits = afterWord + (hyphen ? 1 : 0);
    if (LocatorScanner.isDigit(scanner.peek(toDigits))) {
      if (word.length() > MOST_PREFIX_LETTERS) {
        throw notANumber(begin);
      }
      scanner.at += toDigits;
      String prefix = scanner.text.substring(begin, begin + toDigits);
      return LocatorNumber.unprinted(Style.ARABIC, prefix, digits(begin));
    }
    int roman = romanLength(kind, word);
    if (roman > 0) {
      scanner.at += roman;
      String sign = word.substring(0, roman);
      Style style = Character.isUpperCase(word.charAt(0)) ? Style.ROMAN_UPPER : Style.ROMAN_LOWER;
      return LocatorNumber.unprinted(style, "", RomanNumeral.value(sign));
    }
    char letter = word.charAt(0);
    if (word.length() == 1 && isAscii(letter)) {
      scanner.at++;
      Style style = Character.isUpperCase(letter) ? Style.LETTER_UPPER : Style.LETTER_LOWER;
      return LocatorNumber.unprinted(style, "", letterValue(letter));
    }
    throw notANumber(begin);
  }

  static long letterValue(char letter) {
    return 1L + Character.toLowerCase(letter) - 'a';
  }

  private static boolean isAscii(char letter) {
    char small = Character.toLowerCase(letter);
    return letter < 128 && small >= 'a' && small <= 'z';
  }

  /** How much of the word is a roman numeral; 0 unless the rest can be a suffix or a side. */
  private static int romanLength(LocatorKind kind, String word) {
    int length = RomanNumeral.lengthIn(word);
    if (length == word.length()) {
      return length == 1 && !isRomanAlone(kind, word.charAt(0)) ? 0 : length;
    }
    String rest = word.substring(length);
    boolean isSide = kind == LocatorKind.FOLIO && side(rest) != Side.NONE;
    boolean isSuffix = rest.length() == 1 && isAscii(rest.charAt(0)) || isOrdinal(rest);
    boolean sameCase =
        Character.isUpperCase(word.charAt(0)) == Character.isUpperCase(rest.charAt(0));
    boolean misspelt = sameCase && "ivx".indexOf(Character.toLowerCase(rest.charAt(0))) >= 0;
    boolean clear =
        !misspelt && (length > 1 || Character.isUpperCase(word.charAt(0)) || isOrdinal(rest));
    return isSide || (isSuffix && clear) ? length : 0;
  }

  private static boolean isRomanAlone(LocatorKind kind, char letter) {
    if ("ivx".indexOf(Character.toLowerCase(letter)) >= 0) {
      return true;
    }
    return switch (kind) {
      case PAGE -> "cdlm".indexOf(Character.toLowerCase(letter)) >= 0;
      case PLATE -> letter == 'C' || letter == 'L';
      case VOLUME, PART -> "CDLM".indexOf(letter) >= 0;
      default -> false;
    };
  }

  private long digits(int begin) {
    int start = scanner.at;
    long value = 0;
    while (LocatorScanner.isDigit(scanner.peek())) {
      if (scanner.at - start >= MOST_DIGITS) {
        throw scanner.error(
            start,
            "a number of more than " + MOST_DIGITS + " digits",
            "check it, or write its last part in brackets as a position");
      }
      value = value * 10 + scanner.peek() - '0';
      scanner.at++;
    }
    if (scanner.at == start) {
      throw notANumber(begin);
    }
    return value;
  }

  private LocatorNumber decimals(LocatorNumber number) {
    if (scanner.peek() != '.' || !LocatorScanner.isDigit(scanner.peek(1))) {
      return number;
    }
    List<Long> decimals = new ArrayList<>();
    while (scanner.peek() == '.' && LocatorScanner.isDigit(scanner.peek(1))) {
      scanner.at++;
      decimals.add(digits(scanner.at));
    }
    return number.withDecimals(decimals);
  }

  private LocatorNumber tail(LocatorKind kind, LocatorNumber number) {
    LocatorNumber read = number.style().isLetter() ? number : attached(kind, number);
    int before = scanner.at;
    scanner.skipSpaces();
    String word = scanner.at > before ? scanner.word() : "";
    if (isOrdinal(word) && read.suffix().isEmpty()) {
      scanner.at += word.length();
      return spacedSide(kind, read.withSuffix(LocatorScanner.folded(word)));
    }
    scanner.at = before;
    return spacedSide(kind, read);
  }

  private LocatorNumber spacedSide(LocatorKind kind, LocatorNumber number) {
    int before = scanner.at;
    scanner.skipSpaces();
    String word = scanner.at > before ? scanner.word() : "";
    if (kind == LocatorKind.FOLIO && number.side() == Side.NONE && side(word) != Side.NONE) {
      scanner.at += word.length();
      return number.withSide(side(word));
    }
    scanner.at = before;
    return number;
  }

  private LocatorNumber attached(LocatorKind kind, LocatorNumber number) {
    if (scanner.take('*')) {
      return number.withSuffix("*");
    }
    int begin = scanner.at;
    String word = scanner.word();
    if (word.isEmpty()) {
      return number;
    }
    String small = LocatorScanner.folded(word);
    scanner.at += word.length();
    if (isOrdinal(small)) {
      return number.withSuffix(small);
    }
    if (kind == LocatorKind.FOLIO && side(small) != Side.NONE) {
      return number.withSide(side(small));
    }
    if (small.equals("ff") || small.equals("f") && scanner.peek() == '.') {
      throw scanner.error(
          begin, "\"" + word + "\" for \"following\" has no end", "give the last number: 41–43");
    }
    if (kind == LocatorKind.FOLIO && word.length() == 2 && side(small.substring(1)) != Side.NONE) {
      return number.withSuffix(word.substring(0, 1)).withSide(side(small.substring(1)));
    }
    if (word.length() == 1 && isAscii(word.charAt(0))) {
      return number.withSuffix(word);
    }
    throw scanner.error(
        begin,
        "\"" + word + "\" cannot follow a number",
        "use one letter (9a), bis, ter or quater, and list several: 9a and 9b");
  }

  static boolean isOrdinal(String word) {
    if (word.isEmpty()) {
      return false;
    }
    String small = LocatorScanner.folded(word);
    return small.equals("bis") || small.equals("ter") || small.equals("quater");
  }

  static Side side(String word) {
    return switch (LocatorScanner.folded(word)) {
      case "r", "recto", "\u02b3" -> Side.RECTO;
      case "v", "verso", "\u1d5b" -> Side.VERSO;
      default -> Side.NONE;
    };
  }

  private LocatorException notANumber(int begin) {
    return scanner.error(
        begin,
        scanner.excerpt(begin) + " is not a number",
        "write a number such as 12, xii, XII, 9a or A8; free words go in brackets, (top left)");
  }
}
