package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.Classifier.InGroup;
import merese.answer.Coverage.Group;
import merese.answer.CoverageQuestion.Showing;
import merese.model.PlaceTest;
import merese.search.Census;
import merese.search.NoteCriterion;
import merese.search.NoteCriterion.Namings;
import merese.search.NoteCriterion.Says;
import merese.search.NoteCriterion.Says.How;
import merese.search.NoteCriterion.Together;
import merese.search.NoteSet;
import merese.search.SourceSet;
import merese.shelf.NoteSketch;
import merese.shelf.NoteSketch.About;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/**
 * All notes that have to do with one concept, each in its group (R9). Which notes and sources a
 * group has the index tells; a note is read where it is shown.
 */
public final class ConceptCoverage {
  private final Shelf shelf;
  private final Census census;
  private final String concept;
  private final Set<String> wanted = new LinkedHashSet<>();
  private final Set<String> broader;
  private final Set<String> lookAlikes = new LinkedHashSet<>();
  private final Classifier classifier;

  /** The notes of each group, those left out that an earlier group has. */
  private final Map<Group, NoteSet> notes = new EnumMap<>(Group.class);

  /** By group: the notes of all earlier groups. */
  private final Map<Group, NoteSet> earlier = new EnumMap<>(Group.class);

  private final Map<Group, List<SourceSet>> ranked = new EnumMap<>(Group.class);

  private ConceptCoverage(Shelf shelf, String concept) {
    Thesaurus thesaurus = shelf.thesaurus();
    this.shelf = shelf;
    this.census = shelf.census();
    this.concept = concept;
    wanted.add(concept);
    wanted.addAll(thesaurus.narrower(concept));
    broader = thesaurus.broader(concept);
    for (LookAlikePair pair : thesaurus.lookAlikes(concept)) {
      lookAlikes.add(pair.other().id());
    }
    lookAlikes.removeAll(broader);
    Words words = new Words(thesaurus, thesaurus.wordsFor(concept));
    words.addForms(shelf.wordsInText(concept));
    classifier = new Classifier(wanted, broader, lookAlikes, words);
    group(words);
  }

  /** Finds the notes: questions to the index, whose number does not depend on the notes. */
  public static ConceptCoverage of(Shelf shelf, String concept) {
    return new ConceptCoverage(shelf, concept);
  }

  private void group(Words words) {
    NoteSet known = census.noNotes();
    for (Group group : List.of(Group.COUNTED, Group.HOW_IT_IS_MADE, Group.SAYS_NOT_SHOWN)) {
      NoteSet found = census.having(List.of(says(How.MEANS_THIS_OR_NARROWER, test(group), false)));
      notes.put(group, found);
      known = known.or(found);
    }
    NoteSet printing = census.printing(words.forms()).without(known);
    known = add(Group.NOT_THIS, notThis(printing), known);
    known = add(Group.LOOK_ALIKES, census.having(present(lookAlikes, false)), known);
    known = add(Group.GENERAL_ONLY, census.having(present(broader, false)), known);
    add(
        Group.MEANING_NOT_STATED,
        census.having(List.of(new NoteCriterion.MayMean(concept))),
        known);
  }

  private NoteSet add(Group group, NoteSet found, NoteSet known) {
    earlier.put(group, known);
    notes.put(group, found.without(known));
    return known.or(found);
  }

  /**
   * Those of some notes which print the words and mean neither this nor something broader. Only a
   * note whose namings differ is read for it.
   */
  private NoteSet notThis(NoteSet printing) {
    List<NoteCriterion> broad = new ArrayList<>();
    for (String id : broader) {
      broad.add(new NoteCriterion.MeansExactly(id));
    }
    NoteSet present = printing.and(each(Together.EACH_PRESENT));
    NoteSet general = present.and(census.having(broad));
    NoteSet inDoubt = printing.and(each(Together.UNLIKE)).or(general.and(each(Together.SEVERAL)));
    return present.without(general).or(shelf.notesWhere(inDoubt, new NotThis(classifier, false)));
  }

  private NoteSet notThisPictured() {
    NoteSet all = notes.get(Group.NOT_THIS);
    return all.and(each(Together.EACH_PICTURED))
        .or(shelf.notesWhere(all.and(each(Together.UNLIKE)), new NotThis(classifier, true)));
  }

  private NoteSet each(Together what) {
    return census.having(List.of(new Namings(what)));
  }

  private record NotThis(Classifier classifier, boolean pictured) implements Shelf.SketchTest {
    @Override
    public boolean test(About note) {
      for (InGroup naming : classifier.classify(note)) {
        if (naming.group() == Group.NOT_THIS
            && (!pictured || naming.name().isPictured(PlaceTest.PRESENT))) {
          return true;
        }
      }
      return false;
    }
  }

  private Says says(How how, PlaceTest test, boolean pictured) {
    return new Says(concept, how, test, pictured);
  }

  private static List<Says> present(Collection<String> concepts, boolean pictured) {
    List<Says> says = new ArrayList<>();
    for (String id : concepts) {
      says.add(new Says(id, How.MEANS_JUST_THIS, PlaceTest.PRESENT, pictured));
    }
    return says;
  }

  /** Which places of a note are those of its group. */
  static PlaceTest test(Group group) {
    return switch (group) {
      case COUNTED, OWN_WORK -> PlaceTest.COVERS;
      case HOW_IT_IS_MADE -> PlaceTest.PROCESS;
      case SAYS_NOT_SHOWN -> PlaceTest.ABSENCE;
      default -> PlaceTest.PRESENT;
    };
  }

