package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
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
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/** Says of each concept of a file whether the library has it. */
final class Matching {
  /** What a concept of a file is to the library. */
  sealed interface Found {}

  /**
   * @param certain false where only the label says so
   */
  record Same(String id, String why, boolean certain) implements Found {}

  /**
   * @param asked that the user has said so, although its label is one of the library's
   */
  record New(boolean asked) implements Found {}

  record Asked(Question question) implements Found {}

  private final Vocabulary vocabulary;
  private final ConceptOptions options;
  private final Set<String> answersUsed;

  /**
   * @param answersUsed takes the keys of the answers that fitted
   */
  Matching(Vocabulary vocabulary, ConceptOptions options, Set<String> answersUsed) {
    this.vocabulary = vocabulary;
    this.options = options;
    this.answersUsed = answersUsed;
  }

  /** By the addresses of the concepts, in their order. */
  Map<String, Found> all(List<Understood> concepts) {
    Map<String, Found> found = new LinkedHashMap<>();
    Map<String, Understood> takenBy = new HashMap<>();
    for (boolean certain : new boolean[] {true, false}) {
      for (Understood concept : concepts) {
        Found one = certain ? byIdentity(concept) : byLabel(concept);
        if (found.containsKey(concept.uri()) || one == null) {
          continue;
        }
        if (one instanceof Same same) {
          Understood other = takenBy.putIfAbsent(same.id(), concept);
          if (other != null) {
            String taken = Thesaurus.display(other.preferred());
            one = asked(concept, List.of(same.id()), "“" + taken + "” of the file is that already");
          }
        }
        found.put(concept.uri(), one);
      }
    }
    return found;
  }

  /** That the user says it is new counts only where it is not here yet. */
  private Found byIdentity(Understood concept) {
    Found answered = answered(concept);
    if (answered instanceof Same) {
      return answered;
    }
    Found known = known(concept);
    return known == null ? answered : known;
  }

  private Found known(Understood concept) {
    if (concept.ownId().isPresent()) {
      String id = concept.ownId().get();
      return vocabulary.concepts.containsKey(id) ? new Same(id, "same address", true) : null;
    }
    Set<String> linked = new LinkedHashSet<>(vocabulary.exactly(concept.uri()));
    String why = "exact match of " + concept.uri();
    if (linked.isEmpty()) {
      for (Concept.Match match : concept.source().matches()) {
        if (match.kind() == Concept.Match.Kind.EXACT_MATCH) {
          options.addresses().conceptId(match.uri()).ifPresent(linked::add);
          linked.addAll(vocabulary.exactly(match.uri()));
          why = "both are exact matches of " + match.uri();
        }
      }
      linked.retainAll(vocabulary.concepts.keySet());
    }
    if (linked.size() > 1) {
      return asked(concept, List.copyOf(linked), why);
    }
    if (linked.size() == 1) {
      return new Same(linked.iterator().next(), why, true);
    }
    if (!concept.source().isAddressed()) {
      String id = NewIds.wanted(concept);
      Concept here = vocabulary.concepts.get(id);
      if (here != null
          && Vocabulary.key(here.preferred()).equals(Vocabulary.key(concept.preferred()))) {
        return new Same(id, "same id and label", true);
      }
    }
    for (String notation : concept.source().notations()) {
      if (vocabulary.concepts.containsKey(notation)) {
        return new Same(notation, "its notation is the id", true);
      }
    }
    return null;
  }

  private Found byLabel(Understood concept) {
    String key = Vocabulary.key(concept.preferred());
    Set<String> candidates = new LinkedHashSet<>(vocabulary.preferring(key));
    candidates.addAll(vocabulary.withWord(key));
    vocabulary.registered(key).ifPresent(homonym -> candidates.addAll(homonym.concepts()));
    candidates.retainAll(vocabulary.concepts.keySet());
    if (candidates.isEmpty() || concept.ownId().isPresent() && isFlagged(concept)) {
      return new New(false);
    }
    List<String> displayed = new ArrayList<>();
    String whole = Folding.key(Thesaurus.display(concept.preferred()));
    for (String id : vocabulary.preferring(key)) {
      if (Folding.key(vocabulary.label(id)).equals(whole)) {
        displayed.add(id);
      }
    }
    boolean only = candidates.size() == 1 && vocabulary.registered(key).isEmpty();
    boolean scoped = concept.preferred().scope().isPresent();
    if (displayed.size() == 1 && (only || scoped)) {
      return new Same(displayed.get(0), "same preferred label", false);
    }
    return asked(concept, List.copyOf(candidates), "the library has the word");
  }

  private static boolean isFlagged(Understood concept) {
    return concept.preferred().elsewhere();
  }

  private Found answered(Understood concept) {
    for (String key : keys(concept)) {
      String answer = options.answers().get(key);
      if (answer != null && !answer.equals(ConceptOptions.TAKE)) {
        answersUsed.add(key);
        if (answer.equals(ConceptOptions.NEW)) {
          return new New(true);
        }
        if (!vocabulary.concepts.containsKey(answer)) {
          throw new ChoiceException(
              key
                  + "="
                  + answer
                  + ": the library has no concept with the id \""
                  + answer
                  + "\"; give one that it has, or \""
                  + ConceptOptions.NEW
                  + "\"");
        }
        return new Same(answer, "you said so", true);
      }
    }
    return null;
  }

  /** What the user may call a concept of the file. */
  static List<String> keys(Understood concept) {
    List<String> keys = new ArrayList<>();
    keys.add(concept.uri());
    concept.ownId().ifPresent(keys::add);
    keys.addAll(concept.source().notations());
    keys.add(Thesaurus.display(concept.preferred()));
    keys.add(concept.preferred().text());
    return keys;
  }

  private Asked asked(Understood concept, List<String> ids, String why) {
    String label = Thesaurus.display(concept.preferred());
    List<Candidate> candidates = new ArrayList<>();
    List<String> answers = new ArrayList<>();
    for (String id : ids) {
      candidates.add(candidate(id));
      answers.add(label + "=" + id);
    }
    answers.add(label + "=" + ConceptOptions.NEW);
    String words = "Is “" + label + "” one of these, or new? (" + why + ")";
    return new Asked(
        new Question(Kind.SAME_OR_NEW, concept.uri(), label, words, candidates, answers));
  }

  private Candidate candidate(String id) {
    Optional<Concept> concept = Optional.ofNullable(vocabulary.concepts.get(id));
    String definition = concept.map(Concept::definition).orElse("");
    return new Candidate(id, vocabulary.label(id), definition);
  }
}
