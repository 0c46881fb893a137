package merese.change.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.SkosIntegrity.Violation;

/** Holds a whole vocabulary to the integrity conditions of SKOS, and says where it fails them. */
final class VocabularyCheck {
  private final LibraryFolder folder;
  private final List<Facet> facets = new ArrayList<>();
  private final List<Concept> concepts = new ArrayList<>();
  private final List<Homonym> register = new ArrayList<>();
  private final Map<String, Stored<VocabularyFile>> files = new LinkedHashMap<>();
  private boolean complete = true;

  VocabularyCheck(LibraryFolder folder) {
    this.folder = folder;
  }

  void add(Stored<VocabularyFile> file) {
    facets.add(file.value().facet());
    concepts.addAll(file.value().concepts());
    file.value().concepts().forEach(concept -> files.putIfAbsent(concept.id(), file));
  }

  void register(Stored<List<Homonym>> homonyms) {
    register.addAll(homonyms.value());
  }

  /** That a file could not be read; a vocabulary in part is not judged. */
  void lacks(LibraryFile file) {
    complete &= file.kind() != LibraryFile.Kind.VOCABULARY;
  }

  boolean isComplete() {
    return complete;
  }

  int size() {
    return concepts.size();
  }

  /** Nothing where a file is lacking: what is said of half a vocabulary may not be true. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    if (complete) {
      for (Violation violation : SkosIntegrity.check(facets, concepts, register)) {
        problems.add(problem(violation));
      }
    }
    return problems;
  }

  private Problem problem(Violation violation) {
    String what = violation.wrong();
    String id = violation.subjects().get(0);
    Stored<VocabularyFile> file = files.get(id);
    if (file == null) {
      return new Problem(
          folder.resolve("vocabulary"), 0, 0, "", what, violation.remedy(), Severity.ERROR);
    }
    Position at = Position.of(file.content(), "concepts", id);
    return new Problem(
        file.file(), at.line(), at.column(), "", what, violation.remedy(), Severity.ERROR);
  }
}
