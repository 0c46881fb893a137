package merese.vocabulary;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.model.Concept;

/** Concepts that have all been read. Of several with one id the first stands. */
final class ConceptsAtHand implements Concepts {
  private final Map<String, Concept> concepts;
  private final Map<String, List<String>> narrower = new HashMap<>();
  private final Map<String, List<String>> mistaken = new HashMap<>();

  ConceptsAtHand(List<Concept> all) {
    concepts = new LinkedHashMap<>(all.size() * 2);
    for (Concept concept : all) {
      concepts.putIfAbsent(concept.id(), concept);
    }
    for (Concept concept : concepts.values()) {
      for (String parent : concept.broader()) {
        list(narrower, parent).add(concept.id());
      }
      for (Concept.LookAlike stated : concept.lookAlikes()) {
        List<String> by = list(mistaken, stated.concept());
        if (by.isEmpty() || !by.get(by.size() - 1).equals(concept.id())) {
          by.add(concept.id());
        }
      }
    }
  }

  private static List<String> list(Map<String, List<String>> lists, String id) {
    List<String> list = lists.get(id);
    if (list == null) {
      list = new ArrayList<>(2);
      lists.put(id, list);
    }
    return list;
  }

  @Override
  public Map<String, Concept> all() {
    return Collections.unmodifiableMap(concepts);
  }

  @Override
  public Concept find(String id) {
    return concepts.get(id);
  }

  @Override
  public boolean has(String id) {
    return concepts.containsKey(id);
  }

  @Override
  public List<String> broader(String id) {
    Concept concept = concepts.get(id);
    return concept == null ? List.of() : concept.broader();
  }

  @Override
  public List<String> narrower(String id) {
    List<String> children = narrower.get(id);
    return children == null ? List.of() : Collections.unmodifiableList(children);
  }

  @Override
  public boolean namesLookAlikes(String id) {
    Concept concept = concepts.get(id);
    return concept != null && !concept.lookAlikes().isEmpty();
  }

  @Override
  public List<String> mistakenFor(String id) {
    List<String> by = mistaken.get(id);
    return by == null ? List.of() : Collections.unmodifiableList(by);
  }
}
