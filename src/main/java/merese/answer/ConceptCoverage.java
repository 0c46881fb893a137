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

  /** The groups of notes, in the order of R9. */
  private static final List<Group> ALL =
      List.of(
          Group.COUNTED,
          Group.HOW_IT_IS_MADE,
          Group.SAYS_NOT_SHOWN,
          Group.NOT_THIS,
          Group.LOOK_ALIKES,
          Group.GENERAL_ONLY,
          Group.MEANING_NOT_STATED);

  /**
   * The notes of each group, those left out that an earlier group has; of {@link
   * Group#GENERAL_ONLY}, which may be most of a library's, only where all are asked for.
   */
  private final Map<Group, NoteSet> notes = new EnumMap<>(Group.class);

  /** By group: notes of earlier groups, all those among them that fit the group too. */
  private final Map<Group, NoteSet> earlier = new EnumMap<>(Group.class);

  /** By group and rank, what has been asked for. */
  private final Map<Group, SourceSet[]> ranked = new EnumMap<>(Group.class);

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
    NoteSet notThis = notThis(census.printing(words.forms()).without(known));
    notes.put(Group.NOT_THIS, notThis);
    // A note with one naming is in one group, save that what prints the words may mean a
    // look-alike.
    known = those(known, Together.SEVERAL).or(notThis);
    NoteSet alike = census.having(present(lookAlikes, false));
    add(Group.LOOK_ALIKES, alike, known);
    known = those(known.or(alike), Together.SEVERAL);
    earlier.put(Group.GENERAL_ONLY, known);
    NoteSet unstated = census.having(List.of(new NoteCriterion.MayMean(concept)));
    add(Group.MEANING_NOT_STATED, unstated, known.or(general(unstated)));
  }

  private void add(Group group, NoteSet found, NoteSet known) {
    earlier.put(group, known);
    notes.put(group, found.without(known));
  }

  /** Those of some notes that mean something broader. */
  private NoteSet general(NoteSet some) {
    return census.among(some, present(broader, false));
  }

  private NoteSet notes(Group group) {
    NoteSet known = notes.get(group);
    if (known == null) {
      known = census.having(present(broader, false)).without(earlier.get(group));
      notes.put(group, known);
    }
    return known;
  }

  /** Those of some notes that are in a group. */
  private NoteSet among(NoteSet some, Group group) {
    NoteSet known = notes.get(group);
    return known == null ? general(some).without(earlier.get(group)) : some.and(known);
  }

  /**
   * Those of some notes which print the words and mean neither this nor something broader. Only a
   * note whose namings differ is read for it.
   */
  private NoteSet notThis(NoteSet printing) {
    NoteSet present = those(printing, Together.EACH_PRESENT);
    NoteSet general = general(present);
    NoteSet inDoubt = those(printing, Together.SOME_PRESENT).or(those(general, Together.SEVERAL));
    return present.without(general).or(shelf.notesWhere(inDoubt, new NotThis(classifier, false)));
  }

  private NoteSet notThisPictured() {
    NoteSet all = notes(Group.NOT_THIS);
    NoteSet inDoubt = those(all, Together.SOME_PICTURED);
    return those(all, Together.EACH_PICTURED)
        .or(shelf.notesWhere(inDoubt, new NotThis(classifier, true)));
  }

  private NoteSet those(NoteSet some, Together what) {
    return census.among(some, List.of(new Namings(what)));
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
      NoteSet all = notes(of);
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

  /**
   * A naming of a note that was not read whole.
   *
   * @param naming in its group
   */
  record Sketched(NoteSketch note, InGroup naming) {}

  /** What the notes of some sources have in some groups, unread. */
  List<Sketched> sketched(SourceSet among, Group... groups) {
    List<Sketched> found = new ArrayList<>();
    for (Group group : groups) {
      for (NoteSketch note : shelf.sketches(among(census.of(among), group))) {
        for (InGroup naming : classifier.classify(note.about())) {
          if (naming.group() == group) {
            found.add(new Sketched(note, naming));
          }
        }
      }
    }
    return found;
  }

  /** The same, read. */
  List<Classified> whole(List<Sketched> some) {
    List<Classified> whole = new ArrayList<>();
    for (Sketched each : some) {
      whole.add(whole(each.note(), each.naming()));
    }
    return whole;
  }

  /** All notes, in whatever group, of some sources. */
  List<SourcedNote> notesOf(Collection<String> sources) {
    NoteSet all = census.noNotes();
    NoteSet theirs = census.of(census.called(sources));
    for (Group group : ALL) {
      all = all.or(among(theirs, group));
    }
    List<SourcedNote> found = new ArrayList<>();
    for (NoteSketch note : shelf.sketches(all)) {
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
    for (Group group : ALL) {
      all = all.or(sources(group));
    }
    return all;
  }

  /** The sources that have a note in a group, the user's own work too. */
  SourceSet sources(Group group) {
    return rank(group, ranks(group) - 1);
  }

  /** The sources that show it. */
  SourceSet picturing() {
    return census.saying(List.of(says(How.MEANS_THIS_OR_NARROWER, PlaceTest.COVERS, true)));
  }

  /** How many ranks the sources of a group have. */
  private static int ranks(Group group) {
    return switch (group) {
      case NOT_THIS, LOOK_ALIKES, GENERAL_ONLY, MEANING_NOT_STATED -> 2;
      default -> 4;
    };
  }

  /**
   * Sources of a group by their rank in the order of R4: exact and pictured, exact in words,
   * narrower and pictured, narrower in words. One may be in several: the first counts. All are in
   * the last.
   */
  private SourceSet rank(Group group, int rank) {
    SourceSet[] known = ranked.get(group);
    if (known == null) {
      known = new SourceSet[ranks(group)];
      ranked.put(group, known);
    }
    if (known[rank] == null) {
      known[rank] = ranked(group, rank);
    }
    return known[rank];
  }

  private SourceSet ranked(Group group, int rank) {
    boolean pictured = rank % 2 == 0;
    PlaceTest test = test(group);
    return switch (group) {
      case NOT_THIS -> census.of(pictured ? notThisPictured() : notes(group));
      case LOOK_ALIKES -> saying(group, present(lookAlikes, pictured));
      case GENERAL_ONLY -> saying(group, present(broader, pictured));
      case MEANING_NOT_STATED -> saying(group, List.of(says(How.MAY_MEAN, test, pictured)));
      default -> {
        How how = rank < 2 ? How.MEANS_JUST_THIS : How.MEANS_THIS_OR_NARROWER;
        yield census.saying(List.of(says(how, test, pictured)));
      }
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
    NoteSet ofGroup = among(census.of(shown), group == Group.OWN_WORK ? Group.COUNTED : group);
    for (NoteSketch note : shelf.sketches(ofGroup)) {
      for (InGroup naming : classifier.classify(note.about())) {
        if (naming.name().passes(test)) {
          whole.add(whole(note, naming));
        }
      }
    }
    return new Cut(whole, all);
  }

  private SourceSet first(Group group, SourceSet all, int most) {
    if (all.size() <= most) {
      return all;
    }
    SourceSet shown = census.none();
    SourceSet rest = all;
    int left = most;
    for (int rank = 0; left > 0; rank++) {
      SourceSet ranked = rank(group, rank);
      SourceSet first = census.first(ranked.and(rest), left);
      shown = shown.or(first);
      rest = rest.without(ranked);
      left -= first.size();
    }
    return shown;
  }
}
