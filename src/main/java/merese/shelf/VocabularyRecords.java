package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.search.Hits.RecordHit;
import merese.search.IndexDamagedException;
import merese.search.NoteIndex;
import merese.store.VocabularyFile;
import merese.vocabulary.Thesaurus;

/**
 * The files of the vocabulary as the index holds them, by their paths.
 *
 * @param facets the files of facets
 * @param registers the register of homonyms, where there is one
 */
record VocabularyRecords(Map<String, VocabularyFile> facets, Map<String, List<Homonym>> registers) {
  /** The name of the facet of what no file defines; it is no facet of the library. */
  private static final String NO_FACET = "undefined";

  private static final String STANDS_IN =
      "No file of the vocabulary that can be read defines this; what names it stands here under"
          + " that name.";

  VocabularyRecords {
    facets = new TreeMap<>(facets);
    registers = new TreeMap<>(registers);
  }

  static VocabularyRecords none() {
    return new VocabularyRecords(Map.of(), Map.of());
  }

  static VocabularyRecords of(NoteIndex index) {
    VocabularyRecords records = none();
    for (RecordHit hit : index.recordHits(RecordTypes.FACET)) {
      records.facets.put(hit.file(), PackedVocabulary.unpack(hit.payload()));
    }
    for (RecordHit hit : index.recordHits(RecordTypes.REGISTER)) {
      records.registers.put(hit.file(), PackedVocabulary.unpackRegister(hit.payload()));
    }
    return records;
  }

  /** What answers read: whatever is named and not defined is there too, and means only itself. */
  static Thesaurus forAnswers(NoteIndex index) {
    Set<String> undefined = new TreeSet<>();
    for (byte[] id : index.records(RecordTypes.UNDEFINED)) {
      undefined.add(new String(id, StandardCharsets.UTF_8));
    }
    return thesaurus(index, undefined);
  }

  /** What the files of the vocabulary define, and no more. */
  static Thesaurus forWriting(NoteIndex index) {
    return thesaurus(index, Set.of());
  }

  private static Thesaurus thesaurus(NoteIndex index, Set<String> undefined) {
    for (byte[] packed : index.records(RecordTypes.THESAURUS)) {
      return PackedThesaurus.unpack(packed, undefined);
    }
    throw new IndexDamagedException("the index lacks the vocabulary", null);
  }

  Thesaurus thesaurus() {
    List<Facet> all = new ArrayList<>();
    List<Concept> concepts = new ArrayList<>();
    for (VocabularyFile file : facets.values()) {
      all.add(file.facet());
      concepts.addAll(file.concepts());
    }
    List<Homonym> register = new ArrayList<>();
    for (List<Homonym> homonyms : registers.values()) {
      register.addAll(homonyms);
    }
    return Thesaurus.of(all, concepts, register);
  }

  static Concept standIn(String id) {
    return new Concept(
        id,
        NO_FACET,
        Concept.Label.of(id),
        List.of(),
        List.of(),
        STANDS_IN,
        List.of(),
        List.of(),
        Optional.empty(),
        Concept.Status.UNCERTAIN,
        List.of());
  }
}
