package merese.exchange.bibtex;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * Writes the entries of a .bib file one by one, with an empty line between two. Lines end in a line
 * feed. Whatever a record holds, what is written is one entry to BibTeX.
 */
final class BibFile {
  private static final Pattern TYPE = Pattern.compile("[A-Za-z][A-Za-z0-9_:+-]{0,99}");
  private static final Set<String> NO_ENTRIES = Set.of("comment", "preamble", "string");

  private final Writer out;
  private boolean begun;

  BibFile(Writer out) {
    this.out = out;
  }

  void entry(String key, ReceivedRecord entry) throws IOException {
    begin(type(entry.type()), key);
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

  /**
   * As it is kept, unless somebody has written braces into it that do not match. It is one line,
   * since one that starts with {@code @} could be taken for an entry.
   */
  private static String written(String value) {
    String stored = value.replace('\n', ' ').replace('\r', ' ');
    boolean safe = StoredValue.isExpression(stored) || isBalanced(stored);
    return safe ? StoredValue.written(stored) : "{" + LatexText.of(stored, stored.length()) + "}";
  }

  private static boolean isBalanced(String text) {
    int depth = 0;
    for (int i = 0; i < text.length() && depth >= 0; i++) {
      char c = text.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
    }
    return depth == 0;
  }

  /** That of the record where every reader takes it for one of an entry. */
  private static String type(String type) {
    boolean usable = TYPE.matcher(type).matches();
    return usable && !NO_ENTRIES.contains(type.toLowerCase(Locale.ROOT)) ? type : "misc";
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
