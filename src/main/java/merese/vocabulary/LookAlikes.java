package merese.vocabulary;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;

/** The look-alike relation: symmetric, and handed up to whatever is broader. */
final class LookAlikes {
  private final Hierarchy hierarchy;
  private final Map<String, List<LookAlikePair>> pairs = new HashMap<>();

  LookAlikes(Hierarchy hierarchy) {
    this.hierarchy = hierarchy;
    for (Concept concept : hierarchy.concepts().values()) {
      for (Concept.LookAlike stated : concept.lookAlikes()) {
        Concept other = hierarchy.concepts().get(stated.concept());
        if (other != null && !other.id().equals(concept.id())) {
          add(new LookAlikePair(concept, other, stated.test(), concept));
        }
      }
    }
    // Pairs stated by the other side come after a concept's own.
    for (Concept concept : hierarchy.concepts().values()) {
      for (Concept.LookAlike stated : concept.lookAlikes()) {
        Concept other = hierarchy.concepts().get(stated.concept());
        if (other != null && !other.id().equals(concept.id())) {
          add(new LookAlikePair(other, concept, stated.test(), concept));
        }
      }
    }
  }

  /** The pairs of the concept itself first, then those of what is narrower, nearest first. */
  List<LookAlikePair> of(String id) {
    if (!hierarchy.concepts().containsKey(id)) {
      return List.of();
    }
    Set<String> above = hierarchy.ancestors(id);
    Set<String> below = hierarchy.descendants(id);
    List<LookAlikePair> found = new ArrayList<>();
    addOutside(id, id, above, below, found);
    for (String narrower : below) {
      addOutside(narrower, id, above, below, found);
    }
    return Collections.unmodifiableList(found);
  }

  private void addOutside(
      String here, String asked, Set<String> above, Set<String> below, List<LookAlikePair> found) {
    for (LookAlikePair pair : pairs.getOrDefault(here, List.of())) {
      String other = pair.other().id();
      if (!other.equals(asked) && !above.contains(other) && !below.contains(other)) {
        found.add(pair);
      }
    }
  }

  private void add(LookAlikePair pair) {
    List<LookAlikePair> ofOne = pairs.get(pair.here().id());
    if (ofOne == null) {
      ofOne = new ArrayList<>();
      pairs.put(pair.here().id(), ofOne);
    }
    ofOne.add(pair);
  }
}