  public String concept() {
    return concept;
  }

  /** The concept and all that is narrower (R1). */
  public Set<String> wanted() {
    return wanted;
  }

  /** All notes of some groups. The user's own articles and films are apart: never a witness. */
  public List<Classified> in(Group... groups) {
    NoteSet own = census.of(census.ownWork());
    List<Classified> found = new ArrayList<>();
    for (Group group : groups) {
      boolean isOwn = group == Group.OWN_WORK;
      Group of = isOwn ? Group.COUNTED : group;
      NoteSet all = notes.get(of);
      addOf(of, isOwn ? all.and(own) : all.without(own), found);
    }
    return found;
  }

  /** Adds what some notes have in a group. */
  private void addOf(Group group, NoteSet some, List<Classified> to) {
    for (NoteSketch note : shelf.sketches(some)) {
      for (InGroup naming : classifier.classify(note.about())) {
        if (naming.group() == group) {
          to.add(whole(note, naming));
        }
      }
    }
  }

  /** All notes, in whatever group, of some sources. */
  List<SourcedNote> notesOf(Collection<String> sources) {
    NoteSet all = census.noNotes();
    for (NoteSet ofGroup : notes.values()) {
      all = all.or(ofGroup);
    }
    List<SourcedNote> found = new ArrayList<>();
    for (NoteSketch note : shelf.sketches(census.of(census.called(sources)).and(all))) {
      if (!classifier.classify(note.about()).isEmpty()) {
        found.add(shelf.passingNote(note));
      }
    }
    return found;
  }

  private Classified whole(NoteSketch sketch, InGroup naming) {
    SourcedNote note = shelf.note(sketch);
    return new Classified(note, note.note().namings().get(naming.naming()), naming.group());
  }

  /** All sources that have a note in some group. */
  SourceSet sources() {
    SourceSet all = sources(Group.MEANING_NOT_STATED);
    for (PlaceTest test : PlaceTest.ALL) { // a note may deny what is not stated either
      all = all.or(saying(Group.MEANING_NOT_STATED, List.of(says(How.MAY_MEAN, test, false))));
    }
    for (Group group : notes.keySet()) {
      all = all.or(sources(group));
    }
    return all;
  }

  /** The sources that have a note in a group, the user's own work too. */
  SourceSet sources(Group group) {
    SourceSet all = census.none();
    for (SourceSet ranked : byRank(group)) {
      all = all.or(ranked);
    }
    return all;
  }

  /** The sources that show it. */
  SourceSet picturing() {
    return census.saying(List.of(says(How.MEANS_THIS_OR_NARROWER, PlaceTest.COVERS, true)));
  }

  /**
   * The sources of a group in the order of R4: exact and pictured, exact in words, narrower and
   * pictured, narrower in words. One may be in several ranks: the first counts.
   */
  private List<SourceSet> byRank(Group group) {
    List<SourceSet> known = ranked.get(group);
    if (known == null) {
      known = rank(group);
      ranked.put(group, known);
    }
    return known;
  }

  private List<SourceSet> rank(Group group) {
    PlaceTest test = test(group);
    return switch (group) {
      case NOT_THIS -> List.of(census.of(notThisPictured()), census.of(notes.get(group)));
      case LOOK_ALIKES ->
          List.of(
              saying(group, present(lookAlikes, true)), saying(group, present(lookAlikes, false)));
      case GENERAL_ONLY ->
          List.of(saying(group, present(broader, true)), saying(group, present(broader, false)));
      case MEANING_NOT_STATED ->
          List.of(
              saying(group, List.of(says(How.MAY_MEAN, test, true))),
              saying(group, List.of(says(How.MAY_MEAN, test, false))));
      default ->
          List.of(
              census.saying(List.of(says(How.MEANS_JUST_THIS, test, true))),
              census.saying(List.of(says(How.MEANS_JUST_THIS, test, false))),
              census.saying(List.of(says(How.MEANS_THIS_OR_NARROWER, test, true))),
              census.saying(List.of(says(How.MEANS_THIS_OR_NARROWER, test, false))));
    };
  }

  private SourceSet saying(Group group, List<Says> criteria) {
    return census.saying(criteria, earlier.get(group));
  }

  /**
   * Some of the sources of a group, with all that they have in it.
   *
   * @param notes theirs, whole
   * @param sources all sources that the group holds
   */
  record Cut(List<Classified> notes, SourceSet sources) {}

  /**
   * The first sources of a group in the order of R4, each rank by year and author.
   *
   * @param among which of its sources
   * @param showing how many
   */
  Cut cut(Group group, SourceSet among, Showing showing) {
    SourceSet all = sources(group).and(among);
    SourceSet shown = first(group, all, showing.of(all.size()));
    List<Classified> whole = new ArrayList<>();
    PlaceTest test = test(group);
    NoteSet ofGroup = notes.get(group == Group.OWN_WORK ? Group.COUNTED : group);
    for (NoteSketch note : shelf.sketches(census.of(shown).and(ofGroup))) {
      for (InGroup naming : classifier.classify(note.about())) {
        if (naming.name().passes(test)) {
          whole.add(whole(note, naming));
        }
      }
    }
    return new Cut(whole, all);
  }

  private SourceSet first(Group group, SourceSet all, int most) {
    SourceSet shown = census.none();
    SourceSet rest = all;
    int left = most;
    for (SourceSet ranked : byRank(group)) {
      if (left > 0) {
        SourceSet first = census.first(ranked.and(rest), left);
        shown = shown.or(first);
        rest = rest.without(ranked);
        left -= first.size();
      }
    }
    return shown;
  }
}
