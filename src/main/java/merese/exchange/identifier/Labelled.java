package merese.exchange.identifier;

import java.util.Optional;

/**
 * A number without its label ("ISBN-13:") and without what it is the number of ("(pbk.)").
 *
 * @param number as it stands; the whole text where it holds more than these
 */
record Labelled(String number, Optional<String> qualifier) {
  static Labelled isbn(String printed) {
    String text = printed.strip();
    int start = Math.max(label(text, "ISBN"), label(text, "SBN"));
    int after = start == 0 ? 0 : skipLength(text, start);
    return of(text, start, after);
  }

  static Labelled issn(String printed) {
    String text = printed.strip();
    int medium = 0;
    if (!text.isEmpty() && "eEpP".indexOf(text.charAt(0)) >= 0) {
      medium = text.length() > 1 && Digits.isSeparator(text.charAt(1)) ? 2 : 1;
    }
    int start = label(text.substring(medium), "ISSN");
    start = start == 0 ? 0 : start + medium;
    int linking = start;
    if (start > 0 && start < text.length() && "lL".indexOf(text.charAt(start)) >= 0) {
      linking = skip(text, start + 1);
    }
    return of(text, start, linking);
  }

  private static Labelled of(String text, int... starts) {
    String rest = text;
    Optional<String> qualifier = Optional.empty();
    int bracket = text.indexOf('(');
    if (bracket > 0 && text.endsWith(")")) {
      rest = text.substring(0, bracket);
      String inside = text.substring(bracket + 1, text.length() - 1).strip();
      qualifier = inside.isEmpty() ? Optional.empty() : Optional.of(inside);
    }
    for (int i = starts.length - 1; i >= 0; i--) {
      if (starts[i] <= rest.length()) {
        String number = rest.substring(starts[i]).strip();
        if (Digits.compact(number).isPresent()) {
          return new Labelled(number, qualifier);
        }
      }
    }
    return new Labelled(text, Optional.empty());
  }

  /** Where the number starts if the text starts with a label, and 0 if it does not. */
  private static int label(String text, String label) {
    return text.regionMatches(true, 0, label, 0, label.length()) ? skip(text, label.length()) : 0;
  }

  private static int skip(String text, int from) {
    int at = from;
    while (at < text.length()
        && (Digits.isSeparator(text.charAt(at)) || ":.=".indexOf(text.charAt(at)) >= 0)) {
      at++;
    }
    return at;
  }

  /** Past the "13" of "ISBN-13: 978…", which is how many digits follow. */
  private static int skipLength(String text, int start) {
    for (String length : new String[] {"10", "13"}) {
      int end = start + length.length();
      if (text.startsWith(length, start)
          && end < text.length()
          && !Digits.isDigit(text.charAt(end))) {
        String number = text.substring(end);
        int bracket = number.indexOf('(');
        String digits = bracket < 0 ? number : number.substring(0, bracket);
        int after = skip(digits, 0);
        int expected = Integer.parseInt(length);
        if (Digits.compact(digits.substring(after)).orElse("").length() == expected) {
          return end + after;
        }
      }
    }
    return start;
  }
}
