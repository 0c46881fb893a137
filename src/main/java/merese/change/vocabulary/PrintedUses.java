package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.vocabulary.Thesaurus;

/**
 * What sources print: the terms for a concept, and who prints a word. The user's own works do not
 * count.
 */
final class PrintedUses {
  private final Thesaurus thesaurus;
  private final String concept;
  private final String label;
  private final List<Use> namings = new ArrayList<>();
  private final List<Use> words = new ArrayList<>();

  /**
   * One printed term.
   *
   * @param source the key of the edition
   * @param concept what it means there; "" where that is open
   */
  record Use(String source, String place, String printed, String concept) {}

  private PrintedUses(Thesaurus thesaurus, String concept, String label) {
    this.thesaurus = thesaurus;
    this.concept = concept;
    this.label = label;
  }

  static PrintedUses of(LibraryFolder folder, Thesaurus thesaurus, String concept, String label) {
    PrintedUses uses = new PrintedUses(thesaurus, concept, label);
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        Work work = folder.readWork(file.path()).value();
        if (!work.mine()) {
          work.editions().forEach(uses::read);
        }
      }
    }
    return uses;
  }

  private void read(Edition edition) {
    for (Note note : edition.notes()) {
      for (Naming naming : note.namings()) {
        if (naming.printed().isBlank()) {
          continue;
        }
        String place =
            note.placesOf(naming).stream()
                .findFirst()
                .orElse(note.places().get(0))
                .locator()
                .printed();
        Use use = new Use(edition.key(), place, naming.printed(), naming.concept().orElse(""));
        if (naming.means(concept)) {
          namings.add(use);
        }
        if (thesaurus.areSameWords(naming.printed(), label)) {
          words.add(use);
        }
      }
    }
  }

  /** The terms by which sources name the concept. */
  List<Use> namings() {
    return namings;
  }

  /** Where the word is printed, whatever it means there. */
  List<Use> words() {
    return words;
  }

  /** The sources of some uses, the first few named. */
  static String sources(List<Use> uses) {
    Set<String> sources = new LinkedHashSet<>();
    uses.forEach(use -> sources.add(use.source()));
    List<String> few = sources.stream().limit(3).toList();
    return String.join(", ", few)
        + (sources.size() > few.size() ? " and " + (sources.size() - few.size()) + " more" : "");
  }
}
