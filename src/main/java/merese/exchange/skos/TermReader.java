package merese.exchange.skos;

import java.util.Optional;

/** Reads one value as N-Triples write it (W3C, RDF 1.1 N-Triples, 2014). */
final class TermReader {
  private final String text;
  private int at;

  private TermReader(String text) {
    this.text = text;
  }

  /** Empty for what is not just one value. */
  static Optional<RdfTerm> read(String text) {
    TermReader reader = new TermReader(text);
    Optional<RdfTerm> term = reader.term();
    return reader.at == text.length() ? term : Optional.empty();
  }

  private Optional<RdfTerm> term() {
    if (text.startsWith("<")) {
      return iri().map(RdfTerm.Resource::new);
    }
    if (text.startsWith(RdfTerm.BLANK)) {
      at = text.length();
      return Optional.of(new RdfTerm.Resource(text));
    }
    Optional<String> string = text.startsWith("\"") ? until('"') : Optional.empty();
    if (string.isEmpty()) {
      return Optional.empty();
    }
    if (text.startsWith("^^<", at)) {
      at += 2;
      return iri().map(type -> new RdfTerm.Literal(string.get(), none(), Optional.of(type)));
    }
    if (text.startsWith("@", at)) {
      String tag = text.substring(at + 1);
      at = text.length();
      return Turtle.isLanguageTag(tag)
          ? Optional.of(new RdfTerm.Literal(string.get(), Optional.of(tag), none()))
          : Optional.empty();
    }
    return Optional.of(new RdfTerm.Literal(string.get(), none(), none()));
  }

  private static Optional<String> none() {
    return Optional.empty();
  }

  private Optional<String> iri() {
    return until('>').filter(Turtle::isAbsoluteIri);
  }

  /** From the mark that stands here to the one that closes, which is passed. */
  private Optional<String> until(char close) {
    StringBuilder out = new StringBuilder();
    for (int i = at + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == close) {
        at = i + 1;
        return Optional.of(out.toString());
      }
      if (c == '\\') {
        i++;
        int length = i < text.length() ? escape(i, out) : 0;
        if (length == 0) {
          return Optional.empty();
        }
        i += length - 1;
      } else {
        out.append(c);
      }
    }
    return Optional.empty();
  }

  /** The length of what follows a backslash; 0 for what may not. */
  private int escape(int from, StringBuilder out) {
    char c = text.charAt(from);
    int plain = "tbnrf\"'\\".indexOf(c);
    if (plain >= 0) {
      out.append("\t\b\n\r\f\"'\\".charAt(plain));
      return 1;
    }
    int digits = c == 'u' ? 4 : c == 'U' ? 8 : 0;
    if (digits == 0 || from + digits >= text.length()) {
      return 0;
    }
    try {
      int code = Integer.parseInt(text.substring(from + 1, from + 1 + digits), 16);
      if (!Character.isValidCodePoint(code)) {
        return 0;
      }
      out.appendCodePoint(code);
      return digits + 1;
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
