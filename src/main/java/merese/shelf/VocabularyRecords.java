package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.search.NoteIndex;
import merese.store.VocabularyFile;
import merese.vocabulary.Thesaurus;

/** The vocabulary as the index holds it. */
final class VocabularyRecords {
  private VocabularyRecords() {}

  static Thesaurus thesaurus(NoteIndex index) {
    List<Facet> facets = new ArrayList<>();
    List<Concept> concepts = new ArrayList<>();
    for (byte[] packed : index.records(RecordTypes.FACET)) {
      VocabularyFile file = PackedVocabulary.unpack(packed);
      facets.add(file.facet());
      concepts.addAll(file.concepts());
    }
    List<Homonym> register = new ArrayList<>();
    for (byte[] packed : index.records(RecordTypes.REGISTER)) {
      register.addAll(PackedVocabulary.unpackRegister(packed));
    }
    return Thesaurus.of(facets, concepts, register);
  }
}
