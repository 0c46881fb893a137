package merese.answer;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.Ask;
import merese.shelf.NoteSketch;
import merese.shelf.Shelf;
import merese.shelf.TermMeaning;

/**
 * What a question may mean. A word is never guessed at: it has every meaning that the register of
 * homonyms, the labels of the vocabulary or the text of some source gives it. What is no word and
 * is the id of a concept names that concept.
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
    if (facet.isPresent() && shelf.thesaurus().facet(facet.get()).isEmpty()) {
      throw UnknownConceptException.ofFacet(shelf.thesaurus(), facet.get());
    }
    TermMeaning meaning = TermMeaning.of(shelf, phrase, facet);
    if (!meaning.concepts().isEmpty()) {
      return new Interpretation(meaning.concepts(), ask(meaning.doubt()));
    }
    boolean isId = shelf.thesaurus().concept(phrase).isPresent();
    if (isId && TermMeaning.isIn(shelf.thesaurus(), facet, phrase)) {
      return new Interpretation(List.of(phrase), Optional.empty());
    }
    Set<String> concepts = new LinkedHashSet<>();
    addMeaningsOfWhatHolds(shelf, phrase, facet, concepts);
    Optional<Ask> ask =
        concepts.size() > 1
            ? Optional.of(
                new Ask("the word has " + concepts.size() + " meanings", Optional.empty()))
            : Optional.empty();
    return new Interpretation(List.copyOf(concepts), ask);
  }

  private static Optional<Ask> ask(Optional<TermMeaning.Doubt> doubt) {
    return doubt.isPresent()
        ? Optional.of(new Ask(doubt.get().reason(), doubt.get().remark()))
        : Optional.empty();
  }

  /** Adds the meanings of all printed terms that hold the phrase. */
  private static void addMeaningsOfWhatHolds(
      Shelf shelf, String phrase, Optional<String> facet, Set<String> concepts) {
    Words words = new Words(shelf.thesaurus(), List.of(phrase));
    for (NoteSketch found : shelf.sketches(shelf.census().printing(words.forms()))) {
      for (NoteSketch.Name naming : found.namings()) {
        if (naming.concept().isPresent()
            && words.occurIn(naming.printed())
            && TermMeaning.isIn(shelf.thesaurus(), facet, naming.concept().get())) {
          concepts.add(naming.concept().get());
        }
      }
    }
  }
}
