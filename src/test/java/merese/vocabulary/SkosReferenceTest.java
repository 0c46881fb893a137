package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import merese.vocabulary.SkosGraph.Literal;
import merese.vocabulary.SkosGraph.Resource;
import merese.vocabulary.SkosGraph.Statement;
import merese.vocabulary.SkosGraph.Term;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.system.StreamRDFLib;
import org.apache.jena.sparql.graph.GraphFactory;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The examples of the W3C SKOS Reference (Recommendation of 18 August 2009), with the condition
 * that each inconsistent one breaks; see SOURCES.md beside them. Read by Apache Jena.
 */
class SkosReferenceTest {
  private static final Path EXAMPLES = Path.of("src/test/resources/merese/checks/skos-reference");

  @TestFactory
  Stream<DynamicTest> everyExampleIsJudgedAsTheReferenceJudgesIt() throws IOException {
    Map<String, String> expected = new TreeMap<>();
    for (String row : Files.readAllLines(EXAMPLES.resolve("expected.tsv"))) {
      String[] cells = row.split("\t");
      if (cells[1].equals("inconsistent")) {
        expected.put(cells[0], cells[2]);
      }
    }
    List<String> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(EXAMPLES)) {
      all.filter(file -> file.toString().endsWith(".ttl"))
          .map(file -> EXAMPLES.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .forEach(files::add);
    }
    assertEquals(51, files.size());
    assertEquals(
        expected.keySet().stream().toList(),
        files.stream().filter(file -> file.startsWith("invalid/")).toList());
    return files.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file, () -> assertEquals(expected.getOrDefault(file, ""), broken(file))));
  }

  private static String broken(String file) {
    return SkosIntegrity.check(read(EXAMPLES.resolve(file))).stream()
        .map(violation -> violation.condition().name())
        .distinct()
        .collect(Collectors.joining(" "));
  }

  private static SkosGraph read(Path file) {
    org.apache.jena.graph.Graph graph = GraphFactory.createDefaultGraph();
    RDFParser.create()
        .source(file)
        .base("https://example.invalid/")
        .parse(StreamRDFLib.graph(graph));
    List<Statement> statements = new ArrayList<>();
    for (Triple triple : graph.find().toList()) {
      statements.add(
          new Statement(
              name(triple.getSubject()), triple.getPredicate().getURI(), term(triple.getObject())));
    }
    return new SkosGraph(statements);
  }

  private static Term term(Node node) {
    if (node.isLiteral()) {
      String language = node.getLiteralLanguage();
      return new Literal(
          node.getLiteralLexicalForm(),
          language.isEmpty() ? Optional.empty() : Optional.of(language));
    }
    return new Resource(name(node));
  }

  private static String name(Node node) {
    return node.isBlank() ? "_:" + node.getBlankNodeLabel() : node.getURI();
  }
}
