package merese.exchange.csl;

import java.util.Optional;

/**
 * The words of a text without the mark-up that CSL-JSON allows in it (the CSL-JSON chapter of the
 * citeproc-js manual, from memory): italics, bold, raised, lowered, small capitals and "nocase".
 * Any other sign, an ampersand or a "&lt;" among them, stands for itself.
 */
final class PlainWords {
  private static final String[] TAGS = {
    "<i>", "</i>", "<b>", "</b>", "<sup>", "</sup>", "<sub>", "</sub>", "<sc>", "</sc>"
  };

  private PlainWords() {}

  /** On one line, without control characters; empty where nothing is left. */
  static Optional<String> of(Optional<Json> value) {
    return value.flatMap(Json::asText).map(PlainWords::of).filter(words -> !words.isEmpty());
  }

  static String of(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    int spans = 0;
    for (int i = 0; i < text.length(); ) {
      int tag = text.charAt(i) == '<' ? tagLength(text, i) : 0;
      boolean closesSpan = tag == 0 && spans > 0 && text.startsWith("</span>", i);
      if (tag > 0 || closesSpan) {
        spans += closesSpan ? -1 : text.startsWith("<span", i) ? 1 : 0;
        i += closesSpan ? "</span>".length() : tag;
        continue;
      }
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (Character.isWhitespace(c) || c == 0x85) {
        if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
          out.append(' ');
        }
      } else if (Character.getType(c) == Character.SURROGATE) {
        out.append('\uFFFD');
      } else if (!Character.isISOControl(c)) {
        out.appendCodePoint(c);
      }
    }
    return out.toString().strip();
  }

  /** Whether nothing is to be done, which is usual; asked first since it is quick. */
  private static boolean isPlain(String text) {
    boolean spaced = true; // so that no space is the first
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ' ') {
        if (spaced) {
          return false;
        }
        spaced = true;
      } else if (c > ' ' && c < 0x7F && c != '<' || isLetterBeyondAscii(c)) {
        spaced = false;
      } else {
        return false;
      }
    }
    return !spaced || text.isEmpty();
  }

  private static boolean isLetterBeyondAscii(char c) {
    boolean latin = c >= 0xC0 && c <= 0x24F && c != 0xD7 && c != 0xF7; // all but two are letters
    return latin || c > 0x24F && Character.isLetter(c);
  }

  private static int tagLength(String text, int at) {
    for (String tag : TAGS) {
      if (text.startsWith(tag, at)) {
        return tag.length();
      }
    }
    if (text.startsWith("<span", at)) {
      int end = text.indexOf('>', at);
      boolean styled =
          end > 0 && (isOwn(text, at, end, "class=\"") || isOwn(text, at, end, "style=\""));
      return styled ? end - at + 1 : 0;
    }
    return 0;
  }

  private static boolean isOwn(String text, int at, int end, String attribute) {
    return end - at < 100 && text.startsWith(" " + attribute, at + "<span".length());
  }
}
