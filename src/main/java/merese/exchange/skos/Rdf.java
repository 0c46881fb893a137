package merese.exchange.skos;

import java.util.Map;
import merese.model.Concept;
import merese.vocabulary.Skos;

/** Names of RDF and of SKOS that only reading and writing need, as IRIs. */
final class Rdf {
  static final String NAMESPACE = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
  static final String FIRST = NAMESPACE + "first";
  static final String REST = NAMESPACE + "rest";
  static final String NIL = NAMESPACE + "nil";

  static final String LABEL = "http://www.w3.org/2000/01/rdf-schema#label";
  static final String TITLE = "http://purl.org/dc/terms/title";
  static final String OLD_TITLE = "http://purl.org/dc/elements/1.1/title";

  static final String NOTATION = Skos.NAMESPACE + "notation";
  static final String EDITORIAL_NOTE = Skos.NAMESPACE + "editorialNote";

  /** SKOS-XL: labels that are resources (SKOS Reference, appendix B). */
  static final String XL = "http://www.w3.org/2008/05/skos-xl#";

  static final String XL_LITERAL_FORM = XL + "literalForm";
  static final Map<String, String> XL_LABELS =
      Map.of(
          XL + "prefLabel", Skos.PREF_LABEL,
          XL + "altLabel", Skos.ALT_LABEL,
          XL + "hiddenLabel", Skos.HIDDEN_LABEL);

  static final Map<String, Concept.Match.Kind> MATCHES =
      Map.of(
          Skos.EXACT_MATCH, Concept.Match.Kind.EXACT_MATCH,
          Skos.CLOSE_MATCH, Concept.Match.Kind.CLOSE_MATCH,
          Skos.BROAD_MATCH, Concept.Match.Kind.BROAD_MATCH,
          Skos.NARROW_MATCH, Concept.Match.Kind.NARROW_MATCH,
          Skos.RELATED_MATCH, Concept.Match.Kind.RELATED_MATCH);

  private Rdf() {}

  static String local(String iri) {
    return iri.substring(Math.max(iri.lastIndexOf('#'), iri.lastIndexOf('/')) + 1);
  }
}
