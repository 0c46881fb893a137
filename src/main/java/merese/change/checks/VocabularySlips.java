package merese.change.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.CharacterKey;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Scope;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.Folding;

/** Concepts that hang on nothing, and labels that are taken for one another unawares. */
final class VocabularySlips {
  /** A label with the concept that has it. */
  private record Labelled(Concept concept, Concept.Label label) {}

  private final Findings findings;
  private final Map<String, Stored<VocabularyFile>> files = new HashMap<>();
  private final Map<String, Concept> concepts = new LinkedHashMap<>();
  private final Set<String> ordered = new HashSet<>();
  private final Set<String> parents = new HashSet<>();
  private final Set<String> used = new HashSet<>();
  private final Set<String> registered = new HashSet<>();
  private Set<String> starter;

  VocabularySlips(Findings findings) {
    this.findings = findings;
  }

  void add(Stored<VocabularyFile> file) {
    for (Concept concept : file.value().concepts()) {
      concepts.put(concept.id(), concept);
      files.put(concept.id(), file);
      if (!concept.broader().isEmpty()) {
        ordered.add(concept.facet());
      }
      parents.addAll(concept.broader());
    }
  }

  void register(List<Homonym> homonyms) {
    homonyms.forEach(homonym -> registered.add(Folding.key(homonym.word())));
  }

  void use(Work work) {
    for (Edition edition : work.editions()) {
      edition.scope().ifPresent(this::use);
      for (Note note : edition.notes()) {
        for (Naming naming : note.namings()) {
          naming.concept().ifPresent(used::add);
        }
      }
      for (Check check : edition.checks()) {
        used.add(check.concept());
        check.scope().ifPresent(this::use);
      }
    }
  }

  private void use(Scope scope) {
    used.addAll(scope.concepts());
  }

  void use(OwnObject object) {
    object.evidence().forEach(evidence -> used.add(evidence.concept()));
  }

  void use(Mine mine) {
    mine.preferences().forEach(preference -> used.add(preference.concept()));
    mine.coinages().forEach(coinage -> used.add(coinage.concept()));
    mine.experience().forEach(experience -> used.add(experience.concept()));
  }

  void use(CharacterKey key) {
    key.kinds().forEach(kind -> used.add(kind.concept()));
  }

  void look() {
    Map<String, List<Labelled>> labels = new HashMap<>();
    for (Concept concept : concepts.values()) {
      home(concept);
      repeated(concept, concept.alternatives(), "altLabels");
      repeated(concept, concept.hidden(), "hiddenLabels");
      List<Concept.Label> shown = new ArrayList<>();
      shown.add(concept.preferred());
      shown.addAll(concept.alternatives());
      for (Concept.Label label : shown) {
        alike(new Labelled(concept, label), labels);
      }
    }
  }

  /** With a scope or marked as used elsewhere, it is known to stand for several things. */
  private void alike(Labelled one, Map<String, List<Labelled>> labels) {
    String key = Folding.key(one.label().text());
    if (one.label().scope().isPresent()
        || one.label().elsewhere()
        || key.isEmpty()
        || registered.contains(key)) {
      return;
    }
    List<Labelled> others = labels.computeIfAbsent(key, k -> new ArrayList<>(1));
    for (Labelled other : others) {
      if (!other.concept().id().equals(one.concept().id())) {
        warn(
            one.concept(),
            "the label \""
                + one.label().text()
                + "\" is taken for \""
                + other.label().text()
                + "\" of "
                + other.concept().id()
                + ": folded, they are one",
            "if the word stands for both, enter it in homonyms.json; else make it one concept, or"
                + " give one of the two another label",
            one.label().text());
        break;
      }
    }
    others.add(one);
  }

  /** Where a facet is a plain list, or as the starter has it, a concept may well stand alone. */
  private void home(Concept concept) {
    boolean alone = concept.broader().isEmpty() && !parents.contains(concept.id());
    if (!alone || !ordered.contains(concept.facet()) || isOfTheStarter(concept)) {
      return;
    }
    boolean idle = !used.contains(concept.id());
    warn(
        concept,
        concept.id()
            + " stands alone in \""
            + concept.facet()
            + "\": nothing is broader or narrower"
            + (idle ? ", and nothing uses it" : ""),
        "say under \"broader\" what it is a kind of" + (idle ? ", or take it away" : ""));
  }

  private boolean isOfTheStarter(Concept concept) {
    if (starter == null) {
      starter = LibraryFolder.starterConcepts();
    }
    return starter.contains(concept.id());
  }

  private void repeated(Concept concept, List<Concept.Label> labels, String where) {
    Set<Concept.Label> seen = new HashSet<>();
    for (Concept.Label label : labels) {
      if (!seen.add(label)) {
        warn(
            concept,
            concept.id() + " has \"" + label.text() + "\" twice among its " + where,
            "keep one of them; merese check --fix does it",
            where,
            label.text(),
            label.text());
      }
    }
  }

  private void warn(Concept concept, String what, String remedy, String... values) {
    Stored<VocabularyFile> file = files.get(concept.id());
    findings.warn(
        file, Position.within(file.content(), "id", concept.id(), values), "", what, remedy);
  }
}
