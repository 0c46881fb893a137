package merese.exchange.skos;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Small files of SKOS for tests, and the readings of them. */
final class SkosFiles {
  static final String PREFIXES =
      """
      @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
      @prefix ex: <https://example.org/glass/> .
      """;

  private SkosFiles() {}

  /** Turtle, with the prefixes skos and ex before it. */
  static SkosReading turtle(String statements) {
    return read("glass.ttl", PREFIXES + statements);
  }

  static SkosReading read(String name, String text) {
    return read(name, text.getBytes(StandardCharsets.UTF_8));
  }

  static SkosReading read(String name, byte[] bytes) {
    try {
      return SkosReader.usual().read(name, new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SkosConcept concept(SkosReading reading, String localName) {
    return reading.concepts().stream()
        .filter(concept -> Rdf.local(concept.uri()).equals(localName))
        .findFirst()
        .orElseThrow(() -> new AssertionError(localName + " is not in " + reading));
  }

  /** As "knop@en". */
  static List<String> texts(List<SkosText> texts) {
    return texts.stream()
        .map(text -> text.text() + text.language().map(tag -> "@" + tag).orElse(""))
        .toList();
  }
}
