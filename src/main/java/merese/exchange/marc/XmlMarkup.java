package merese.exchange.marc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Finds where the tags, comments and the like of XML end, in well-formed text and in broken. */
final class XmlMarkup {
  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_TAG = 100_000;

  private final Window window;

  /** For comments, CDATA and instructions: up to where in the stream none ends. */
  private final long[] endless = new long[3];

  /** For the same: where in the stream the next one ends. */
  private final long[] closing = {-1, -1, -1};

  XmlMarkup(Window window) {
    this.window = window;
  }

  /** The name after a mark, with its prefix; "" where there is none. */
  String name(int from) throws IOException {
    int to = from;
    while (to < from + LONGEST_NAME && isOfName(window.at(to))) {
      to++;
    }
    return new String(window.copy(from, to), StandardCharsets.ISO_8859_1);
  }

  private static boolean isOfName(int c) {
    return c > ' ' && c != '>' && c != '/' && c != '<' && c != '=';
  }

  /** Whether a name, after its prefix, is this one. */
  boolean isNamed(int from, String local) throws IOException {
    int at = from;
    int start = from;
    while (at < from + LONGEST_NAME && isOfName(window.at(at))) {
      if (window.at(at) == ':') {
        start = at + 1;
      }
      at++;
    }
    return at - start == local.length() && window.is(start, local);
  }

  /**
   * After a tag: its ">" outside quotation marks, or before the next "<", which no tag may hold.
   */
  int endOfTag(int tag) throws IOException {
    int quote = 0;
    int at = tag + 1;
    while (at < tag + LONGEST_TAG) {
      int c = window.at(at);
      if (c < 0 || c == '<') {
        return at;
      }
      if (quote == 0 && c == '>') {
        return at + 1;
      }
      if (c == '"' || c == '\'') {
        quote = quote == 0 ? c : quote == c ? 0 : quote;
      }
      at++;
    }
    return at;
  }

  String text(int from, int to) {
    return new String(window.copy(from, to), StandardCharsets.ISO_8859_1);
  }

  boolean isDoctype(int tag) throws IOException {
    return window.is(tag, "<!DOCTYPE");
  }

  /**
   * After a comment, a CDATA section or an instruction; after its first mark where it is broken.
   *
   * <p>It may hold the end of a record, as text. It is taken to be broken where another of its kind
   * starts in it after such an end: its own end is lost, and that of a later one was found (a
   * comment holds no other, XML 1.0, section 2.5).
   */
  int endOfOther(int tag) throws IOException {
    if (window.is(tag, "<!--")) {
      return endOfOther(0, tag, "<!--", "-->");
    }
    if (window.is(tag, "<![CDATA[")) {
      return endOfOther(1, tag, "<![CDATA[", "]]>");
    }
    return window.at(tag + 1) == '?' ? endOfOther(2, tag, "<?", "?>") : tag + 1;
  }

  private int endOfOther(int kind, int tag, String open, String close) throws IOException {
    int end = after(kind, tag, open.length(), close);
    boolean holdsEnd = false;
    int at = window.find('<', tag + 1, end);
    while (at >= 0) {
      if (window.is(at, open)) {
        return holdsEnd ? tag + 1 : at;
      }
      holdsEnd |= window.at(at + 1) == '/' && isNamed(at + 2, "record");
      at = window.find('<', at + 1, end);
    }
    return end;
  }

  private int after(int kind, int tag, int length, String close) throws IOException {
    int limit = tag + XmlPieces.LIMIT;
    int from = tag + length;
    long known = closing[kind] - window.passed();
    if (known >= from) {
      return known < limit ? (int) known + close.length() : tag + 1;
    }
    int at = (int) Math.max(from, Math.min(limit, endless[kind] - window.passed()));
    while (at < limit) {
      at = window.find(close.charAt(0), at, limit);
      if (at < 0) {
        break;
      }
      if (window.is(at, close)) {
        closing[kind] = window.passed() + at;
        return at + close.length();
      }
      at++;
    }
    endless[kind] = window.passed() + window.available(limit) - close.length();
    return tag + 1;
  }

  /** After a declaration of a document type; with what stands in its brackets. */
  int endOfDoctype(int tag) throws IOException {
    int depth = 0;
    int quote = 0;
    int at = tag + 1;
    while (at < tag + XmlPieces.LIMIT) {
      int c = window.at(at);
      if (c < 0) {
        return tag + 1;
      }
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '[' || c == '<') {
        depth++;
      } else if (c == ']') {
        depth--;
      } else if (c == '>') {
        if (depth <= 0) {
          return at + 1;
        }
        depth--;
      }
      at++;
    }
    return tag + 1;
  }
}
