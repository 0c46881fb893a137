package merese.answer;

import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.ForTheUser;
import merese.model.Nearest;
import merese.vocabulary.Thesaurus;

/** That an id was asked for which no concept or facet has. */
public final class UnknownConceptException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  private UnknownConceptException(String message) {
    super(message);
  }

  public static UnknownConceptException ofFacet(Thesaurus thesaurus, String name) {
    List<String> ids = new ArrayList<>();
    thesaurus.facets().forEach(facet -> ids.add(facet.id()));
    return new UnknownConceptException(
        "there is no facet \"" + name + "\"; the facets are " + String.join(", ", ids));
  }

  static UnknownConceptException of(Thesaurus thesaurus, String id) {
    List<String> near = new ArrayList<>();
    for (Concept concept : thesaurus.concepts()) {
      near.add(concept.id());
    }
    near = Nearest.to(id, near, 3);
    String hint = near.isEmpty() ? "" : "; near it: " + String.join(", ", near);
    return new UnknownConceptException("no concept has the id \"" + id + "\"" + hint);
  }
}
