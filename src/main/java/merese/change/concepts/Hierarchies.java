package merese.change.concepts;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;

/** What is broader than what, as the import goes on; never with a circle that it has made. */
final class Hierarchies {
  private final Map<String, List<String>> broader = new HashMap<>();

  Hierarchies(Iterable<Concept> concepts) {
    concepts.forEach(concept -> broader.put(concept.id(), new ArrayList<>(concept.broader())));
  }

  /** Whether it could be added, which it then is. */
  boolean add(String narrower, String above) {
    if (isAbove(narrower, above)) {
      return false;
    }
    List<String> known = broader.computeIfAbsent(narrower, id -> new ArrayList<>());
    if (!known.contains(above)) {
      known.add(above);
    }
    return true;
  }

  void clear(String narrower) {
    broader.put(narrower, new ArrayList<>());
  }

  /** Whether the one is the other or broader than it. */
  private boolean isAbove(String one, String other) {
    Set<String> seen = new HashSet<>();
    ArrayDeque<String> queue = new ArrayDeque<>(List.of(other));
    while (!queue.isEmpty()) {
      String at = queue.remove();
      if (at.equals(one)) {
        return true;
      }
      if (seen.add(at)) {
        queue.addAll(broader.getOrDefault(at, List.of()));
      }
    }
    return false;
  }
}
