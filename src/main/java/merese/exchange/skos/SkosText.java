package merese.exchange.skos;

import java.util.Locale;
import java.util.Optional;

/**
 * A text of a vocabulary.
 *
 * @param language a BCP 47 tag, as the file has it; empty for a text without one
 */
public record SkosText(String text, Optional<String> language) {
  public static SkosText of(String text, String language) {
    return new SkosText(text, Optional.of(language));
  }

  /** The same word in the same language; a tag counts whatever its case (BCP 47, 2.1.1). */
  public boolean isSame(SkosText other) {
    return text.equals(other.text) && tag().equals(other.tag());
  }

  /** In lower case; "" for none. */
  String tag() {
    return language.orElse("").toLowerCase(Locale.ROOT);
  }

  /** As N-Triples write it. */
  public String printed() {
    return RdfTerm.Literal.of(this).printed();
  }
}
