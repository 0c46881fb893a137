package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.ChangeRefusedException;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/** The vocabulary as its files had it, and as it will be. */
final class WholeVocabulary {
  private final List<Stored<VocabularyFile>> files = new ArrayList<>();
  private final Map<String, Facet> facets = new LinkedHashMap<>();
  private final Map<String, List<Concept>> byFacet = new LinkedHashMap<>();
  private final Stored<List<Homonym>> registerBefore;
  private List<Homonym> register;

  private WholeVocabulary(Stored<List<Homonym>> register) {
    this.registerBefore = register;
    this.register = register.value();
  }

  /**
   * Reads it.
   *
   * @throws ChangeRefusedException where two concepts have one id
   */
  static WholeVocabulary read(LibraryFolder folder) {
    WholeVocabulary vocabulary = new WholeVocabulary(folder.readHomonyms());
    Set<String> ids = new LinkedHashSet<>();
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.VOCABULARY) {
        Stored<VocabularyFile> stored = folder.readVocabulary(file.path());
        vocabulary.files.add(stored);
        vocabulary.addFacet(stored.value().facet());
        for (Concept concept : stored.value().concepts()) {
          if (!ids.add(concept.id())) {
            throw new ChangeRefusedException(
                "two concepts have the id "
                    + concept.id()
                    + "; run merese check, and give one of them another");
          }
          vocabulary.add(concept);
        }
      }
    }
    return vocabulary;
  }

  Thesaurus thesaurus() {
    return Thesaurus.of(List.copyOf(facets.values()), concepts(), register);
  }

  List<Concept> concepts() {
    List<Concept> all = new ArrayList<>();
    byFacet.values().forEach(all::addAll);
    return all;
  }

  List<Facet> facets() {
    return List.copyOf(facets.values());
  }

  List<Homonym> register() {
    return register;
  }

  void setRegister(List<Homonym> homonyms) {
    register = List.copyOf(homonyms);
  }

  Optional<Concept> find(String id) {
    return concepts().stream().filter(concept -> concept.id().equals(id)).findFirst();
  }

  /** The concept of an id that was there when it was typed. */
  Concept concept(String id) {
    return find(id)
        .orElseThrow(
            () -> new ChangeRefusedException("there is no concept " + id + " in the vocabulary"));
  }

  void addFacet(Facet facet) {
    facets.put(facet.id(), facet);
    byFacet.put(facet.id(), new ArrayList<>());
  }

  void add(Concept concept) {
    byFacet.get(concept.facet()).add(concept);
  }

  /**
   * Puts a concept, as it will be, in the place of one; last in its facet where that is another.
   */
  void replace(Concept old, Concept now) {
    List<Concept> from = byFacet.get(old.facet());
    int at = from.indexOf(old);
    if (old.facet().equals(now.facet())) {
      from.set(at, now);
    } else {
      from.remove(at);
      add(now);
    }
  }

  void remove(Concept concept) {
    byFacet.get(concept.facet()).remove(concept);
  }

  /** The concepts with a label of the same word (R7, without scopes), less one. */
  List<Concept> withWord(String text, String lessId) {
    String key = Folding.key(text);
    List<Concept> with = new ArrayList<>();
    for (Concept concept : concepts()) {
      if (!concept.id().equals(lessId)
          && Draft.of(concept).labels().stream()
              .anyMatch(label -> Folding.key(label.text()).equals(key))) {
        with.add(concept);
      }
    }
    return with;
  }

  /** The register's entry for a word. */
  Optional<Homonym> registered(String text) {
    String key = Folding.key(text);
    return register.stream().filter(one -> Folding.key(one.word()).equals(key)).findFirst();
  }

  void stage(Sink sink) {
    for (Stored<VocabularyFile> file : files) {
      Facet facet = file.value().facet();
      VocabularyFile now = new VocabularyFile(facet, byFacet.get(facet.id()));
      sink.save(file, now, files.stream().filter(other -> other != file).toList());
    }
    for (Facet facet : facets.values()) {
      if (files.stream().noneMatch(file -> file.value().facet().id().equals(facet.id()))) {
        sink.add(new VocabularyFile(facet, byFacet.get(facet.id())));
      }
    }
    sink.save(registerBefore, register, List.of());
  }
}
