package merese.vocabulary;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** What is broader and narrower than what. A broader id that no concept has is passed over. */
final class Hierarchy {
  private final Concepts concepts;
  private final Map<String, Set<String>> ancestors = new ConcurrentHashMap<>();

  Hierarchy(Concepts concepts) {
    this.concepts = concepts;
  }

  Concepts concepts() {
    return concepts;
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
      List<String> neighbours = upward ? concepts.broader(at) : concepts.narrower(at);
      for (String next : neighbours) {
        if (!next.equals(id) && concepts.has(next) && found.add(next)) {
          queue.add(next);
        }
      }
    }
    return Collections.unmodifiableSet(found);
  }
}
