package merese.model;

/** Tells what is meant for a place from other words. */
final class LocatorBeginning {
  private LocatorBeginning() {}

  static boolean isIn(String text) {
    LocatorScanner scanner = new LocatorScanner(text);
    LocatorLabels.Match label = LocatorLabels.at(scanner, 0);
    int after = label == null ? 0 : label.end();
    while (after < text.length() && LocatorScanner.isSpace(text.charAt(after))) {
      after++;
    }
    if (label != null) {
      return after == text.length() || isNumber(scanner, after);
    }
    return isNumbers(text);
  }

  private static boolean isNumber(LocatorScanner scanner, int at) {
    return LocatorScanner.isDigit(scanner.text.charAt(at))
        || scanner.text.charAt(at) == '['
        || RomanNumeral.value(scanner.wordAt(at)) > 0;
  }

  /** Digits, and what may stand between them. */
  private static boolean isNumbers(String text) {
    boolean digits = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      digits |= LocatorScanner.isDigit(c);
      if (!LocatorScanner.isDigit(c)
          && !LocatorScanner.isSpace(c)
          && !LocatorScanner.isDash(c)
          && ",;:".indexOf(c) < 0) {
        return false;
      }
    }
    return digits;
  }
}
