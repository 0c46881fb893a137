package merese.vocabulary;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.vocabulary.SkosGraph.Literal;
import merese.vocabulary.SkosGraph.Resource;
import merese.vocabulary.SkosGraph.Statement;

/**
 * What the SKOS Reference entails from the statements of a graph, as far as its integrity
 * conditions ask for it: classes from domains and ranges (S4–S6, S19–S20, S31, S33), inverses and
 * symmetry (S8, S23, S25–S26, S43–S44), sub-properties (S7, S21–S22, S39–S42). Transitivity (S24,
 * S45) is left to {@link #isAbove} and {@link #sameByExactMatch}.
 */
final class SkosFacts {
  /** Two resources; for a symmetric relation in either order. */
  record Pair(String a, String b) {
    Pair reversed() {
      return new Pair(b, a);
    }
  }

  /** A label as SKOS compares it: the language tag whatever its case (BCP 47, 2.1.1). */
  record Label(String text, String language) {
    static Label of(Literal literal) {
      String tag = literal.language().orElse("").toLowerCase(Locale.ROOT);
      return new Label(literal.text(), tag);
    }
  }

  final Set<String> concepts = new LinkedHashSet<>();
  final Set<String> schemes = new LinkedHashSet<>();
  final Set<String> collections = new LinkedHashSet<>();

  /** Subject to label property to labels, in the order of the graph. */
  final Map<String, Map<String, Set<Label>>> labels = new LinkedHashMap<>();

  /** Related or related matches, each once in the direction first stated. */
  final Set<Pair> related = new LinkedHashSet<>();

  final Set<Pair> relatedMatches = new LinkedHashSet<>();

  /** Narrower to broader. */
  final Set<Pair> broadMatches = new LinkedHashSet<>();

  private final Map<String, Set<String>> parents = new HashMap<>();
  private final Map<String, String> exactly = new HashMap<>();

  SkosFacts(SkosGraph graph) {
    for (Statement statement : graph.statements()) {
      if (statement.object() instanceof Resource object) {
        resource(statement.subject(), statement.property(), object.iri());
      } else if (statement.object() instanceof Literal literal) {
        labels
            .computeIfAbsent(statement.subject(), subject -> new HashMap<>())
            .computeIfAbsent(statement.property(), property -> new LinkedHashSet<>())
            .add(Label.of(literal));
      }
    }
  }

  /** Whether {@code subject broaderTransitive other} is entailed. */
  boolean isAbove(String other, String subject) {
    Set<String> found = new HashSet<>();
    ArrayDeque<String> queue = new ArrayDeque<>(parents.getOrDefault(subject, Set.of()));
    while (!queue.isEmpty()) {
      String at = queue.remove();
      if (at.equals(other)) {
        return true;
      }
      if (found.add(at)) {
        queue.addAll(parents.getOrDefault(at, Set.of()));
      }
    }
    return false;
  }

  /** Whether {@code a exactMatch b} is entailed. */
  boolean sameByExactMatch(String a, String b) {
    return exactly.containsKey(a) && exactly.containsKey(b) && root(a).equals(root(b));
  }

  /** The labels of one kind; empty where there are none. */
  Set<Label> labels(String subject, String property) {
    return labels.getOrDefault(subject, Map.of()).getOrDefault(property, Set.of());
  }

  /** Cycles of {@code broader}, each as its members, none of them shared between two. */
  List<List<String>> cycles() {
    Map<String, Integer> parentsLeft = new LinkedHashMap<>();
    Map<String, List<String>> children = new HashMap<>();
    parents.forEach(
        (child, above) -> {
          parentsLeft.merge(child, above.size(), Integer::sum);
          for (String parent : above) {
            parentsLeft.putIfAbsent(parent, 0);
            children.computeIfAbsent(parent, key -> new ArrayList<>()).add(child);
          }
        });
    Set<String> left = new TreeSet<>(parentsLeft.keySet());
    List<List<String>> cycles = new ArrayList<>();
    ArrayDeque<String> free = new ArrayDeque<>();
    parentsLeft.forEach((node, count) -> addIf(count == 0, node, free));
    while (true) {
      while (!free.isEmpty()) {
        remove(free.remove(), left, parentsLeft, children, free);
      }
      if (left.isEmpty()) {
        return cycles;
      }
      List<String> cycle = cycleAbove(left.iterator().next(), left);
      cycles.add(cycle);
      for (String member : cycle) {
        remove(member, left, parentsLeft, children, free);
      }
    }
  }

