package merese.exchange.skos;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.vocabulary.Skos;

/**
 * Turtle by subjects: one statement a line, in the order in which they are made, none of them
 * twice.
 */
final class TurtleBlocks {
  private final StringBuilder out = new StringBuilder();
  private final Map<String, String> prefixes = new LinkedHashMap<>();
  private Set<String> lines = new LinkedHashSet<>();
  private String subject = "";

  /** All prefixes come before the first subject. */
  void prefix(String prefix, String namespace) {
    prefixes.put(prefix, namespace);
    out.append("@prefix ").append(prefix).append(": <");
    out.append(Turtle.iri(namespace)).append("> .\n");
  }

  void begin(String uri, String type) {
    subject = name(uri) + " a " + name(type);
    lines = new LinkedHashSet<>(); // clearing takes as long as the largest block was
  }

  void resource(String property, String uri) {
    lines.add(name(property) + " " + name(uri));
  }

  void literal(String property, String text, Optional<String> language) {
    lines.add(
        name(property) + " " + new RdfTerm.Literal(text, language, Optional.empty()).printed());
  }

  /** A statement whose value is written as N-Triples write it. */
  void printed(String property, String value) {
    lines.add((property.equals(Skos.TYPE) ? "a" : name(property)) + " " + value);
  }

  void end() {
    out.append('\n').append(subject);
    for (String line : lines) {
      out.append(" ;\n  ").append(line);
    }
    out.append(" .\n");
  }

  String text() {
    return out.toString();
  }

  private String name(String uri) {
    for (Map.Entry<String, String> prefix : prefixes.entrySet()) {
      if (uri.startsWith(prefix.getValue())) {
        String local = uri.substring(prefix.getValue().length());
        if (Turtle.isLocalName(local)) {
          return prefix.getKey() + ":" + local;
        }
      }
    }
    return "<" + Turtle.iri(uri) + ">";
  }
}
