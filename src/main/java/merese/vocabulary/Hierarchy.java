package merese.vocabulary;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import merese.model.Concept;

/** What is broader and narrower than what. A broader id that no concept has is passed over. */
final class Hierarchy {
  private final Map<String, Concept> concepts;
  private final Map<String, List<String>> narrower;
  private final Map<String, Set<String>> ancestors = new ConcurrentHashMap<>();

  Hierarchy(List<Concept> all) {
    concepts = new LinkedHashMap<>(all.size() * 2);
    for (Concept concept : all) {
      concepts.putIfAbsent(concept.id(), concept);
    }
    narrower = new HashMap<>();
    for (Concept concept : concepts.values()) {
      for (String parent : concept.broader()) {
        List<String> children = narrower.get(parent);
        if (children == null) {
          children = new ArrayList<>();
          narrower.put(parent, children);
        }
        children.add(concept.id());
      }
    }
  }

  /** In the order in which they were given; the first of several with one id. */
  Map<String, Concept> concepts() {
    return concepts;
  }

  List<String> narrowerOf(String id) {
    List<String> children = narrower.get(id);
    return children == null ? List.of() : Collections.unmodifiableList(children);
  }

  /** All that is broader, nearest first, without {@code id} even where it is its own ancestor. */
  Set<String> ancestors(String id) {
    Set<String> known = ancestors.get(id);
    if (known == null) {
      known = closure(id, true);
      ancestors.put(id, known);
    }
    return known;
  }

  /** All that is narrower, nearest first. */
  Set<String> descendants(String id) {
    return closure(id, false);
  }

  private Set<String> closure(String id, boolean upward) {
    Set<String> found = new LinkedHashSet<>();
    ArrayDeque<String> queue = new ArrayDeque<>();
    queue.add(id);
    while (!queue.isEmpty()) {
      String at = queue.remove();
      List<String> neighbours;
      if (upward) {
        Concept concept = concepts.get(at);
        neighbours = concept == null ? List.of() : concept.broader();
      } else {
        neighbours = narrowerOf(at);
      }
      for (String next : neighbours) {
        if (!next.equals(id) && concepts.containsKey(next) && found.add(next)) {
          queue.add(next);
        }
      }
    }
    return Collections.unmodifiableSet(found);
  }
}
