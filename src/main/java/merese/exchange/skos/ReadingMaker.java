package merese.exchange.skos;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.FilePlace;
import merese.exchange.Refused;
import merese.exchange.skos.SkosReading.RefusedConcept;
import merese.exchange.skos.SkosReading.Remark;
import merese.exchange.skos.Statements.Said;
import merese.vocabulary.Skos;
import merese.vocabulary.SkosGraph;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.SkosIntegrity.Condition;
import merese.vocabulary.SkosIntegrity.Violation;

/** Makes concepts of the statements of a file, and judges them by the conditions of SKOS. */
final class ReadingMaker {
  private static final Set<Condition> REFUSING = Set.of(Condition.S9, Condition.S14, Condition.S37);

  private final String file;
  private final RdfFile.Parsed parsed;
  private final Statements statements;
  private final Roles roles;
  private final Map<String, ConceptMaker> makers = new LinkedHashMap<>();
  private final List<RefusedConcept> refused = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();

  ReadingMaker(String file, RdfFile.Parsed parsed) {
    this.file = file;
    this.parsed = parsed;
    this.statements = parsed.statements();
    this.roles = Roles.of(statements.bySubject());
  }

  SkosReading make() {
    XlLabels labels = new XlLabels(statements);
    for (String uri : roles.concepts) {
      makers.put(uri, new ConceptMaker(uri));
    }
    for (String uri : roles.concepts) {
      makers.get(uri).take(statements.of(uri), labels);
    }
    List<SkosGroup> groups = new GroupMaker(statements).groups(roles.groups);
    relate(groups);
    List<Violation> violations = SkosIntegrity.check(graph(labels));
    Set<String> out = judge(violations);
    for (String uri : roles.unknown) {
      refuse(
          uri,
          uri + " has labels, and nothing says that it is a concept",
          "state that it is one: a skos:Concept",
          out);
    }
    odd(labels);
    Map<String, String> displayedById = displayedById();
    List<SkosConcept> concepts = new ArrayList<>();
    for (ConceptMaker maker : makers.values()) {
      if (!out.contains(maker.uri)) {
        concepts.add(maker.make(displayedById));
      }
    }
    return new SkosReading(
        file,
        parsed.syntax(),
        concepts,
        groups,
        new GroupMaker(statements).schemes(roles.schemes),
        refused,
        remarks,
        violations);
  }

  /** What is stated under another concept, a scheme or a collection. */
  private void relate(List<SkosGroup> groups) {
    statements
        .bySubject()
        .forEach(
            (subject, all) -> {
              for (Said said : all) {
                if (said.object() instanceof RdfTerm.Resource object) {
                  relate(subject, said.property(), object.name());
                }
              }
            });
    for (SkosGroup group : groups) {
      for (String member : group.members()) {
        with(member, maker -> maker.groups.add(group.uri()));
      }
    }
  }

  private void relate(String subject, String property, String object) {
    switch (property) {
      case Skos.BROADER -> hierarchy(subject, object);
      case Skos.NARROWER -> hierarchy(object, subject);
      case Skos.RELATED -> {
        with(subject, maker -> maker.related.add(object));
        with(object, maker -> maker.related.add(subject));
      }
      case Skos.HAS_TOP_CONCEPT -> with(object, maker -> maker.schemes.add(subject));
      case Skos.TOP_CONCEPT_OF, Skos.IN_SCHEME -> with(subject, maker -> maker.schemes.add(object));
      default -> {}
    }
  }

  private void hierarchy(String narrower, String broader) {
    with(narrower, maker -> maker.broader.add(broader));
    with(broader, maker -> maker.narrower.add(narrower));
  }

  private void with(String uri, java.util.function.Consumer<ConceptMaker> action) {
    ConceptMaker maker = makers.get(uri);
    if (maker != null) {
      action.accept(maker);
    }
  }

  private SkosGraph graph(XlLabels labels) {
    List<SkosGraph.Statement> all = new ArrayList<>();
    statements
        .bySubject()
        .forEach(
            (subject, said) -> {
              for (Said one : said) {
                boolean skos = one.property().startsWith(Skos.NAMESPACE);
                if (skos || one.property().equals(Skos.TYPE)) {
                  all.add(new SkosGraph.Statement(subject, one.property(), term(one.object())));
                }
              }
              labels
                  .of(subject)
                  .forEach(
                      label ->
                          all.add(
                              new SkosGraph.Statement(
                                  subject, label.property(), term(label.object()))));
            });
    return new SkosGraph(all);
  }

