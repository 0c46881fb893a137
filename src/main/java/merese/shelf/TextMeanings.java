package merese.shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.search.NoteIndex;
import merese.search.SourceSet;
import merese.vocabulary.Thesaurus;

/** What an index and the notes that it holds say of words. */
final class TextMeanings {
  private TextMeanings() {}

  /** As {@link Lexicon#meanings} has it. */
  static Map<String, Set<String>> ofLabels(
      NoteIndex index, Thesaurus thesaurus, Collection<String> terms) {
    Map<String, List<List<String>>> formsOf = new HashMap<>();
    List<List<String>> forms = new ArrayList<>();
    for (String term : terms) {
      formsOf.put(term, thesaurus.forms(term));
      forms.addAll(formsOf.get(term));
    }
    Map<String, Set<String>> byLabel = new HashMap<>();
    for (byte[] packed : index.labelled(forms)) {
      PackedLabels.unpack(packed, byLabel);
    }
    Map<String, Set<String>> meanings = new HashMap<>();
    for (String term : terms) {
      Set<String> concepts = new LinkedHashSet<>();
      for (List<String> form : formsOf.get(term)) {
        concepts.addAll(byLabel.getOrDefault(String.join(" ", form), Set.of()));
      }
      meanings.put(term, concepts);
    }
    return meanings;
  }

  /**
   * What the texts of notes say that a term means: of two meanings that first which more notes
   * have.
   *
   * @param without sources whose notes are left out; empty for none
   */
  static Set<String> inText(
      NoteIndex index, Thesaurus thesaurus, String term, Optional<SourceSet> without) {
    List<List<String>> forms = thesaurus.forms(term);
    Map<String, Integer> notes = new TreeMap<>();
    for (List<String> form : forms) {
      for (Map.Entry<String, Integer> meant : index.meantInText(form).entrySet()) {
        Integer known = notes.getOrDefault(meant.getKey(), 0);
        notes.put(meant.getKey(), known + meant.getValue());
      }
    }
    List<MeaningInText> meanings = new ArrayList<>();
    for (Map.Entry<String, Integer> each : notes.entrySet()) {
      String concept = each.getKey();
      if (without.isEmpty()
          || !index.census().meaningInText(forms, concept).without(without.get()).isEmpty()) {
        meanings.add(new MeaningInText(concept, each.getValue()));
      }
    }
    Collections.sort(meanings);
    Set<String> concepts = new LinkedHashSet<>();
    for (MeaningInText meaning : meanings) {
      concepts.add(meaning.concept);
    }
    return concepts;
  }

  private record MeaningInText(String concept, int notes) implements Comparable<MeaningInText> {
    @Override
    public int compareTo(MeaningInText other) {
      int byNotes = Integer.compare(other.notes, notes);
      return byNotes != 0 ? byNotes : concept.compareTo(other.concept);
    }
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
