package merese.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.search.IndexedFile;
import merese.shelf.LibraryReading.Read;
import merese.store.LibraryFile;
import merese.store.LibraryFile.Kind;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.VocabularyFile;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.Thesaurus;

/**
 * The vocabulary as it stands now, with what has to be indexed of it. A vocabulary that breaks an
 * integrity condition of SKOS is a problem of the library.
 */
final class VocabularyReading {
  private final Thesaurus thesaurus;
  private final List<IndexedFile> files;

  private VocabularyReading(Thesaurus thesaurus, List<IndexedFile> files) {
    this.thesaurus = thesaurus;
    this.files = files;
  }

  Thesaurus thesaurus() {
    return thesaurus;
  }

  /** The files of the vocabulary that were read. */
  List<IndexedFile> files() {
    return files;
  }

  static VocabularyReading unchanged(Thesaurus thesaurus) {
    return new VocabularyReading(thesaurus, List.of());
  }

  /** Reads all files of the vocabulary. */
  static VocabularyReading of(
      LibraryFolder folder, LibraryReading reading, List<LibraryFile> files) {
    return read(folder, reading, files, Thesaurus.of(List.of(), List.of(), List.of()));
  }

  /** Reads the files that changed; what the others hold is known from the index. */
  static VocabularyReading changed(
      LibraryFolder folder, LibraryReading reading, Changes changes, Thesaurus before) {
    Set<String> gone = new HashSet<>();
    for (Facet facet : before.facets()) {
      if (changes.concerns(path(facet.id()))) {
        gone.add(facet.id());
      }
    }
    boolean registerStays = !changes.concerns(path("homonyms"));
    Thesaurus kept =
        Thesaurus.of(
            before.facets().stream().filter(f -> !gone.contains(f.id())).toList(),
            before.concepts().stream().filter(c -> !gone.contains(c.facet())).toList(),
            registerStays ? before.register() : List.of());
    return read(folder, reading, changes.changed(), kept);
  }

  private static VocabularyReading read(
      LibraryFolder folder, LibraryReading reading, List<LibraryFile> files, Thesaurus kept) {
    List<Facet> facets = new ArrayList<>(kept.facets());
    List<Concept> concepts = new ArrayList<>(kept.concepts());
    List<Homonym> register = new ArrayList<>(kept.register());
    List<Read<VocabularyFile>> facetFiles = new ArrayList<>();
    List<Read<List<Homonym>>> registers = new ArrayList<>();
    for (LibraryFile file : files) {
      if (file.kind() == Kind.VOCABULARY) {
        reading.read(file, folder::readVocabulary).ifPresent(facetFiles::add);
      } else if (file.kind() == Kind.HOMONYMS) {
        reading.read(file, path -> folder.readHomonyms()).ifPresent(registers::add);
      }
    }
    for (Read<VocabularyFile> read : facetFiles) {
      facets.add(read.value().facet());
      concepts.addAll(read.value().concepts());
    }
    registers.forEach(read -> register.addAll(read.value()));
    facets.sort(Comparator.comparing(f -> path(f.id())));
    concepts.sort(Comparator.comparing(c -> path(c.facet())));
    if (reading.problems().isEmpty()) {
      requireIntegrity(folder, reading, facets, concepts, register);
    }
    Thesaurus thesaurus = Thesaurus.of(facets, concepts, register);
    ForIndex maker = new ForIndex(thesaurus);
    List<IndexedFile> indexed = new ArrayList<>();
    facetFiles.forEach(read -> indexed.add(maker.vocabulary(read.stamp(), read.value())));
    registers.forEach(read -> indexed.add(maker.homonyms(read.stamp(), read.value())));
    return new VocabularyReading(thesaurus, indexed);
  }

  private static void requireIntegrity(
      LibraryFolder folder,
      LibraryReading reading,
      List<Facet> facets,
      List<Concept> concepts,
      List<Homonym> register) {
    for (SkosIntegrity.Violation violation : SkosIntegrity.check(facets, concepts, register)) {
      reading.add(
          new Problem(
              folder.resolve("vocabulary"),
              0,
              0,
              "",
              violation.wrong() + " (" + violation.condition() + ")",
              violation.remedy(),
              Problem.Severity.ERROR));
    }
  }

  private static String path(String name) {
    return "vocabulary/" + name + ".json";
  }
}
