package merese.exchange.bibtex;

import java.io.IOException;
import java.io.Writer;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * Writes the entries of a .bib file one by one, with an empty line between two. Lines end in a line
 * feed. Whatever a record holds, what is written is one entry to BibTeX.
 */
final class BibFile {
  private final Writer out;
  private boolean begun;

  BibFile(Writer out) {
    this.out = out;
  }

  void entry(String key, ReceivedRecord entry) throws IOException {
    begin(name(entry.type(), "misc"), key);
    for (Field field : entry.fields()) {
      field(name(field.name(), "field"), written(field.value()));
    }
    out.write("\n}\n");
  }

  void preamble(String value) throws IOException {
    separate();
    out.write("@preamble{" + written(value) + "}\n");
  }

  private void begin(String type, String key) throws IOException {
    separate();
    out.write("@" + type + "{" + key);
  }

  private void separate() throws IOException {
    if (begun) {
      out.write("\n");
    }
    begun = true;
  }

  private void field(String name, String written) throws IOException {
    out.write(",\n  " + name + " = " + written);
  }

  /** As it is kept, unless somebody has written braces into it that do not match. */
  private static String written(String stored) {
    String written = StoredValue.written(stored);
    return isBalanced(written) ? written : "{" + LatexText.of(stored, stored.length()) + "}";
  }

  private static boolean isBalanced(String written) {
    int depth = 0;
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (depth < 0
          || depth == 0 && c == '}' && i < written.length() - 1 && !joins(written, i + 1)) {
        return false;
      }
    }
    return depth == 0;
  }

  private static boolean joins(String written, int at) {
    return written.startsWith(" # ", at);
  }

  private static String name(String name, String otherwise) {
    StringBuilder valid = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean leadingDigit = valid.isEmpty() && c >= '0' && c <= '9';
      if (StoredValue.isNamePart(c) && !leadingDigit && c > ' ') {
        valid.append(c);
      }
    }
    return valid.isEmpty() ? otherwise : valid.toString();
  }
}
