package merese.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.Classifier.Sketched;
import merese.answer.Coverage.Group;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.shelf.NoteSketch;
import merese.shelf.NoteSketch.Name;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.Folding;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/**
 * All notes that have to do with one concept, each in its group. What is counted is told from what
 * the notes are about; the whole of a note is read where it is shown.
 */
public final class ConceptCoverage {
  private final Shelf shelf;
  private final String concept;
  private final Set<String> wanted = new LinkedHashSet<>();
  private final Map<Group, List<Sketched>> byGroup = new EnumMap<>(Group.class);
  private Set<String> ownWork;

  private ConceptCoverage(Shelf shelf, String concept) {
    this.shelf = shelf;
    this.concept = concept;
  }

  /** Finds and classifies the notes: two questions to the index, however many notes there are. */
  public static ConceptCoverage of(Shelf shelf, String concept) {
    Thesaurus thesaurus = shelf.thesaurus();
    ConceptCoverage coverage = new ConceptCoverage(shelf, concept);
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
    List<NoteSketch> notes = inOrder(shelf.sketches(criteria));
    Set<Integer> known = new HashSet<>();
    for (NoteSketch note : notes) {
      known.add(note.document());
    }

    Set<String> phrases = new LinkedHashSet<>(thesaurus.wordsFor(concept));
    addWordsInPrint(notes, coverage.wanted, phrases);
    Words words = new Words(thesaurus, phrases);
    List<NoteSketch> more = shelf.sketches(words.criteria());
    more.removeIf(note -> known.contains(note.document()));
    notes.addAll(inOrder(more));

    Classifier classifier = new Classifier(coverage.wanted, broader, lookAlikes, words);
    for (NoteSketch note : notes) {
      for (Sketched sketched : classifier.classify(note)) {
        coverage.add(sketched);
      }
    }
    return coverage;
  }

  private static List<NoteSketch> inOrder(List<NoteSketch> notes) {
    notes.sort(new ByPosition());
    return notes;
  }

  /**
   * The terms that sources print for the concept and say so themselves. One word alone, as "cut"
   * under a heading "Rings", is too little to know other uses by: it stands in half of all terms.
   */
  private static void addWordsInPrint(
      Collection<NoteSketch> notes, Set<String> wanted, Set<String> words) {
    Map<String, Boolean> several = new HashMap<>();
    for (NoteSketch note : notes) {
      for (Name naming : note.namings()) {
        if (naming.why().isPresent()
            && naming.why().get() == Why.TEXT
            && wanted.contains(naming.concept().get())) {
          Boolean known = several.get(naming.printed());
          if (known == null) {
            known = Folding.words(naming.printed()).size() > 1;
            several.put(naming.printed(), known);
          }
          if (known) {
            words.add(naming.printed());
          }
        }
      }
    }
  }

  /** The user's own articles and films are apart from the first: never a witness. */
  private void add(Sketched sketched) {
    Group group = sketched.group();
    if (ownWork().contains(sketched.sketch().source())) {
      if (group != Group.COUNTED) {
        return;
      }
      group = Group.OWN_WORK;
    }
    List<Sketched> known = byGroup.get(group);
    if (known == null) {
      known = new ArrayList<>();
      byGroup.put(group, known);
    }
    known.add(sketched);
  }

  private Set<String> ownWork() {
    if (ownWork == null) {
      ownWork = shelf.ownWork();
    }
    return ownWork;
  }

  public String concept() {
    return concept;
  }

  /** The concept and all that is narrower (R1). */
  public Set<String> wanted() {
    return wanted;
  }

  /** All notes of some groups. */
  public List<Classified> in(Group... groups) {
    List<Classified> found = new ArrayList<>();
    for (Sketched sketched : sketchedIn(groups)) {
      found.add(whole(sketched));
    }
    return found;
  }

  List<Sketched> sketchedIn(Group... groups) {
    List<Sketched> found = new ArrayList<>();
    for (Group group : groups) {
      List<Sketched> known = byGroup.get(group);
      if (known != null) {
        found.addAll(known);
      }
    }
    return found;
  }

  private Classified whole(Sketched sketched) {
    SourcedNote note = shelf.note(sketched.sketch());
    Naming naming = note.note().namings().get(sketched.naming());
    return new Classified(note, naming, sketched.group());
  }

  /** The keys of all sources that have a note in some group. */
  public Set<String> sources() {
    Set<String> sources = new HashSet<>();
    for (List<Sketched> found : byGroup.values()) {
      for (Sketched sketched : found) {
        sources.add(sketched.sketch().source());
      }
    }
    return sources;
  }

  /**
   * Some of the sources of a group, with all that they have in it.
   *
   * @param notes theirs, whole
   * @param sources how many sources the group holds
   * @param works how many works those are editions of
   */
  record Cut(List<Classified> notes, int sources, int works) {
    static final Cut NONE = new Cut(List.of(), 0, 0);

    Cut and(Cut other) {
      List<Classified> both = new ArrayList<>(notes);
      both.addAll(other.notes);
      return new Cut(both, sources, works);
    }
  }

  /**
   * The first sources among some notes, in the order of R4: exact and pictured, exact in words,
   * narrower and pictured, narrower in words; each by year and author.
   *
   * @param test only sources with a place that passes
   * @param most how many sources
   */
  Cut cut(List<Sketched> notes, PlaceTest test, int most) {
    Map<String, Rank> ranks = new HashMap<>();
    Set<String> works = new HashSet<>();
    for (Sketched sketched : notes) {
      Name name = sketched.name();
      if (name.passes(test)) {
        NoteSketch sketch = sketched.sketch();
        Rank rank = ranks.get(sketch.source());
        if (rank == null) {
          rank = new Rank(sketch.source(), sketch.standing());
          ranks.put(rank.source, rank);
          works.add(sketch.file());
        }
        rank.value = Math.min(rank.value, rank(name, test));
      }
    }
    Set<String> shown = ranks.keySet();
    if (ranks.size() > most) {
      List<Rank> sorted = new ArrayList<>(ranks.values());
      sorted.sort(new ByRank());
      shown = new HashSet<>();
      for (Rank rank : sorted.subList(0, most)) {
        shown.add(rank.source);
      }
    }
    List<Classified> whole = new ArrayList<>();
    for (Sketched sketched : notes) {
      if (shown.contains(sketched.sketch().source())) {
        whole.add(whole(sketched));
      }
    }
    return new Cut(whole, ranks.size(), works.size());
  }

  private int rank(Name name, PlaceTest test) {
    boolean narrower =
        name.concept().isPresent()
            && !name.concept().get().equals(concept)
            && wanted.contains(name.concept().get());
    return (narrower ? 2 : 0) + (name.isPictured(test) ? 0 : 1);
  }

  private static final class Rank {
    private final String source;
    private final byte[] standing;
    private int value = Integer.MAX_VALUE;

    Rank(String source, byte[] standing) {
      this.source = source;
      this.standing = standing;
    }
  }

  private static final class ByRank implements Comparator<Rank> {
    @Override
    public int compare(Rank a, Rank b) {
      return a.value != b.value
          ? Integer.compare(a.value, b.value)
          : Arrays.compareUnsigned(a.standing, b.standing);
    }
  }

  /** In the order of files, editions and notes. */
  private static final class ByPosition implements Comparator<NoteSketch> {
    @Override
    public int compare(NoteSketch a, NoteSketch b) {
      int files = a.file().compareTo(b.file());
      if (files != 0) {
        return files;
      }
      int sources = a.source().compareTo(b.source());
      return sources != 0 ? sources : Integer.compare(a.hit().order(), b.hit().order());
    }
  }
}
