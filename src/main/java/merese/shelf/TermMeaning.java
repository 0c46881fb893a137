package merese.shelf;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Homonym;
import merese.vocabulary.PhraseMatch;
import merese.vocabulary.Thesaurus;

/**
 * What a term may mean (R7). A word is never guessed at: it has every meaning that the register of
 * homonyms, the labels of the vocabulary or the text of some source gives it.
 *
 * @param concepts ids, the likeliest first; none for a term that is in no vocabulary and no text
 * @param doubt why somebody has to choose; empty where there is one meaning or none
 */
public record TermMeaning(List<String> concepts, Optional<Doubt> doubt) {
  /**
   * Why a term does not tell what it means.
   *
   * @param remark of the register of homonyms
   */
  public record Doubt(String reason, Optional<String> remark) {}

  public TermMeaning {
    concepts = List.copyOf(concepts);
  }

  /**
   * @param facet what the term is of, where a heading says so; the name of a facet that is there
   */
  public static TermMeaning of(Lexicon lexicon, String term, Optional<String> facet) {
    Optional<String> plain = plain(lexicon, term, facet);
    if (plain.isPresent()) {
      return new TermMeaning(List.of(plain.get()), Optional.empty());
    }
    PhraseMatch match = lexicon.thesaurus().match(term, facet);
    Set<String> concepts = new LinkedHashSet<>();
    for (PhraseMatch.Meaning meaning : match.meanings()) {
      concepts.add(meaning.concept().id());
    }
    addMeaningsInText(lexicon, term, facet, concepts);
    if (match.meanings().isEmpty()) {
      for (PhraseMatch.Completion completion : match.completions()) {
        concepts.add(completion.concept().id());
      }
    }
    List<String> ordered = List.copyOf(concepts);
    return new TermMeaning(ordered, doubt(match, ordered));
  }

  /**
   * The one meaning of a term that is the label of one concept, is not in the register and means
   * nothing else in a text: most terms, and without the labels of the whole vocabulary.
   */
  private static Optional<String> plain(Lexicon lexicon, String term, Optional<String> facet) {
    Set<String> concepts = new LinkedHashSet<>(lexicon.meanings(List.of(term)).get(term));
    if (facet.isPresent() || concepts.size() != 1) {
      return Optional.empty();
    }
    for (Homonym homonym : lexicon.thesaurus().register()) {
      if (lexicon.thesaurus().areSameWords(homonym.word(), term)) {
        return Optional.empty();
      }
    }
    addMeaningsInText(lexicon, term, facet, concepts);
    return concepts.size() == 1 ? Optional.of(concepts.iterator().next()) : Optional.empty();
  }

  private static Optional<Doubt> doubt(PhraseMatch match, List<String> concepts) {
    if (match.register().isPresent()) {
      return Optional.of(
          new Doubt("the word is used for more than one thing", match.register().get().remark()));
    } else if (match.meanings().isEmpty() && !match.completions().isEmpty()) {
      return Optional.of(
          new Doubt("a word is left out that would tell what it is of", Optional.empty()));
    } else if (concepts.size() > 1) {
      return Optional.of(
          new Doubt("the word has " + concepts.size() + " meanings", Optional.empty()));
    }
    return Optional.empty();
  }

  /**
   * Something narrower than a meaning that is known is no other meaning: its notes are among those
   * asked for.
   */
  private static void addMeaningsInText(
      Lexicon lexicon, String term, Optional<String> facet, Set<String> concepts) {
    Thesaurus thesaurus = lexicon.thesaurus();
    for (String concept : lexicon.meaningsInText(term)) {
      if (isIn(thesaurus, facet, concept) && !isBelow(thesaurus, concept, concepts)) {
        concepts.add(concept);
      }
    }
  }

  /** Whether a concept is of a facet, where one is named. */
  public static boolean isIn(Thesaurus thesaurus, Optional<String> facet, String concept) {
    if (facet.isEmpty()) {
      return true;
    }
    String id = thesaurus.facet(facet.get()).orElseThrow().id();
    return thesaurus.concept(concept).orElseThrow().facet().equals(id);
  }

  private static boolean isBelow(Thesaurus thesaurus, String concept, Collection<String> others) {
    for (String other : others) {
      if (thesaurus.isBroader(other, concept)) {
        return true;
      }
    }
    return false;
  }
}
