package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A date in words as single words in lower case. What may stand anywhere and says nothing ("the",
 * "of", quotation marks, full stops) is left out; a dash between two dates is "–", between words it
 * is left out.
 */
final class DateTokens {
  static final String DASH = "–";

  private static final Set<String> SILENT = Set.of("the", "of", "year", "years", "ad");

  private final String text;
  private final List<String> tokens = new ArrayList<>();
  private int at;

  private DateTokens(String text) {
    this.text = text;
  }

  static List<String> of(String words) {
    DateTokens reader = new DateTokens(words.strip().toLowerCase(Locale.ROOT));
    while (reader.at < reader.text.length()) {
      reader.next();
    }
    return reader.tokens;
  }

  private void next() {
    char c = text.charAt(at);
    if (Character.isLetter(c)) {
      word(false);
    } else if (isDigit(c)) {
      word(true);
    } else if (c == '–' || c == '—' || c == '−') {
      tokens.add(DASH);
      at++;
    } else if (c == '-' || c == '\u2010' || c == '\u2011') {
      hyphen();
    } else {
      if (isTold(c)) {
        tokens.add(String.valueOf(c));
      }
      at++;
    }
  }

  /** Punctuation that is not merely passed over. */
  private static boolean isTold(char c) {
    return !Character.isWhitespace(c) && !Character.isSpaceChar(c) && ".\"“”‘’[]()".indexOf(c) < 0;
  }

  /** Letters, or digits with the letters after them: "1790s", "18th". */
  private void word(boolean number) {
    StringBuilder word = new StringBuilder();
    while (at < text.length() && number && isDigit(text.charAt(at))) {
      word.append(text.charAt(at++));
    }
    if (number && at + 1 < text.length() && "'’".indexOf(text.charAt(at)) >= 0) {
      at += text.charAt(at + 1) == 's' ? 1 : 0; // 1790's
    }
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      word.append(text.charAt(at++));
    }
    if (!SILENT.contains(word.toString())) {
      tokens.add(word.toString());
    }
  }

  /** A hyphen that stands for "to" has a number on both sides, as in 1790-1810 and 18th-19th. */
  private void hyphen() {
    boolean numbered = !tokens.isEmpty() && isDigit(tokens.get(tokens.size() - 1).charAt(0));
    boolean spaced = at > 0 && text.charAt(at - 1) == ' ';
    at++;
    spaced = spaced && at < text.length() && text.charAt(at) == ' ';
    int next = at;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    if (spaced || numbered && next < text.length() && isDigit(text.charAt(next))) {
      tokens.add(DASH);
    }
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
