package merese.answer;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.Ask;
import merese.model.Homonym;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.PhraseMatch;
import merese.vocabulary.Thesaurus;

/**
 * What a question may mean. A word is never guessed at: it has every meaning that the register of
 * homonyms, the labels of the vocabulary or the text of some source gives it.
 *
 * @param concepts the meanings, the likeliest first
 * @param ask why the user has to choose; empty where there is one meaning or none
 */
record Interpretation(List<String> concepts, Optional<Ask> ask) {

  static Interpretation of(Shelf shelf, CoverageQuestion question) {
    if (question.concept().isPresent()) {
      String id = question.concept().get();
      if (shelf.thesaurus().concept(id).isEmpty()) {
        throw UnknownConceptException.of(shelf.thesaurus(), id);
      }
      return new Interpretation(List.of(id), Optional.empty());
    }
    return of(shelf, question.phrase().get(), question.facet());
  }

  private static Interpretation of(Shelf shelf, String phrase, Optional<String> facet) {
    Optional<String> plain = plainMeaning(shelf, phrase, facet);
    if (plain.isPresent()) {
      return new Interpretation(List.of(plain.get()), Optional.empty());
    }
    Thesaurus thesaurus = shelf.thesaurus();
    if (facet.isPresent() && thesaurus.facet(facet.get()).isEmpty()) {
      throw UnknownConceptException.ofFacet(thesaurus, facet.get());
    }
    PhraseMatch match = thesaurus.match(phrase, facet);
    Set<String> concepts = new LinkedHashSet<>();
    for (PhraseMatch.Meaning meaning : match.meanings()) {
      concepts.add(meaning.concept().id());
    }
    addMeaningsInPrint(shelf, phrase, facet, concepts);
    if (match.meanings().isEmpty()) {
      for (PhraseMatch.Completion completion : match.completions()) {
        concepts.add(completion.concept().id());
      }
    }
    if (concepts.isEmpty()) {
      addMeaningsOfWhatHolds(shelf, phrase, facet, concepts);
    }
    List<String> ordered = List.copyOf(concepts);
    return new Interpretation(ordered, ask(match, ordered));
  }

  /**
   * The one meaning of a phrase that is the label of one concept, is not in the register and means
   * nothing else in print: most questions, answered without the labels of the whole vocabulary.
   */
  private static Optional<String> plainMeaning(Shelf shelf, String phrase, Optional<String> facet) {
    Set<String> concepts = new LinkedHashSet<>(shelf.meanings(List.of(phrase)).get(phrase));
    if (facet.isPresent() || concepts.size() != 1) {
      return Optional.empty();
    }
    for (Homonym homonym : shelf.thesaurus().register()) {
      if (shelf.thesaurus().areSameWords(homonym.word(), phrase)) {
        return Optional.empty();
      }
    }
    addMeaningsInPrint(shelf, phrase, facet, concepts);
    return concepts.size() == 1 ? Optional.of(concepts.iterator().next()) : Optional.empty();
  }

  private static Optional<Ask> ask(PhraseMatch match, List<String> concepts) {
    if (match.register().isPresent()) {
      return Optional.of(
          new Ask("the word is used for more than one thing", match.register().get().remark()));
    } else if (match.meanings().isEmpty() && !match.completions().isEmpty()) {
      return Optional.of(
          new Ask("a word is left out that would tell what it is of", Optional.empty()));
    } else if (concepts.size() > 1) {
      return Optional.of(
          new Ask("the word has " + concepts.size() + " meanings", Optional.empty()));
    }
    return Optional.empty();
  }

  /**
   * Adds what sources that print just the phrase give it as its meaning in their text. Something
   * narrower than a meaning that is known is no other meaning: its notes are among those asked for.
   */
  private static void addMeaningsInPrint(
      Shelf shelf, String phrase, Optional<String> facet, Set<String> concepts) {
    Thesaurus thesaurus = shelf.thesaurus();
    for (SourcedNote found : shelf.notes(Words.printedAs(thesaurus, phrase))) {
      for (Naming naming : found.note().namings()) {
        if (naming.why().isPresent()
            && naming.why().get() == Why.TEXT
            && thesaurus.areSameWords(naming.printed(), phrase)
            && isIn(thesaurus, facet, naming.concept().get())
            && !isBelow(thesaurus, naming.concept().get(), concepts)) {
          concepts.add(naming.concept().get());
        }
      }
    }
  }

  private static boolean isIn(Thesaurus thesaurus, Optional<String> facet, String concept) {
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

  /** Adds the meanings of all printed terms that hold the phrase. */
  private static void addMeaningsOfWhatHolds(
      Shelf shelf, String phrase, Optional<String> facet, Set<String> concepts) {
    Words words = new Words(shelf.thesaurus(), List.of(phrase));
    List<NoteCriterion> criteria = words.criteria();
    for (SourcedNote found : shelf.notes(criteria)) {
      for (Naming naming : found.note().namings()) {
        if (naming.concept().isPresent()
            && words.occurIn(naming.printed())
            && isIn(shelf.thesaurus(), facet, naming.concept().get())) {
          concepts.add(naming.concept().get());
        }
      }
    }
  }
}
