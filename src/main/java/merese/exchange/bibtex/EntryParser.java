package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import merese.exchange.bibtex.StoredValue.Piece;

/**
 * Reads the text of one entry, by the grammar of BibTeX (bibtex.web 0.99d, "Reading the database
 * file(s)"), and past the comments that Biber allows between its fields.
 *
 * <p>It is our own, though jbibtex is at hand, since jbibtex keeps only the last of several fields
 * of one name, drops a comma at the start of a line of a value, opens the file that an {@code
 * include} names, and stops at a name that no string defines.
 */
final class EntryParser {
  /** No entry has more fields. */
  static final int MOST_FIELDS = 5000;

  /** The end of a value and the next field, inside a value. */
  private static final Pattern RUNS_ON =
      Pattern.compile("[}\"],[ \\t]*+[\\r\\n]\\s*+[\\w-]++\\s*+=");

  private final String text;
  private int at;
  private char close;
  private int lastValue;
  private String lastField = "";

  /**
   * An entry as it stands.
   *
   * @param type in lower case
   * @param key empty for a string and for a preamble
   * @param fields a preamble has one, without a name
   */
  record Parsed(String type, String key, List<Assigned> fields) {}

  /**
   * A field or string.
   *
   * @param name in lower case
   */
  record Assigned(String name, List<Piece> value) {}

  private EntryParser(String text) {
    this.text = text;
  }

  static Parsed parse(String text) throws BibtexFault {
    return new EntryParser(text).parse();
  }

  private Parsed parse() throws BibtexFault {
    at = 1;
    pastSpace();
    int typeStart = at;
    while (at < text.length() && StoredValue.isNamePart(text.charAt(at))) {
      at++;
    }
    String type = text.substring(typeStart, at).toLowerCase(Locale.ROOT);
    pastSpace();
    if (peek() != '{' && peek() != '(') {
      throw new BibtexFault(
          at, "no brace after @" + type, "write the entry as @" + type + "{key, field = {value}}");
    }
    close = peek() == '{' ? '}' : ')';
    int open = at++;
    pastSpace();
    Parsed parsed =
        switch (type) {
          case "string" -> new Parsed(type, "", List.of(assigned(open)));
          case "preamble" -> new Parsed(type, "", List.of(new Assigned("", value(open, type))));
          default -> entry(type, open);
        };
    pastSpaceAndComments();
    if (peek() != close) {
      throw atEnd() ? unclosed(open) : fault("nothing more was expected", "take it out");
    }
    at++;
    pastSpace();
    if (at < text.length()) {
      throw new BibtexFault(
          at - 1,
          "a brace closes the entry before its other fields",
          "take out the brace that is too many before it");
    }
    return parsed;
  }

  private Parsed entry(String type, int open) throws BibtexFault {
    int keyStart = at;
    while (at < text.length() && !endsKey(text.charAt(at))) {
      at++;
    }
    String key = text.substring(keyStart, at);
    pastSpace();
    if (key.isEmpty() || key.indexOf('=') >= 0 || peek() == '=') {
      throw atEnd()
          ? unclosed(open)
          : new BibtexFault(
              keyStart, "the entry has no key", "write a key and a comma after @" + type + "{");
    }
    List<Assigned> fields = new ArrayList<>();
    while (peek() != close) {
      if (peek() != ',') {
        throw missingComma(fields.isEmpty() ? "the key" : lastField(fields), open);
      }
      at++;
      pastSpaceAndComments();
      if (peek() == close) {
        break;
      }
      if (fields.size() == MOST_FIELDS) {
        throw fault(
            "the entry has more than " + MOST_FIELDS + " fields", "make it several entries");
      }
      fields.add(assigned(open));
      pastSpaceAndComments();
    }
    return new Parsed(type, key, fields);
  }

  private boolean endsKey(char c) {
    return StoredValue.isSpace(c) || c == ',' || c == close && c == '}';
  }

  private static String lastField(List<Assigned> fields) {
    return "field " + fields.get(fields.size() - 1).name();
  }

