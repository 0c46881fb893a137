package merese.exchange.skos;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.jena.graph.Graph;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryExecutionFactory;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;

/**
 * The integrity conditions of the SKOS Reference as questions to Apache Jena's own query engine, so
 * that a written vocabulary is judged by somebody else's program. What SKOS entails is in the
 * paths; the questions find the same in the Reference's 51 examples as the Reference does.
 */
final class SkosQueries {
  private static final String UP =
      "(skos:broader|^skos:narrower|skos:broaderTransitive|^skos:narrowerTransitive"
          + "|skos:broadMatch|^skos:narrowMatch)";
  private static final String RELATED =
      "(skos:related|^skos:related|skos:relatedMatch|^skos:relatedMatch)";
  private static final String CONCEPT =
      "{ ?x a skos:Concept } UNION { ?x "
          + UP
          + "|^"
          + UP
          + "|"
          + RELATED
          + " ?o }"
          + " UNION { ?x skos:topConceptOf|^skos:hasTopConcept ?s }";
  private static final String SCHEME =
      "{ ?x a skos:ConceptScheme } UNION { ?c skos:inScheme|skos:topConceptOf|^skos:hasTopConcept ?x }";
  private static final String COLLECTION =
      "{ ?x a skos:Collection } UNION { ?x a skos:OrderedCollection }"
          + " UNION { ?x skos:member|skos:memberList ?m }";

  private static final Map<String, String> ASKED = new LinkedHashMap<>();

  static {
    ASKED.put("S9", "{" + CONCEPT + "} {" + SCHEME + "}");
    ASKED.put(
        "S13",
        "{ ?x skos:prefLabel ?l . ?x skos:altLabel|skos:hiddenLabel ?l }"
            + " UNION { ?x skos:altLabel ?l . ?x skos:hiddenLabel ?l }");
    ASKED.put(
        "S14",
        "?x skos:prefLabel ?a , ?b FILTER (str(?a) < str(?b) && lcase(lang(?a)) = lcase(lang(?b)))");
    ASKED.put("S27", "?x " + RELATED + " ?y . ?x " + UP + "+ ?y");
    ASKED.put(
        "S37",
        "{ {"
            + COLLECTION
            + "} {"
            + CONCEPT
            + "} } UNION { {"
            + COLLECTION
            + "} {"
            + SCHEME
            + "} }");
    ASKED.put(
        "S46",
        "?x (skos:exactMatch|^skos:exactMatch)+ ?y ."
            + " ?x skos:broadMatch|^skos:broadMatch|skos:narrowMatch|^skos:narrowMatch"
            + "|skos:relatedMatch|^skos:relatedMatch ?y");
  }

  private SkosQueries() {}

  /** The conditions that a file in Turtle breaks. */
  static List<String> broken(byte[] turtle) {
    Graph graph =
        RDFParser.create()
            .source(new ByteArrayInputStream(turtle))
            .forceLang(Lang.TURTLE)
            .base("https://example.invalid/")
            .toGraph();
    Model model = ModelFactory.createModelForGraph(graph);
    List<String> broken = new ArrayList<>();
    ASKED.forEach(
        (condition, pattern) -> {
          String query =
              "PREFIX skos: <http://www.w3.org/2004/02/skos/core#> ASK { " + pattern + " }";
          try (QueryExecution asked = QueryExecutionFactory.create(query, model)) {
            if (asked.execAsk()) {
              broken.add(condition);
            }
          }
        });
    return broken;
  }
}
