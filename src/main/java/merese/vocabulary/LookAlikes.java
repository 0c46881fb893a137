package merese.vocabulary;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import merese.model.Concept;

/** The look-alike relation: symmetric, and handed up to whatever is broader. */
final class LookAlikes {
  private final Hierarchy hierarchy;
  private final Concepts concepts;

  LookAlikes(Hierarchy hierarchy) {
    this.hierarchy = hierarchy;
    this.concepts = hierarchy.concepts();
  }

  /** The pairs of the concept itself first, then those of what is narrower, nearest first. */
  List<LookAlikePair> of(String id) {
    if (!concepts.has(id)) {
      return List.of();
    }
    Kin kin = new Kin(id, hierarchy.ancestors(id), hierarchy.descendants(id));
    List<LookAlikePair> found = new ArrayList<>();
    addPairs(id, kin, found);
    for (String narrower : kin.below) {
      addPairs(narrower, kin, found);
    }
    return Collections.unmodifiableList(found);
  }

  /** Pairs stated by the other side come after a concept's own. */
  private void addPairs(String here, Kin kin, List<LookAlikePair> found) {
    if (concepts.namesLookAlikes(here)) {
      Concept own = concepts.find(here);
      for (Concept.LookAlike stated : own.lookAlikes()) {
        String other = stated.concept();
        if (concepts.has(other) && !other.equals(here) && !kin.takesIn(other)) {
          found.add(new LookAlikePair(own, concepts.find(other), stated.test(), own));
        }
      }
    }
    for (String other : concepts.mistakenFor(here)) {
      if (!other.equals(here) && !kin.takesIn(other)) {
        Concept stating = concepts.find(other);
        for (Concept.LookAlike stated : stating.lookAlikes()) {
          if (stated.concept().equals(here)) {
            found.add(new LookAlikePair(concepts.find(here), stating, stated.test(), stating));
          }
        }
      }
    }
  }

  /** A concept with all that is broader or narrower. */
  private static final class Kin {
    private final String asked;
    private final Set<String> above;
    private final Set<String> below;

    private Kin(String asked, Set<String> above, Set<String> below) {
      this.asked = asked;
      this.above = above;
      this.below = below;
    }

    private boolean takesIn(String id) {
      return id.equals(asked) || above.contains(id) || below.contains(id);
    }
  }
}
