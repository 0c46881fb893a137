package merese.vocabulary;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes one word of the spellings that count as one: whatever the case, accents, hyphen or space,
 * apostrophe ("ship's", "ships"), number, "ringed" or "ring", British or American spelling
 * (mould/mold, centre/center, colour/color, disc/disk).
 *
 * <p>The folded form is for comparing only; it is no English and is never printed. The number is
 * taken off by the S-stemmer of Donna Harman, "How effective is suffixing?", Journal of the
 * American Society for Information Science 42 (1991), 7–15. The result does not depend on the
 * default locale.
 */
public final class Folding {
  private static final String APOSTROPHES = "'`\u2019\u2018\u02BC\u201B\u2032\u00B4\uFF07";

  /** The first character beyond, where tables have to be asked. */
  private static final int ASCII = 0x80;

  private static final char FIRST_ACCENTED = '\u00C0';

  /**
   * What the letters from {@link #FIRST_ACCENTED} on are without case and accents; a space where
   * the tables have to be asked, which cost a start some 5 ms.
   */
  private static final String UNACCENTED =
      "aaaaaa ceeeeiiii nooooo  uuuuy  aaaaaa ceeeeiiii nooooo  uuuuy y"
          + "aaaaaaccccccccdd  eeeeeeeeeegggggggghh  iiiiiiiii   jjkk lllllll"
          + "l  nnnnnn   oooooo  rrrrrrsssssssstttt  uuuuuuuuuuuuwwyyyzzzzzzs";

  private Folding() {}

  /** Takes the words of a text in their order. */
  public interface Sink {
    /**
     * One word.
     *
     * @param folded never empty
     * @param start where the printed word begins in the text
     * @param end where it ends, exclusive
     */
    void word(String folded, int start, int end);
  }

  /** Hands each word of a text to {@code sink}, with its place, so that a tokenizer can wrap it. */
  public static void scan(CharSequence text, Sink sink) {
    StringBuilder word = new StringBuilder();
    int start = 0;
    int end = 0;
    int next;
    for (int i = 0; i < text.length(); i = next) {
      int c = Character.codePointAt(text, i);
      next = i + Character.charCount(c);
      if (isLetterOrDigit(c)) {
        if (word.length() == 0) {
          start = i;
        }
        appendFolded(c, word);
        end = next;
      } else if (breaksWord(c)) {
        emit(word, start, end, sink);
      }
    }
    emit(word, start, end, sink);
  }

  /** The folded words of a text in their order. */
  public static List<String> words(String text) {
    Collector words = new Collector();
    scan(text, words);
    return words.list;
  }

  /** The folded words of a text with a space between: equal for texts that count as the same. */
  public static String key(String text) {
    return join(words(text));
  }

  /**
   * The folded form of a token that is one word already; whatever is neither letter nor digit is
   * dropped. Empty where nothing is left.
   */
  public static String word(CharSequence token) {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < token.length(); ) {
      int c = Character.codePointAt(token, i);
      if (isLetterOrDigit(c)) {
        appendFolded(c, word);
      }
      i += Character.charCount(c);
    }
    return finish(word);
  }

  /** Folded words as a key. */
  static String join(List<String> words) {
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      if (i > 0) {
        key.append(' ');
      }
      key.append(words.get(i));
    }
    return key.toString();
  }

  private static void emit(StringBuilder word, int start, int end, Sink sink) {
    if (word.length() > 0) {
      String folded = finish(word);
      word.setLength(0);
      sink.word(folded, start, end);
    }
  }

  /** As {@link Character#isLetterOrDigit(int)}, which asks its tables for each letter. */
  private static boolean isLetterOrDigit(int c) {
    if (c >= ASCII) {
      return Character.isLetterOrDigit(c);
    }
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  }

  static boolean breaksWord(int c) {
    if (c < ASCII) {
      return APOSTROPHES.indexOf(c) < 0;
    }
    int type = Character.getType(c);
    return APOSTROPHES.indexOf(c) < 0
        && type != Character.NON_SPACING_MARK
        && type != Character.COMBINING_SPACING_MARK
        && type != Character.ENCLOSING_MARK
        && type != Character.FORMAT;
  }

  /** Adds a letter or digit, without case and accents. */
  static void appendFolded(int c, StringBuilder word) {
    if (c < ASCII) {
      word.append((char) (c >= 'A' && c <= 'Z' ? c + 32 : c));
      return;
    }
    String letters = withoutDecomposition(c);
    if (letters != null) {
      word.append(letters);
      return;
    }
    int row = c - FIRST_ACCENTED;
    if (row >= 0 && row < UNACCENTED.length() && UNACCENTED.charAt(row) != ' ') {
      word.append(UNACCENTED.charAt(row));
      return;
    }
    String parts = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD);
    for (int i = 0; i < parts.length(); ) {
      int part = parts.codePointAt(i);
      if (Character.isLetterOrDigit(part)) {
        word.appendCodePoint(Character.toLowerCase(part));
      }
      i += Character.charCount(part);
    }
  }

  /** Letters whose mark Unicode does not take apart, as English catalogues file them. */
  private static String withoutDecomposition(int c) {
    switch (c) {
      case 'ß':
      case 'ẞ':
        return "ss";
      case 'æ':
      case 'Æ':
        return "ae";
      case 'œ':
      case 'Œ':
        return "oe";
      case 'ø':
      case 'Ø':
        return "o";
      case 'đ':
      case 'Đ':
      case 'ð':
      case 'Ð':
        return "d";
      case 'þ':
      case 'Þ':
        return "th";
      case 'ł':
      case 'Ł':
        return "l";
      case 'ı':
        return "i";
      default:
        return null;
    }
  }

  /** Makes the folded form of a word's letters. */
  static String finish(StringBuilder word) {
    takeOffNumber(word);
    if (isExactly(word, "ringed")) {
      return "ring";
    }
    if (isExactly(word, "disc")) {
      return "disk";
    }
    replace(word, "mould", "mold");
    replace(word, "colour", "color");
    if (word.indexOf("centr") >= 0) {
      replace(word, "centred", "centered");
      replace(word, "centring", "centering");
      replace(word, "centre", "center");
    }
    return word.toString();
  }

  /** Harman's three rules; only the first whose ending fits is tried. */
  static void takeOffNumber(StringBuilder word) {
    int length = word.length();
    if (length < 3 || word.charAt(length - 1) != 's') {
      return;
    }
    char second = word.charAt(length - 2);
    char third = word.charAt(length - 3);
    if (second == 'e' && third == 'i') {
      if (length > 3 && word.charAt(length - 4) != 'e' && word.charAt(length - 4) != 'a') {
        word.setLength(length - 3);
        word.append('y');
      }
    } else if (second == 'e') {
      if (third != 'a' && third != 'e' && third != 'o') {
        word.setLength(length - 1);
      }
    } else if (second != 'u' && second != 's') {
      word.setLength(length - 1);
    }
  }

  private static boolean isExactly(StringBuilder word, String other) {
    return word.length() == other.length() && word.indexOf(other) == 0;
  }

  private static void replace(StringBuilder word, String british, String american) {
    int at = word.indexOf(british);
    while (at >= 0) {
      word.replace(at, at + british.length(), american);
      at = word.indexOf(british, at + american.length());
    }
  }

  private static final class Collector implements Sink {
    private final List<String> list = new ArrayList<>();

    @Override
    public void word(String folded, int start, int end) {
      list.add(folded);
    }
  }
}
