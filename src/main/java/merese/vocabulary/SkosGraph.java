package merese.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;

/**
 * Statements about resources, as in RDF, as far as SKOS needs them. Nothing is entailed here: the
 * list is what was stated, in its order.
 */
public record SkosGraph(List<Statement> statements) {
  private static final Map<Concept.Match.Kind, String> MATCHES =
      Map.of(
          Concept.Match.Kind.EXACT_MATCH, Skos.EXACT_MATCH,
          Concept.Match.Kind.CLOSE_MATCH, Skos.CLOSE_MATCH,
          Concept.Match.Kind.BROAD_MATCH, Skos.BROAD_MATCH,
          Concept.Match.Kind.NARROW_MATCH, Skos.NARROW_MATCH,
          Concept.Match.Kind.RELATED_MATCH, Skos.RELATED_MATCH);

  public SkosGraph {
    statements = List.copyOf(statements);
  }

  /** One statement; subject and property are IRIs, or whatever else names a resource. */
  public record Statement(String subject, String property, Term object) {}

  /** What a statement can have as its object. */
  public sealed interface Term permits Resource, Literal {}

  /** A resource by its IRI, or by a name of its own where it has none. */
  public record Resource(String iri) implements Term {}

  /**
   * A literal.
   *
   * @param language a BCP 47 tag; empty for a literal without one
   */
  public record Literal(String text, Optional<String> language) implements Term {}

  /** The SKOS property of a match. */
  public static String property(Concept.Match.Kind kind) {
    return MATCHES.get(kind);
  }

  /** This graph and some more statements. */
  public SkosGraph plus(Statement... more) {
    List<Statement> all = new ArrayList<>(statements);
    all.addAll(List.of(more));
    return new SkosGraph(all);
  }

  /**
   * A thesaurus as statements. A label has its scope, as a qualifier in brackets. A look-alike is
   * {@code related} unless one of the two is an ancestor of the other (S27); its test is a scope
   * note either way.
   *
   * @param base what is put before a concept's id to make its IRI; may be empty
   * @param scheme the IRI of the concept scheme
   * @param language of all labels and notes
   */
  public static SkosGraph of(Thesaurus thesaurus, String base, String scheme, String language) {
    Writer writer = new Writer(thesaurus, base, Optional.of(language));
    writer.resource(scheme, Skos.TYPE, Skos.CONCEPT_SCHEME);
    for (Concept concept : thesaurus.concepts()) {
      writer.concept(concept, scheme);
    }
    return new SkosGraph(writer.statements);
  }

  private static final class Writer {
    private final List<Statement> statements = new ArrayList<>();
    private final Thesaurus thesaurus;
    private final String base;
    private final Optional<String> language;

    private Writer(Thesaurus thesaurus, String base, Optional<String> language) {
      this.thesaurus = thesaurus;
      this.base = base;
      this.language = language;
    }

    private void concept(Concept concept, String scheme) {
      String iri = base + concept.id();
      resource(iri, Skos.TYPE, Skos.CONCEPT);
      resource(iri, Skos.IN_SCHEME, scheme);
      label(iri, Skos.PREF_LABEL, concept.preferred());
      concept.alternatives().forEach(label -> label(iri, Skos.ALT_LABEL, label));
      concept.hidden().forEach(label -> label(iri, Skos.HIDDEN_LABEL, label));
      text(iri, Skos.DEFINITION, concept.definition());
      if (concept.broader().isEmpty()) {
        resource(iri, Skos.TOP_CONCEPT_OF, scheme);
      }
      for (String broader : concept.broader()) {
        resource(iri, Skos.BROADER, base + broader);
      }
      lookAlikes(concept, iri);
      for (Concept.Match match : concept.matches()) {
        resource(iri, MATCHES.get(match.kind()), match.uri());
      }
    }

    private void lookAlikes(Concept concept, String iri) {
      Set<String> above = thesaurus.broader(concept.id());
      Set<String> below = thesaurus.narrower(concept.id());
      for (Concept.LookAlike lookAlike : concept.lookAlikes()) {
        String other = lookAlike.concept();
        if (!other.equals(concept.id()) && !above.contains(other) && !below.contains(other)) {
          resource(iri, Skos.RELATED, base + other);
        }
        String name =
            thesaurus.concept(other).map(c -> Thesaurus.display(c.preferred())).orElse(other);
        text(
            iri,
            Skos.SCOPE_NOTE,
            "Mistaken for " + name + lookAlike.test().map(test -> ": " + test).orElse(""));
      }
      concept.lookAlikeRemark().ifPresent(remark -> text(iri, Skos.SCOPE_NOTE, remark));
    }

    private void resource(String subject, String property, String object) {
      statements.add(new Statement(subject, property, new Resource(object)));
    }

    private void label(String subject, String property, Concept.Label label) {
      text(subject, property, Thesaurus.display(label));
    }

    private void text(String subject, String property, String text) {
      statements.add(new Statement(subject, property, new Literal(text, language)));
    }
  }
}