  private BibtexFault missingComma(String after, int open) {
    return atEnd()
        ? unclosed(open)
        : peek() == '}' || peek() == ')'
            ? fault("\"" + peek() + "\" closes what was not opened", "take it out")
            : fault("no comma after " + after, "write a comma before this");
  }

  private Assigned assigned(int open) throws BibtexFault {
    int start = at;
    while (at < text.length() && StoredValue.isNamePart(text.charAt(at))) {
      at++;
    }
    String name = text.substring(start, at).toLowerCase(Locale.ROOT);
    if (name.isEmpty() || isDigit(name.charAt(0))) {
      at = start;
      throw atEnd()
          ? unclosed(open)
          : fault(
              "the name of a field was expected where \"" + glimpse() + "\" stands",
              "write name = {value}, or take out a comma or brace too many");
    }
    pastSpaceAndComments();
    if (peek() != '=') {
      throw atEnd()
          ? unclosed(open)
          : fault("no equals sign after field " + name, "write " + name + " = {value}");
    }
    at++;
    pastSpaceAndComments();
    lastValue = at;
    lastField = name;
    return new Assigned(name, value(open, "field " + name));
  }

  private List<Piece> value(int open, String of) throws BibtexFault {
    List<Piece> pieces = new ArrayList<>(1);
    while (true) {
      pastSpaceAndComments();
      pieces.add(piece(open, of));
      pastSpaceAndComments();
      if (peek() != '#') {
        return pieces;
      }
      at++;
    }
  }

  private Piece piece(int open, String of) throws BibtexFault {
    char c = peek();
    int start = at;
    if (c == '{' || c == '"') {
      at++;
      pastText(start, c == '{' ? '}' : '"', of);
      return Piece.text(text.substring(start + 1, at - 1));
    }
    boolean number = isDigit(c);
    while (at < text.length() && (number ? isDigit(peek()) : StoredValue.isNamePart(peek()))) {
      at++;
    }
    if (at == start) {
      throw atEnd() ? unclosed(open) : fault(of + " has no value", "write the value in braces");
    }
    if (number && at < text.length() && StoredValue.isNamePart(peek())) {
      at = start;
      throw fault(
          of + " has the value " + glimpse() + ", which is no number", "write the value in braces");
    }
    return new Piece(!number, text.substring(start, at));
  }

  /** To after the brace or quotation mark that ends a text. */
  private void pastText(int start, char end, String of) throws BibtexFault {
    int depth = 0;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == end && depth == 0) {
        at++;
        return;
      }
      if (c == '{') {
        depth++;
      } else if (c == '}' && --depth < 0) {
        throw fault(
            "a brace is closed in " + of + " that was not opened",
            "open it, take it out, or close the quotation mark before it");
      }
    }
    throw new BibtexFault(
        start,
        (end == '}' ? "the brace" : "the quotation mark")
            + " that opens "
            + of
            + " is never closed",
        end == '}' ? "close it" : "close it, or a brace that is opened after it");
  }

  private boolean atEnd() {
    return at >= text.length();
  }

  private BibtexFault unclosed(int open) {
    if (RUNS_ON.matcher(text.substring(lastValue)).find()) {
      return new BibtexFault(
          lastValue,
          "field " + lastField + " runs on into the next, since a brace in it is never closed",
          "close it");
    }
    return new BibtexFault(
        open, "the brace that opens the entry is never closed", "close it after its last field");
  }

  private BibtexFault fault(String what, String remedy) {
    return new BibtexFault(at, what, remedy);
  }

  private String glimpse() {
    int end = at;
    while (end < text.length() && end - at < 20 && !StoredValue.isSpace(text.charAt(end))) {
      end++;
    }
    return text.substring(at, end);
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private void pastSpace() {
    while (at < text.length() && StoredValue.isSpace(text.charAt(at))) {
      at++;
    }
  }

  private void pastSpaceAndComments() {
    pastSpace();
    while (peek() == '%') {
      while (at < text.length() && peek() != '\n' && peek() != '\r') {
        at++;
      }
      pastSpace();
    }
  }
}
