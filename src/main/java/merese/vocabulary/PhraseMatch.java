package merese.vocabulary;

import java.util.List;
import java.util.Optional;
import merese.model.Concept;
import merese.model.Homonym;

/**
 * What a phrase may mean by the vocabulary alone; what printed terms add is for the notes to say.
 *
 * @param phrase as it was asked
 * @param meanings in the register's order where the phrase is in it, else preferred labels first;
 *     empty where no label equals the phrase
 * @param register the register's entry for the phrase
 * @param reasons why the user has to be asked which concept is meant; empty where nothing is in
 *     doubt
 * @param completions whole labels that the phrase would be with its missing noun, to be offered;
 *     not looked for where the facet was given
 */
public record PhraseMatch(
    String phrase,
    List<Meaning> meanings,
    Optional<Homonym> register,
    List<Reason> reasons,
    List<Completion> completions) {

  public PhraseMatch {
    meanings = List.copyOf(meanings);
    reasons = List.copyOf(reasons);
    completions = List.copyOf(completions);
  }

  /** Why it must be asked, never guessed, which concept is meant. */
  public enum Reason {
    /** The word is in the register of homonyms. */
    IN_REGISTER,
    /** Labels of several concepts equal the phrase. */
    SEVERAL_CONCEPTS,
    /** No label equals the phrase, but some do with a noun added. */
    NOUN_MISSING
  }

  /** What kind of label it was that equalled a phrase, the best first. */
  public enum LabelKind {
    PREFERRED,
    ALTERNATIVE,
    HIDDEN
  }

  /** A label as it stands in the vocabulary. */
  public record MatchedLabel(Concept.Label label, LabelKind kind) {}

  /**
   * One concept that the phrase may mean.
   *
   * @param labels those of its labels that equal the phrase, the best first; empty where only the
   *     register gives it
   * @param inRegister whether the register gives it for the phrase
   */
  public record Meaning(Concept concept, List<MatchedLabel> labels, boolean inRegister) {
    public Meaning {
      labels = List.copyOf(labels);
    }

    /** Whether the word is marked as also used for something else (‡). */
    public boolean elsewhere() {
      for (MatchedLabel matched : labels) {
        if (matched.label().elsewhere()) {
          return true;
        }
      }
      return false;
    }
  }

  /**
   * A label that the phrase would be with a noun added.
   *
   * @param phrase the whole label, or the whole word of the register
   */
  public record Completion(String phrase, Concept concept) {}

  /** Whether the vocabulary knows the phrase as it stands. */
  public boolean found() {
    return !meanings.isEmpty();
  }

  public boolean mustAsk() {
    return !reasons.isEmpty();
  }

  /** The one concept meant; empty where there is none or where it has to be asked. */
  public Optional<Concept> clear() {
    return meanings.size() == 1 && !mustAsk()
        ? Optional.of(meanings.get(0).concept())
        : Optional.empty();
  }
}