  private static void addIf(boolean condition, String node, ArrayDeque<String> queue) {
    if (condition) {
      queue.add(node);
    }
  }

  private static void remove(
      String node,
      Set<String> left,
      Map<String, Integer> parentsLeft,
      Map<String, List<String>> children,
      ArrayDeque<String> free) {
    if (left.remove(node)) {
      for (String child : children.getOrDefault(node, List.of())) {
        addIf(parentsLeft.merge(child, -1, Integer::sum) == 0, child, free);
      }
    }
  }

  /** Every node that is left has a parent that is left, so that walking up must come round. */
  private List<String> cycleAbove(String start, Set<String> left) {
    List<String> walk = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String at = start;
    while (seen.add(at)) {
      walk.add(at);
      Optional<String> parent = parents.get(at).stream().filter(left::contains).findFirst();
      at = parent.orElseThrow();
    }
    List<String> cycle = new ArrayList<>(walk.subList(walk.indexOf(at), walk.size()));
    Collections.rotate(cycle, -cycle.indexOf(Collections.min(cycle)));
    return cycle;
  }

  private void resource(String subject, String property, String object) {
    switch (property) {
      case Skos.TYPE -> type(subject, object);
      case Skos.IN_SCHEME -> schemes.add(object);
      case Skos.TOP_CONCEPT_OF -> topConcept(object, subject);
      case Skos.HAS_TOP_CONCEPT -> topConcept(subject, object);
      case Skos.MEMBER, Skos.MEMBER_LIST -> collections.add(subject);
      case Skos.SEMANTIC_RELATION, Skos.MAPPING_RELATION, Skos.CLOSE_MATCH ->
          bothConcepts(subject, object);
      case Skos.BROADER, Skos.BROADER_TRANSITIVE -> broader(subject, object);
      case Skos.NARROWER, Skos.NARROWER_TRANSITIVE -> broader(object, subject);
      case Skos.BROAD_MATCH -> broadMatch(subject, object);
      case Skos.NARROW_MATCH -> broadMatch(object, subject);
      case Skos.RELATED -> related(subject, object);
      case Skos.RELATED_MATCH -> {
        related(subject, object);
        relatedMatches.add(new Pair(subject, object));
      }
      case Skos.EXACT_MATCH -> exactMatch(subject, object);
      default -> {}
    }
  }

  private void type(String subject, String type) {
    switch (type) {
      case Skos.CONCEPT -> concepts.add(subject);
      case Skos.CONCEPT_SCHEME -> schemes.add(subject);
      case Skos.COLLECTION, Skos.ORDERED_COLLECTION -> collections.add(subject);
      default -> {}
    }
  }

  private void topConcept(String scheme, String concept) {
    schemes.add(scheme);
    concepts.add(concept);
  }

  private void bothConcepts(String a, String b) {
    concepts.add(a);
    concepts.add(b);
  }

  private void broader(String narrower, String broader) {
    bothConcepts(narrower, broader);
    parents.computeIfAbsent(narrower, key -> new LinkedHashSet<>()).add(broader);
  }

  private void broadMatch(String narrower, String broader) {
    broader(narrower, broader);
    broadMatches.add(new Pair(narrower, broader));
  }

  private void related(String a, String b) {
    bothConcepts(a, b);
    Pair pair = new Pair(a, b);
    if (!related.contains(pair.reversed())) {
      related.add(pair);
    }
  }

  private void exactMatch(String a, String b) {
    bothConcepts(a, b);
    exactly.putIfAbsent(a, a);
    exactly.putIfAbsent(b, b);
    exactly.put(root(a), root(b));
  }

  private String root(String resource) {
    String at = resource;
    while (!exactly.get(at).equals(at)) {
      exactly.put(at, exactly.get(exactly.get(at)));
      at = exactly.get(at);
    }
    return at;
  }
}
