package merese.answer.first;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.SourceLines;
import merese.answer.Words;
import merese.answer.first.FirstUse.Meaning;
import merese.answer.first.FirstUse.Term;
import merese.answer.first.FirstUse.Use;
import merese.answer.first.FirstUse.Uses;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;
import merese.model.Naming;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/**
 * Answers which source of this library prints a word first.
 *
 * <p>A word is found as R7 folds it, and each edition speaks for itself: a first edition that says
 * something else does not date the word, nor does a reprint. What a source prints only to say that
 * it is not shown is apart (R3), and so are the user's own articles.
 */
public final class FirstUses {
  private static final int NEAR_TERMS = 5;

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;

  private FirstUses(Shelf shelf) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = new SourceLines();
  }

  public static FirstUse answer(Shelf shelf, FirstQuestion question) {
    return shelf.ask(
        s -> {
          FirstUses uses = new FirstUses(s);
          return new FirstUse(question.terms().stream().distinct().map(uses::term).toList());
        });
  }

  private Term term(String asked) {
    Words words = new Words(thesaurus, List.of(asked));
    Map<String, List<Printing>> byConcept = new LinkedHashMap<>();
    List<Printing> unassigned = new ArrayList<>();
    for (SourcedNote sourced : shelf.notes(words.criteria())) {
      for (Naming naming : sourced.note().namings()) {
        if (words.occurIn(naming.printed())) {
          Printing printing = new Printing(sourced, naming);
          if (naming.concept().isPresent()) {
            byConcept.computeIfAbsent(naming.concept().get(), c -> new ArrayList<>()).add(printing);
          } else {
            unassigned.add(printing);
          }
        }
      }
    }
    List<Meaning> meanings = new ArrayList<>();
    byConcept.forEach((concept, printings) -> meanings.add(meaning(concept, printings, words)));
    meanings.sort(
        Comparator.comparingInt((Meaning m) -> yearOf(m.uses()))
            .thenComparing(m -> m.concept().id()));
    boolean known = !meanings.isEmpty() || !unassigned.isEmpty();
    List<ConceptLine> inVocabulary = inVocabulary(asked);
    return new Term(
        asked,
        meanings,
        unassigned.isEmpty() ? Optional.empty() : Optional.of(uses(unassigned)),
        inVocabulary,
        coinages(asked),
        met(asked),
        known || !inVocabulary.isEmpty() ? List.of() : nearTerms(asked));
  }

  private static int yearOf(Uses uses) {
    return uses.earliest().isEmpty() ? Integer.MAX_VALUE : uses.earliest().get(0).year().getAsInt();
  }

  private Uses uses(List<Printing> printings) {
    return new Dating(shelf, lines).uses(printings);
  }

  private Meaning meaning(String concept, List<Printing> printings, Words words) {
    Uses uses = uses(printings);
    List<Use> before = new ArrayList<>();
    if (!uses.earliest().isEmpty()) {
      Uses others = uses(printedOtherwise(concept, words));
      int year = yearOf(uses);
      List<Use> dated = new ArrayList<>(others.earliest());
      dated.addAll(others.later());
      for (Use use : dated) {
        if (use.year().getAsInt() < year) {
          before.add(use);
        }
      }
    }
    return new Meaning(line(concept), uses, before);
  }

  /** What is printed for the same concept and is not the word. */
  private List<Printing> printedOtherwise(String concept, Words words) {
    List<Printing> found = new ArrayList<>();
    for (SourcedNote sourced : shelf.notes(List.of(new NoteCriterion.MeansExactly(concept)))) {
      for (Naming naming : sourced.note().namings()) {
        if (naming.means(concept)
            && !naming.printed().isEmpty()
            && !words.occurIn(naming.printed())
            && PlaceTest.PRESENT.holdsForAny(sourced.note().placesOf(naming))) {
          found.add(new Printing(sourced, naming));
        }
      }
    }
    return found;
  }

  private ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  private List<ConceptLine> inVocabulary(String asked) {
    List<ConceptLine> known = new ArrayList<>();
    for (String concept : shelf.meanings(List.of(asked)).get(asked)) {
      known.add(line(concept));
    }
    return known;
  }

  private List<Coinage> coinages(String asked) {
    List<Coinage> found = new ArrayList<>();
    for (Coinage coinage : shelf.mine().coinages()) {
      if (thesaurus.areSameWords(coinage.label(), asked)) {
        found.add(coinage);
      }
    }
    return found;
  }

  private List<Untraced> met(String asked) {
    List<Untraced> met = new ArrayList<>();
    for (Untraced untraced : shelf.mine().untraced()) {
      if (thesaurus.areSameWords(untraced.word(), asked)) {
        met.add(untraced);
      }
    }
    return met;
  }

  private List<String> nearTerms(String asked) {
    List<String> near = new ArrayList<>();
    for (NearTerm term : thesaurus.nearTerms(asked, NEAR_TERMS)) {
      near.add(Thesaurus.display(term.label()));
    }
    return near;
  }
}
