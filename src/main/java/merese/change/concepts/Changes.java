package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.model.ReceivedRecord;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.Folding;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.SkosIntegrity.Violation;

/** The vocabulary as it will be, and the saving of it. */
final class Changes {
  private final Vocabulary vocabulary;
  private final Map<String, Concept> changed = new LinkedHashMap<>();
  private final Map<String, List<Concept>> added = new LinkedHashMap<>();
  private final Map<String, Facet> facets = new LinkedHashMap<>();
  private final Stored<List<ReceivedRecord>> keptBefore;
  private final List<ReceivedRecord> kept;
  private List<Homonym> register;
  private final List<String> registerWords = new ArrayList<>();
  private final Map<String, Integer> keptAt = new HashMap<>();
  private int keptChanges;

  Changes(LibraryFolder folder, Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.keptBefore = folder.readKept();
    this.kept = new ArrayList<>(keptBefore.value());
    for (int i = 0; i < kept.size(); i++) {
      keptAt.putIfAbsent(key(kept.get(i)), i);
    }
    this.register = vocabulary.register.value();
  }

  Concept now(String id) {
    return changed.getOrDefault(id, vocabulary.concepts.get(id));
  }

  void put(ConceptDraft draft) {
    changed.put(draft.id, draft.make());
  }

  /**
   * @param made the facet, where it is new; else null
   */
  void add(ConceptDraft draft, Facet made) {
    if (made != null) {
      facets.put(made.id(), made);
    }
    added.computeIfAbsent(draft.facet, f -> new ArrayList<>()).add(draft.make());
  }

  boolean uses(String facet) {
    return added.containsKey(facet);
  }

  /** Says of the words that are now shared that they are, wherever the library has them. */
  void share(Words words) {
    words.shared.forEach(
        (key, ids) -> {
          for (String id : ids) {
            ConceptDraft draft = ConceptDraft.of(now(id));
            draft.flagElsewhere(key);
            put(draft);
          }
        });
  }

  void register(RegisterImport from, Words words) {
    List<Homonym> all = new ArrayList<>();
    for (Homonym homonym : from.register()) {
      List<String> ids = new ArrayList<>(homonym.concepts());
      for (String id : words.registered.getOrDefault(Folding.key(homonym.word()), Set.of())) {
        if (!ids.contains(id)) {
          ids.add(id);
          registerWords.add("“" + homonym.word() + "” may now also mean " + id);
        }
      }
      all.add(new Homonym(homonym.word(), ids, homonym.remark()));
    }
    registerWords.addAll(from.words());
    register = List.copyOf(all);
  }

  List<String> registerWords() {
    return registerWords;
  }

  void keep(ReceivedRecord record) {
    String key = key(record);
    Integer at = keptAt.get(key);
    if (at == null) {
      keptAt.put(key, kept.size());
      kept.add(record);
      keptChanges++;
    } else if (!kept.get(at).equals(record)) {
      kept.set(at, record);
      keptChanges++;
    }
  }

  private static String key(ReceivedRecord record) {
    return record.format() + '\n' + record.type() + '\n' + record.id();
  }

  int kept() {
    return keptChanges;
  }

  /** The last guard: whatever was decided, a vocabulary is not made less sound than it was. */
  void requireSound() {
    List<Concept> before = List.copyOf(vocabulary.concepts.values());
    List<Concept> after = new ArrayList<>();
    before.forEach(concept -> after.add(now(concept.id())));
    added.values().forEach(after::addAll);
    List<Facet> allFacets = new ArrayList<>(vocabulary.facets());
    allFacets.addAll(facets.values());
    Set<Violation> known =
        new HashSet<>(
            SkosIntegrity.check(vocabulary.facets(), before, vocabulary.register.value()));
    for (Violation violation : SkosIntegrity.check(allFacets, after, register)) {
      if (!known.contains(violation)) {
        throw new ChoiceException(
            "this would leave the vocabulary unsound: "
                + violation.wrong()
                + "; mend the file: "
                + violation.remedy());
      }
    }
  }

  void save(ChangeSet set) {
    for (Stored<VocabularyFile> file : vocabulary.files) {
      List<Concept> concepts = new ArrayList<>();
      for (Concept concept : file.value().concepts()) {
        // Of two concepts with one id only the first is the vocabulary's.
        boolean first = concept.equals(vocabulary.concepts.get(concept.id()));
        concepts.add(first ? now(concept.id()) : concept);
      }
      Facet facet = file.value().facet();
      concepts.addAll(added.getOrDefault(facet.id(), List.of()));
      set.save(file, new VocabularyFile(facet, concepts));
    }
    for (Facet facet : facets.values()) {
      set.add(new VocabularyFile(facet, added.get(facet.id())));
    }
    set.save(vocabulary.register, register);
    if (keptChanges > 0) {
      set.save(keptBefore, List.copyOf(kept));
    }
  }
}
