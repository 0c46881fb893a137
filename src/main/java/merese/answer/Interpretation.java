package merese.answer;

import java.util.ArrayList;
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
    Thesaurus thesaurus = shelf.thesaurus();
    if (facet.isPresent() && thesaurus.facet(facet.get()).isEmpty()) {
      throw UnknownConceptException.ofFacet(thesaurus, facet.get());
    }
    PhraseMatch match = thesaurus.match(phrase, facet);
    Set<String> concepts = new LinkedHashSet<>();
    match.meanings().forEach(m -> concepts.add(m.concept().id()));
    for (String inPrint :
        meaningsInPrint(shelf, Words.printedAs(thesaurus, phrase), phrase, true)) {
      if (isIn(thesaurus, facet, inPrint)
          && concepts.stream().noneMatch(known -> thesaurus.isBroader(known, inPrint))) {
        concepts.add(inPrint);
      }
    }
    if (match.meanings().isEmpty()) {
      match.completions().forEach(c -> concepts.add(c.concept().id()));
    }
    if (concepts.isEmpty()) {
      Words words = new Words(thesaurus, List.of(phrase));
      concepts.addAll(meaningsInPrint(shelf, words.criteria(), phrase, false));
      concepts.removeIf(id -> !isIn(thesaurus, facet, id));
    }
    List<String> ordered = List.copyOf(concepts);
    return new Interpretation(ordered, ask(match, ordered));
  }

  private static boolean isIn(Thesaurus thesaurus, Optional<String> facet, String concept) {
    return facet.isEmpty()
        || thesaurus
            .facet(facet.get())
            .filter(f -> thesaurus.concept(concept).orElseThrow().facet().equals(f.id()))
            .isPresent();
  }

  private static Optional<Ask> ask(PhraseMatch match, List<String> concepts) {
    Optional<String> remark = match.register().flatMap(Homonym::remark);
    if (match.register().isPresent()) {
      return Optional.of(new Ask("the word is used for more than one thing", remark));
    } else if (match.meanings().isEmpty() && !match.completions().isEmpty()) {
      return Optional.of(new Ask("a word is left out that would tell what it is of", remark));
    } else if (concepts.size() > 1) {
      return Optional.of(new Ask("the word has " + concepts.size() + " meanings", remark));
    }
    return Optional.empty();
  }

  /**
   * The concepts that notes give the phrase.
   *
   * @param whole whether only notes count that print just the phrase and take its meaning from the
   *     text; otherwise any that hold it
   */
  private static Set<String> meaningsInPrint(
      Shelf shelf, Collection<NoteCriterion> criteria, String phrase, boolean whole) {
    Thesaurus thesaurus = shelf.thesaurus();
    Words words = new Words(thesaurus, List.of(phrase));
    List<String> meanings = new ArrayList<>();
    for (SourcedNote found : shelf.notes(criteria)) {
      for (Naming naming : found.note().namings()) {
        boolean counts =
            whole
                ? naming.why().isPresent()
                    && naming.why().get() == Why.TEXT
                    && thesaurus.areSameWords(naming.printed(), phrase)
                : words.occurIn(thesaurus, naming.printed());
        if (counts && naming.concept().isPresent()) {
          meanings.add(naming.concept().get());
        }
      }
    }
    return new LinkedHashSet<>(meanings);
  }
}
