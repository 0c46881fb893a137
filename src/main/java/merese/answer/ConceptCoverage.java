package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Group;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Folding;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/** All notes that have to do with one concept, each in its group. */
public final class ConceptCoverage {
  private final String concept;
  private final Set<String> wanted = new LinkedHashSet<>();
  private final Map<Group, List<Classified>> byGroup = new EnumMap<>(Group.class);

  private ConceptCoverage(String concept) {
    this.concept = concept;
  }

  /** Finds and classifies the notes: two questions to the index, however many notes there are. */
  public static ConceptCoverage of(Shelf shelf, String concept) {
    Thesaurus thesaurus = shelf.thesaurus();
    ConceptCoverage coverage = new ConceptCoverage(concept);
    coverage.wanted.add(concept);
    coverage.wanted.addAll(thesaurus.narrower(concept));
    Set<String> broader = thesaurus.broader(concept);
    Set<String> lookAlikes = new LinkedHashSet<>();
    for (LookAlikePair pair : thesaurus.lookAlikes(concept)) {
      lookAlikes.add(pair.other().id());
    }

    List<NoteCriterion> criteria = new ArrayList<>();
    criteria.add(new NoteCriterion.Means(concept));
    criteria.add(new NoteCriterion.MayMean(concept));
    for (String id : broader) {
      criteria.add(new NoteCriterion.MeansExactly(id));
    }
    for (String id : lookAlikes) {
      criteria.add(new NoteCriterion.MeansExactly(id));
    }
    Set<SourcedNote> notes = new LinkedHashSet<>(shelf.notes(criteria));

    Set<String> phrases = new LinkedHashSet<>(thesaurus.wordsFor(concept));
    addWordsInPrint(notes, coverage.wanted, phrases);
    Words words = new Words(thesaurus, phrases);
    notes.addAll(shelf.notes(words.criteria()));

    Classifier classifier = new Classifier(coverage.wanted, broader, lookAlikes, words);
    for (SourcedNote note : notes) {
      for (Classified classified : classifier.classify(note)) {
        coverage.add(classified);
      }
    }
    return coverage;
  }

  /**
   * The terms that sources print for the concept and say so themselves. One word alone, as "cut"
   * under a heading "Rings", is too little to know other uses by: it stands in half of all terms.
   */
  private static void addWordsInPrint(
      Collection<SourcedNote> notes, Set<String> wanted, Set<String> words) {
    for (SourcedNote sourced : notes) {
      for (Naming naming : sourced.note().namings()) {
        if (Folding.words(naming.printed()).size() > 1
            && naming.why().isPresent()
            && naming.why().get() == Why.TEXT
            && wanted.contains(naming.concept().get())) {
          words.add(naming.printed());
        }
      }
    }
  }

  /** The user's own articles and films are apart from the first: never a witness. */
  private void add(Classified classified) {
    Group group = classified.group();
    if (classified.sourced().source().mine()) {
      if (group != Group.COUNTED) {
        return;
      }
      group = Group.OWN_WORK;
    }
    List<Classified> known = byGroup.get(group);
    if (known == null) {
      known = new ArrayList<>();
      byGroup.put(group, known);
    }
    known.add(classified);
  }

  public String concept() {
    return concept;
  }

  /** The concept and all that is narrower (R1). */
  public Set<String> wanted() {
    return wanted;
  }

  public List<Classified> in(Group... groups) {
    List<Classified> found = new ArrayList<>();
    for (Group group : groups) {
      List<Classified> known = byGroup.get(group);
      if (known != null) {
        found.addAll(known);
      }
    }
    return found;
  }

  /** Every source that has a note in some group. */
  public Set<Source> sources() {
    Set<Source> sources = new LinkedHashSet<>();
    for (List<Classified> found : byGroup.values()) {
      for (Classified classified : found) {
        sources.add(classified.sourced().source());
      }
    }
    return sources;
  }
}
