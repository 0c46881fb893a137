package merese.change.concepts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.concepts.ConceptResult.Candidate;
import merese.change.concepts.ConceptResult.Kind;
import merese.change.concepts.ConceptResult.Question;
import merese.model.Concept;
import merese.model.Homonym;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/** Watches that no word of the library gets a second meaning unless the user has said so. */
final class Words {
  private final Vocabulary vocabulary;
  private final ConceptOptions options;
  private final Set<String> answersUsed;
  private final List<Question> questions = new ArrayList<>();

  /** The words that now mean something else too, with the library's concepts that have them. */
  final Map<String, Set<String>> shared = new LinkedHashMap<>();

  /** The words of the register that a concept is to be added to. */
  final Map<String, Set<String>> registered = new LinkedHashMap<>();

  Words(Vocabulary vocabulary, ConceptOptions options, Set<String> answersUsed) {
    this.vocabulary = vocabulary;
    this.options = options;
    this.answersUsed = answersUsed;
  }

  List<Question> questions() {
    return questions;
  }

  /**
   * The label as a concept may have it: as it is where the word is new, or the file itself says
   * that it is also used for something else; said to be so where the user wants it; empty, with a
   * question, otherwise.
   */
  Optional<Concept.Label> allowed(Concept.Label label, String id, Understood concept) {
    String key = Vocabulary.key(label);
    Set<String> others = new LinkedHashSet<>(vocabulary.withWord(key));
    others.remove(id);
    Optional<Homonym> homonym =
        vocabulary.registered(key).filter(one -> !one.concepts().contains(id));
    if (key.isEmpty() || (others.isEmpty() && homonym.isEmpty()) || label.elsewhere()) {
      return Optional.of(label);
    }
    if (!isAnswered(label)) {
      ask(label, others, homonym, concept);
      return Optional.empty();
    }
    return Optional.of(share(label, id));
  }

  /** A label that the user wants in spite of other meanings. */
  Concept.Label share(Concept.Label label, String id) {
    String key = Vocabulary.key(label);
    Set<String> others = new LinkedHashSet<>(vocabulary.withWord(key));
    others.remove(id);
    shared.computeIfAbsent(key, k -> new LinkedHashSet<>()).addAll(others);
    if (vocabulary.registered(key).filter(one -> !one.concepts().contains(id)).isPresent()) {
      registered.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(id);
    }
    return new Concept.Label(label.text(), label.scope(), true);
  }

  private boolean isAnswered(Concept.Label label) {
    for (Map.Entry<String, String> answer : options.answers().entrySet()) {
      if (answer.getValue().equals(ConceptOptions.TAKE)
          && Folding.key(answer.getKey()).equals(Vocabulary.key(label))) {
        answersUsed.add(answer.getKey());
        return true;
      }
    }
    return false;
  }

  private void ask(
      Concept.Label label, Set<String> others, Optional<Homonym> homonym, Understood concept) {
    Set<String> all = new LinkedHashSet<>(others);
    homonym.ifPresent(one -> all.addAll(one.concepts()));
    List<Candidate> candidates = new ArrayList<>();
    for (String other : all) {
      Concept there = vocabulary.concepts.get(other);
      if (there != null) {
        candidates.add(new Candidate(other, vocabulary.label(other), there.definition()));
      }
    }
    String words =
        "“"
            + label.text()
            + "” has a meaning here; should it also mean “"
            + Thesaurus.display(concept.preferred())
            + "”?";
    questions.add(
        new Question(
            Kind.SECOND_MEANING,
            concept.uri(),
            Thesaurus.display(concept.preferred()),
            words,
            candidates,
            List.of(label.text() + "=" + ConceptOptions.TAKE)));
  }
}
