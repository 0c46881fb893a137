package merese.shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.search.NoteCriterion;
import merese.search.NoteIndex;
import merese.vocabulary.Thesaurus;

/** What an index and the notes that it holds say of words. */
final class TextMeanings {
  private TextMeanings() {}

  /** As {@link Lexicon#meanings} has it. */
  static Map<String, Set<String>> ofLabels(
      NoteIndex index, Thesaurus thesaurus, Collection<String> terms) {
    List<List<String>> forms = new ArrayList<>();
    for (String term : terms) {
      forms.addAll(thesaurus.forms(term));
    }
    Map<String, Set<String>> byLabel = new HashMap<>();
    for (byte[] packed : index.labelled(forms)) {
      PackedLabels.unpack(packed, byLabel);
    }
    Map<String, Set<String>> meanings = new HashMap<>();
    for (String term : terms) {
      Set<String> concepts = new LinkedHashSet<>();
      for (List<String> form : thesaurus.forms(term)) {
        concepts.addAll(byLabel.getOrDefault(String.join(" ", form), Set.of()));
      }
      meanings.put(term, concepts);
    }
    return meanings;
  }

  /** What finds the notes that print just this term. */
  static List<NoteCriterion> printing(Thesaurus thesaurus, String term) {
    List<NoteCriterion> criteria = new ArrayList<>();
    for (List<String> form : thesaurus.forms(term)) {
      criteria.add(new NoteCriterion.PrintsExactly(form));
    }
    return criteria;
  }

  /**
   * Adds what a note gives a term as its meaning, where it prints it and the text is the reason.
   */
  static void add(Thesaurus thesaurus, String term, Note note, Set<String> concepts) {
    for (Naming naming : note.namings()) {
      if (naming.why().isPresent()
          && naming.why().get() == Why.TEXT
          && thesaurus.areSameWords(naming.printed(), term)) {
        concepts.add(naming.concept().get());
      }
    }
  }
}
