package merese.exchange.skos;

import java.util.HexFormat;

/** Texts and addresses as Turtle and N-Triples write them (W3C, RDF 1.1 Turtle, 2014). */
final class Turtle {
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private Turtle() {}

  /** A text between quotation marks, on one line. */
  static String string(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < ' ' || c == 0x7F || isLoneSurrogate(text, i)) {
            // RDF has no half of a character: what is not one is printed as U+FFFD.
            out.append(isLoneSurrogate(text, i) ? "\uFFFD" : "\\u" + HEX.toHexDigits(c));
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"').toString();
  }

  /** An address with what may not stand between angle brackets written as its number. */
  static String iri(String iri) {
    StringBuilder out = new StringBuilder(iri.length());
    for (int i = 0; i < iri.length(); i++) {
      char c = iri.charAt(i);
      if (isOfAnIri(c)) {
        out.append(c);
      } else {
        out.append("\\u").append(HEX.toHexDigits(c));
      }
    }
    return out.toString();
  }

  /** Whether a text can stand between angle brackets and begins with a scheme. */
  static boolean isAbsoluteIri(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!isOfAnIri(text.charAt(i)) || isLoneSurrogate(text, i)) {
        return false;
      }
    }
    int colon = text.indexOf(':');
    if (colon < 1 || colon == text.length() - 1 || !isLetter(text.charAt(0))) {
      return false;
    }
    for (int i = 1; i < colon; i++) {
      char c = text.charAt(i);
      if (!isLetter(c) && !isDigit(c) && c != '+' && c != '-' && c != '.') {
        return false;
      }
    }
    return true;
  }

  /** Whether a text is a language tag by its form (Turtle, rule LANGTAG). */
  static boolean isLanguageTag(String tag) {
    int part = 0;
    boolean first = true;
    for (int i = 0; i < tag.length(); i++) {
      char c = tag.charAt(i);
      if (c == '-' && part > 0) {
        part = 0;
        first = false;
      } else if (isLetter(c) || (!first && isDigit(c))) {
        part++;
      } else {
        return false;
      }
      if (part > 8) {
        return false;
      }
    }
    return part > 0;
  }

  /** Whether a text can stand after a prefix as it is; some that could are said not to. */
  static boolean isLocalName(String text) {
    if (text.isEmpty() || text.endsWith(".") || text.startsWith("-") || text.startsWith(".")) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!isLetter(c) && !isDigit(c) && c != '-' && c != '_' && c != '.') {
        return false;
      }
    }
    return true;
  }

  static boolean isLoneSurrogate(String text, int at) {
    char c = text.charAt(at);
    if (Character.isHighSurrogate(c)) {
      return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
    }
    return Character.isLowSurrogate(c)
        && (at == 0 || !Character.isHighSurrogate(text.charAt(at - 1)));
  }

  private static boolean isOfAnIri(char c) {
    return c > ' ' && "<>\"{}|^`\\".indexOf(c) < 0 && c != 0x7F;
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
