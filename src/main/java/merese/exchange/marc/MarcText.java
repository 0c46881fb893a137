package merese.exchange.marc;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/**
 * Text of subfields without the punctuation that ISBD puts between them (International Standard
 * Bibliographic Description, consolidated edition, section A.3; from memory).
 */
final class MarcText {
  /** Words that keep their full stop at an end (AACR2, appendix B, and ISBD usage; from memory). */
  private static final Set<String> ABBREVIATIONS =
      Set.of(
          "abt", "al", "approx", "assn", "aufl", "ave", "bd", "bde", "bros", "ca", "ch", "cie",
          "cm", "co", "col", "comp", "corp", "dept", "diss", "div", "dr", "ed", "éd", "eds", "edn",
          "enl", "esq", "etc", "facsim", "fasc", "fig", "figs", "fl", "fol", "front", "geb", "ges",
          "hon", "hrsg", "ill", "illus", "impr", "inc", "incl", "inst", "introd", "jg", "jr", "kg",
          "ltd", "min", "misc", "mr", "mrs", "ms", "mss", "mt", "nachf", "no", "nos", "nr", "op",
          "orig", "pbk", "ph", "phil", "pl", "pp", "pr", "pref", "print", "prof", "pseud", "pt",
          "pts", "pub", "publ", "rev", "sen", "ser", "soc", "sr", "st", "suppl", "trans", "uitg",
          "univ", "unpag", "verb", "verm", "vol", "vols", "überarb", "erw");

  private MarcText() {}

  /**
   * Unicode's composed form, runs of white space as one space, without the marks round words that
   * are not filed (U+0088, U+0089, U+0098, U+009C).
   */
  static String tidy(String text) {
    String composed = isPlain(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFC);
    StringBuilder out = new StringBuilder(composed.length());
    boolean space = false;
    for (int i = 0; i < composed.length(); i++) {
      char c = composed.charAt(i);
      if (c == ' ' || Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        space = !out.isEmpty();
      } else if (c >= 0x20 && (c < 0x7f || c > 0x9f)) {
        if (space) {
          out.append(' ');
          space = false;
        }
        out.append(c);
      }
    }
    return out.toString();
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 0x7f) {
        return false;
      }
    }
    return true;
  }

  /** Without the mark that leads on to the next subfield, or the full stop that closes a field. */
  static String bare(String text, boolean punctuated) {
    String bare = withoutMark(text);
    boolean marked = bare.length() < text.length();
    return punctuated && !marked ? withoutStop(bare) : bare;
  }

  private static String withoutMark(String text) {
    int end = text.length();
    if (end == 0) {
      return text;
    }
    boolean spaced = end > 1 && text.charAt(end - 2) == ' ';
    boolean mark =
        switch (text.charAt(end - 1)) {
          case ',', ';', ':' -> true;
          case '/', '=', '+' -> spaced;
          default -> false;
        };
    return mark ? text.substring(0, end - 1).strip() : text;
  }

  /** Without a full stop at the end, unless it belongs to an abbreviation or an initial. */
  static String withoutStop(String text) {
    if (!text.endsWith(".") || text.endsWith("...")) {
      return text;
    }
    String before = text.substring(0, text.length() - 1);
    if (before.endsWith(".")) {
      return before;
    }
    int start = before.length();
    while (start > 0 && isOfWord(before.charAt(start - 1))) {
      start--;
    }
    String word = before.substring(start);
    boolean initial = word.length() == 1 && Character.isLetter(word.charAt(0));
    boolean dotted = word.indexOf('.') >= 0;
    return initial || dotted || ABBREVIATIONS.contains(word.toLowerCase(Locale.ROOT))
        ? text
        : before.strip();
  }

  private static boolean isOfWord(char c) {
    return Character.isLetterOrDigit(c) || c == '.';
  }

  /** Without a square bracket at its start or end whose partner stands in another subfield. */
  static String withPairedBrackets(String text) {
    boolean opens = text.startsWith("[") && text.indexOf(']') < 0;
    boolean closes = text.endsWith("]") && text.indexOf('[') < 0;
    return opens
        ? text.substring(1).strip()
        : closes ? text.substring(0, text.length() - 1).strip() : text;
  }

  /** For comparing titles: letters and digits alone, in lower case. */
  static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    String bare = Normalizer.normalize(text, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    bare.codePoints().filter(Character::isLetterOrDigit).forEach(folded::appendCodePoint);
    return folded.toString();
  }
}
