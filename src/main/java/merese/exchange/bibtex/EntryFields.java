package merese.exchange.bibtex;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** An entry's fields, its own and those it inherits, as text. */
final class EntryFields {
  private final Map<String, String> stored;
  private final Map<String, Optional<String>> plain = new HashMap<>();

  EntryFields(Map<String, String> stored) {
    this.stored = stored;
  }

  /** The first of these fields that says something, as LaTeX. */
  Optional<String> latex(String... names) {
    for (String name : names) {
      String value = stored.get(name);
      if (value != null) {
        Optional<String> text = StoredValue.text(value).filter(t -> says(t));
        if (text.isPresent()) {
          return text;
        }
      }
    }
    return Optional.empty();
  }

  /** Part of the data of another entry ({@code xdata=key-field}) is not looked up. */
  private static boolean says(String text) {
    return !text.isBlank() && !text.startsWith("xdata=");
  }

  /** The first of these fields that says something, as plain text. */
  Optional<String> plain(String... names) {
    for (String name : names) {
      Optional<String> text = plain.get(name);
      if (text == null) {
        text = latex(name).map(LatexReader::plain).filter(t -> !t.isBlank());
        plain.put(name, text);
      }
      if (text.isPresent()) {
        return text;
      }
    }
    return Optional.empty();
  }

  /** A title with its subtitle in one. */
  Optional<String> whole(String title, String subtitle) {
    return plain(title).map(t -> plain(subtitle).map(s -> t + TitleReader.joint(t) + s).orElse(t));
  }

  boolean has(String... names) {
    return latex(names).isPresent();
  }
}