  private static SkosGraph.Term term(RdfTerm term) {
    return term instanceof RdfTerm.Literal literal
        ? new SkosGraph.Literal(literal.text(), literal.language())
        : new SkosGraph.Resource(((RdfTerm.Resource) term).name());
  }

  /** The concepts that are refused; what is taken in spite of a violation is mended. */
  private Set<String> judge(List<Violation> violations) {
    Set<String> out = new HashSet<>();
    Map<String, List<Violation>> refusing = new LinkedHashMap<>();
    for (Violation violation : violations) {
      String first = violation.subjects().get(0);
      boolean concept = makers.containsKey(first);
      if (concept && REFUSING.contains(violation.condition())) {
        refusing.computeIfAbsent(first, uri -> new ArrayList<>()).add(violation);
      } else {
        take(violation, concept);
      }
    }
    refusing.forEach(
        (uri, all) -> {
          List<String> what = new ArrayList<>();
          all.forEach(v -> what.add(v.wrong() + " (" + v.condition() + ")"));
          refuse(uri, String.join("; ", what), all.get(0).remedy(), out);
        });
    return out;
  }

  private void take(Violation violation, boolean concept) {
    List<String> subjects = violation.subjects();
    String taken = "";
    if (violation.condition() == Condition.S13 && concept) {
      taken = "; taken once, as the stronger kind of label";
    } else if (violation.condition() == Condition.S27) {
      with(subjects.get(0), maker -> maker.related.remove(subjects.get(1)));
      with(subjects.get(1), maker -> maker.related.remove(subjects.get(0)));
      taken = "; the hierarchy is taken and the relation left out";
    } else if (violation.condition() == Condition.S46) {
      with(subjects.get(0), maker -> maker.withoutMatches(subjects.get(1)));
      with(subjects.get(1), maker -> maker.withoutMatches(subjects.get(0)));
      taken = "; neither is taken";
    }
    remarks.add(
        new Remark(
            concept ? Optional.of(subjects.get(0)) : Optional.empty(),
            violation.wrong() + " (" + violation.condition() + ")" + taken));
  }

  private void refuse(String uri, String what, String remedy, Set<String> out) {
    out.add(uri);
    StringBuilder verbatim = new StringBuilder();
    String subject = new RdfTerm.Resource(uri).printed();
    for (Said said : statements.of(uri)) {
      verbatim.append(subject).append(" <").append(Turtle.iri(said.property())).append("> ");
      verbatim.append(said.object().printed()).append(" .\n");
    }
    FilePlace place = new FilePlace(file, 0, 0, refused.size() + 1);
    byte[] bytes = verbatim.toString().getBytes(StandardCharsets.UTF_8);
    refused.add(new RefusedConcept(uri, new Refused(place, what, remedy, bytes)));
  }

  private void odd(XlLabels labels) {
    for (String warning : parsed.warnings()) {
      remarks.add(new Remark(Optional.empty(), warning));
    }
    if (statements.inNamedGraphs > 0) {
      remarks.add(
          new Remark(
              Optional.empty(),
              statements.inNamedGraphs
                  + " statements stand in named graphs; read as if they did"
                  + " not"));
    }
    int others = 0;
    for (String subject : statements.bySubject().keySet()) {
      boolean known =
          roles.concepts.contains(subject)
              || roles.groups.contains(subject)
              || roles.schemes.contains(subject)
              || roles.unknown.contains(subject)
              || labels.isLabel(subject)
              || GroupMaker.isListNode(statements.of(subject));
      others += known ? 0 : statements.of(subject).size();
    }
    if (others > 0) {
      remarks.add(
          new Remark(
              Optional.empty(),
              others
                  + (others == 1 ? " statement is" : " statements are")
                  + " about something that is no concept, collection or scheme; left out"));
    }
    for (ConceptMaker maker : makers.values()) {
      maker.remarks.forEach(words -> remarks.add(new Remark(Optional.of(maker.uri), words)));
    }
  }

  /** The preferred labels of the concepts by their notations: how our own notes name them. */
  private Map<String, String> displayedById() {
    Map<String, String> all = new HashMap<>();
    for (ConceptMaker maker : makers.values()) {
      for (String notation : new LinkedHashSet<>(maker.notations)) {
        String label = maker.preferred.isEmpty() ? "" : maker.preferred.get(0).text();
        all.putIfAbsent(notation, label);
      }
    }
    return all;
  }
}
