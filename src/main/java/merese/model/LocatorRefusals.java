package merese.model;

/** What is said about a text that does not start anything a locator can have. */
final class LocatorRefusals {
  private static final int QUOTED_AT_MOST = 20;

  private final LocatorScanner scanner;

  LocatorRefusals(LocatorScanner scanner) {
    this.scanner = scanner;
  }

  LocatorException bareNumber(int begin) {
    int end = begin;
    while (end < scanner.text.length() && ",;(".indexOf(scanner.text.charAt(end)) < 0) {
      end++;
    }
    String number = scanner.text.substring(begin, Math.min(end, begin + QUOTED_AT_MOST)).strip();
    boolean roman = Character.isUpperCase(number.charAt(0));
    boolean one = number.chars().allMatch(Character::isLetterOrDigit);
    String page =
        "write \"" + (one ? "p. " : "pp. ") + number + "\" for a page, or pl., fig., lot …";
    String volume = "write \"vol. " + number + "\" or \"pl. " + number + "\", or \"II, p. 13\"";
    return scanner.error(
        begin, "\"" + number + "\" does not say what it counts", roman ? volume : page);
  }

  LocatorException unexpected(int begin) {
    String word = LocatorScanner.folded(scanner.wordAt(begin));
    if (word.equals("ff") || word.equals("f")) {
      return scanner.error(
          begin,
          "\"" + word + ".\" may mean folios or \"following\"",
          "write \"fols 12–13\", or give the last number, \"pp. 41–43\"");
    }
    String remedy =
        scanner.text.startsWith(".", begin)
            ? "leave the full stop out"
            : "use a label (p., pl., fig., cat. no., lot, fol. …) and put free words in brackets,"
                + " as in \"fig. 3 (top left)\"";
    return scanner.error(begin, scanner.excerpt(begin) + " is not understood here", remedy);
  }
}
