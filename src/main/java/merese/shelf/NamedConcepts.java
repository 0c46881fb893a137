package merese.shelf;

import java.util.LinkedHashSet;
import java.util.Set;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Work;

/** The ids of the concepts that a file names, and that answers look up. */
final class NamedConcepts {
  private NamedConcepts() {}

  static Set<String> of(Work work) {
    Set<String> ids = new LinkedHashSet<>();
    for (Edition edition : work.editions()) {
      for (Note note : edition.notes()) {
        ids.addAll(of(note));
      }
      for (Check check : edition.checks()) {
        ids.add(check.concept());
      }
    }
    return ids;
  }

  static Set<String> of(Note note) {
    Set<String> ids = new LinkedHashSet<>();
    for (Naming naming : note.namings()) {
      naming.concept().ifPresent(ids::add);
    }
    return ids;
  }

  static Set<String> of(OwnObject object) {
    Set<String> ids = new LinkedHashSet<>();
    object.evidence().forEach(e -> ids.add(e.concept()));
    return ids;
  }

  static Set<String> of(Mine mine) {
    Set<String> ids = new LinkedHashSet<>();
    mine.preferences().forEach(p -> ids.add(p.concept()));
    mine.coinages().forEach(c -> ids.add(c.concept()));
    mine.experience().forEach(e -> ids.add(e.concept()));
    return ids;
  }

  /** What the vocabulary itself names, all of it together. */
  static Set<String> of(Iterable<Concept> concepts, Iterable<Homonym> register) {
    Set<String> ids = new LinkedHashSet<>();
    for (Concept concept : concepts) {
      ids.addAll(concept.broader());
      concept.lookAlikes().forEach(l -> ids.add(l.concept()));
    }
    register.forEach(homonym -> ids.addAll(homonym.concepts()));
    return ids;
  }
}
