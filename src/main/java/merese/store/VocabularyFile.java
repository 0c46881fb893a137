package merese.store;

import java.util.List;
import merese.model.Concept;
import merese.model.Facet;

/** The file of a facet: the facet and its concepts, all of which name it as theirs. */
public record VocabularyFile(Facet facet, List<Concept> concepts) {
  public VocabularyFile {
    concepts = List.copyOf(concepts);
    for (Concept concept : concepts) {
      if (!concept.facet().equals(facet.id())) {
        throw new IllegalArgumentException(
            "the concept \"" + concept.id() + "\" is not of the facet \"" + facet.id() + '"');
      }
    }
  }
}
