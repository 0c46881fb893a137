package merese.exchange.skos;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The ways of writing RDF down that are read. */
public enum SkosSyntax {
  TURTLE("Turtle", List.of(".ttl", ".turtle")),
  N_TRIPLES("N-Triples", List.of(".nt")),
  RDF_XML("RDF/XML", List.of(".rdf", ".xml", ".owl")),
  JSON_LD("JSON-LD", List.of(".jsonld", ".json"));

  private final String words;
  private final List<String> endings;

  SkosSyntax(String words, List<String> endings) {
    this.words = words;
    this.endings = endings;
  }

  /** What a message calls it. */
  public String words() {
    return words;
  }

  /** By the ending of a file's name, whatever its case. */
  public static Optional<SkosSyntax> ofName(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    for (SkosSyntax syntax : values()) {
      if (syntax.endings.stream().anyMatch(name::endsWith)) {
        return Optional.of(syntax);
      }
    }
    return Optional.empty();
  }

  /**
   * By how a file begins. N-Triples is Turtle too and is not told from it; a Turtle file that
   * begins with an IRI is told from XML by its first address.
   */
  static SkosSyntax ofBeginning(byte[] head) {
    String text = new String(head, StandardCharsets.ISO_8859_1).replace("\0", "");
    int at = 0;
    while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) > '~')) {
      at++; // white space, and the bytes of an order mark
    }
    String start = text.substring(at);
    if (start.startsWith("{") || (start.startsWith("[") && looksLikeJson(start))) {
      return JSON_LD;
    }
    boolean xml = start.startsWith("<?") || start.startsWith("<!") || start.startsWith("<rdf:");
    return xml ? RDF_XML : TURTLE;
  }

  /** Turtle may begin with "[" too: {@code [ a skos:Concept ] .}, {@code [] skos:prefLabel …}. */
  private static boolean looksLikeJson(String start) {
    String inside = start.substring(1).stripLeading();
    return inside.startsWith("{");
  }
}
