package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.skos.SkosAddresses;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/** The vocabulary of a library as its files have it, with what is looked up in it. */
final class Vocabulary {
  final List<Stored<VocabularyFile>> files = new ArrayList<>();
  final Map<String, Concept> concepts = new LinkedHashMap<>();
  final Stored<List<Homonym>> register;
  private final Map<String, Set<String>> byWord = new HashMap<>();
  private final Map<String, Set<String>> byPreferred = new HashMap<>();
  private final Map<String, Set<String>> byExactMatch = new HashMap<>();
  private final Map<String, Homonym> registered = new HashMap<>();

  private Vocabulary(Stored<List<Homonym>> register) {
    this.register = register;
  }

  static Vocabulary of(LibraryFolder folder) {
    Vocabulary vocabulary = new Vocabulary(folder.readHomonyms());
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.VOCABULARY) {
        Stored<VocabularyFile> stored = folder.readVocabulary(file.path());
        vocabulary.files.add(stored);
        for (Concept concept : stored.value().concepts()) {
          vocabulary.concepts.putIfAbsent(concept.id(), concept);
        }
      }
    }
    vocabulary.index();
    return vocabulary;
  }

  private void index() {
    for (Concept concept : concepts.values()) {
      add(byPreferred, key(concept.preferred()), concept.id());
      for (Concept.Label label : labels(concept)) {
        add(byWord, key(label), concept.id());
      }
      for (Concept.Match match : concept.matches()) {
        if (match.kind() == Concept.Match.Kind.EXACT_MATCH) {
          add(byExactMatch, match.uri(), concept.id());
        }
      }
    }
    for (Homonym homonym : register.value()) {
      registered.putIfAbsent(Folding.key(homonym.word()), homonym);
    }
  }

  private static void add(Map<String, Set<String>> map, String key, String id) {
    map.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(id);
  }

  /** What two labels are compared by: R7, without their scopes. */
  static String key(Concept.Label label) {
    return Folding.key(label.text());
  }

  static List<Concept.Label> labels(Concept concept) {
    List<Concept.Label> all = new ArrayList<>();
    all.add(concept.preferred());
    all.addAll(concept.alternatives());
    all.addAll(concept.hidden());
    return all;
  }

  /** The concepts with a label of the word. */
  Set<String> withWord(String key) {
    return byWord.getOrDefault(key, Set.of());
  }

  /** The concepts with that preferred label. */
  Set<String> preferring(String key) {
    return byPreferred.getOrDefault(key, Set.of());
  }

  Set<String> exactly(String uri) {
    return byExactMatch.getOrDefault(uri, Set.of());
  }

  /** The concept that has an address, as its own or as that of its one exact match. */
  Optional<String> concept(String uri, SkosAddresses addresses) {
    Optional<String> own = addresses.conceptId(uri);
    if (own.isPresent()) {
      return own.filter(concepts::containsKey);
    }
    Set<String> linked = exactly(uri);
    return linked.size() == 1 ? Optional.of(linked.iterator().next()) : Optional.empty();
  }

  Optional<Homonym> registered(String key) {
    return Optional.ofNullable(registered.get(key));
  }

  List<Facet> facets() {
    return files.stream().map(file -> file.value().facet()).toList();
  }

  /** For looking up facets by name. */
  Thesaurus thesaurus() {
    return Thesaurus.of(facets(), List.copyOf(concepts.values()), register.value());
  }

  String label(String id) {
    Concept concept = concepts.get(id);
    return concept == null ? id : Thesaurus.display(concept.preferred());
  }
}
