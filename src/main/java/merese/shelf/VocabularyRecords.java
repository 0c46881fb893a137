package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.search.NoteIndex;
import merese.store.LibraryJson;
import merese.vocabulary.Thesaurus;

/** The vocabulary as the index holds it. */
final class VocabularyRecords {
  private VocabularyRecords() {}

  static Thesaurus thesaurus(NoteIndex index) {
    List<Facet> facets = new ArrayList<>();
    for (byte[] json : index.records(RecordTypes.FACET)) {
      facets.add(Shelf.stored(LibraryJson::decodeFacet, json));
    }
    List<Concept> concepts = new ArrayList<>();
    for (byte[] json : index.records(RecordTypes.CONCEPT)) {
      concepts.add(Shelf.stored(LibraryJson::decodeConcept, json));
    }
    List<Homonym> register = new ArrayList<>();
    for (byte[] json : index.records(RecordTypes.HOMONYM)) {
      register.add(Shelf.stored(LibraryJson::decodeHomonym, json));
    }
    return Thesaurus.of(facets, concepts, register);
  }
}
