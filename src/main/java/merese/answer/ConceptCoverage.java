package merese.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import merese.answer.Classifier.Classified;
import merese.answer.Classifier.Sketched;
import merese.answer.Coverage.Group;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.search.NotesOfSource;
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

  /** Notes on something else, by their source: of these nothing but that is known so far. */
  private final Map<Group, List<NotesOfSource>> unread = new EnumMap<>(Group.class);

  private Classifier classifier;
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

    List<NoteSketch> notes =
        shelf.sketches(
            List.of(new NoteCriterion.Means(concept), new NoteCriterion.MayMean(concept)));
    BitSet known = new BitSet();
    for (NoteSketch note : notes) {
      known.set(note.document());
    }
    Set<String> phrases = new LinkedHashSet<>(thesaurus.wordsFor(concept));
    addWordsInPrint(notes, coverage.wanted, phrases);
    Words words = new Words(thesaurus, phrases);
    for (NoteSketch note : shelf.sketches(words.criteria())) {
      if (!known.get(note.document())) {
        known.set(note.document());
        notes.add(note);
      }
    }
    notes.sort(new ByPosition());
    coverage.classifier = new Classifier(coverage.wanted, broader, lookAlikes, words);
    for (NoteSketch note : notes) {
      for (Sketched sketched : coverage.classifier.classify(note)) {
        coverage.add(sketched);
      }
    }
    lookAlikes.removeAll(broader);
    coverage.gather(Group.LOOK_ALIKES, lookAlikes, known);
    coverage.gather(Group.GENERAL_ONLY, broader, known);
    return coverage;
  }

  /**
   * Finds the notes that have to do with the concept only in that they mean something else: of
   * these the index says enough, and they are read where they are shown.
   */
  private void gather(Group group, Set<String> concepts, BitSet known) {
    List<NoteCriterion> present = new ArrayList<>();
    List<NoteCriterion> pictured = new ArrayList<>();
    for (String id : concepts) {
      present.add(new NoteCriterion.HasExactly(id));
      pictured.add(new NoteCriterion.PicturesExactly(id));
    }
    List<NotesOfSource> found = new ArrayList<>();
    for (NotesOfSource notes : shelf.gather(present, pictured, known)) {
      if (!ownWork().contains(notes.owner().edition())) {
        found.add(notes);
      }
      for (int document : notes.documents()) {
        known.set(document);
      }
    }
    unread.put(group, found);
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
    if (!ownWork().isEmpty() && ownWork().contains(sketched.sketch().source())) {
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

  /** All notes, in whatever group, of some sources. */
  List<Classified> ofSources(Set<String> sources) {
    List<Classified> found = new ArrayList<>();
    for (List<Sketched> known : byGroup.values()) {
      for (Sketched sketched : known) {
        if (sources.contains(sketched.sketch().source())) {
          found.add(whole(sketched));
        }
      }
    }
    List<Sketched> more = new ArrayList<>();
    for (List<NotesOfSource> unreadOfGroup : unread.values()) {
      for (NotesOfSource notes : unreadOfGroup) {
        if (sources.contains(notes.owner().edition())) {
          addSketched(notes, more);
        }
      }
    }
    for (Sketched sketched : more) {
      found.add(whole(sketched));
    }
    return found;
  }

  /** What the notes of some groups are about. */
  List<Sketched> sketchedIn(Group... groups) {
    List<Sketched> found = new ArrayList<>();
    for (Group group : groups) {
      found.addAll(byGroup.getOrDefault(group, List.of()));
      for (NotesOfSource notes : unread.getOrDefault(group, List.of())) {
        addSketched(notes, found);
      }
    }
    return found;
  }

  private void addSketched(NotesOfSource notes, List<Sketched> found) {
    for (NoteSketch note : shelf.sketches(notes.documents())) {
      found.addAll(classifier.classify(note));
    }
  }

  private Classified whole(Sketched sketched) {
    SourcedNote note = shelf.note(sketched.sketch());
    Naming naming = note.note().namings().get(sketched.naming());
    return new Classified(note, naming, sketched.group());
  }

  /** Adds the keys of all sources that have a note in some group. */
  void addSources(Set<String> sources) {
    for (List<Sketched> found : byGroup.values()) {
      String last = "";
      for (Sketched sketched : found) { // the notes of a source mostly follow each other
        if (!sketched.sketch().source().equals(last)) {
          last = sketched.sketch().source();
          sources.add(last);
        }
      }
    }
    for (List<NotesOfSource> found : unread.values()) {
      for (NotesOfSource notes : found) {
        sources.add(notes.owner().edition());
      }
    }
  }

  /**
   * Some of the sources of a group, with all that they have in it.
   *
   * @param notes theirs, whole
   * @param sources how many sources the group holds
   */
  record Cut(List<Classified> notes, int sources) {
    Cut and(Cut other) {
      List<Classified> both = new ArrayList<>(notes);
      both.addAll(other.notes);
      return new Cut(both, sources);
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
    return cut(notes, List.of(), test, most);
  }

  /**
   * The same of all notes of a group.
   *
   * @param wanted which of its sources
   */
  Cut cut(Group group, Predicate<String> wanted, PlaceTest test, int most) {
    List<Sketched> read = new ArrayList<>();
    for (Sketched sketched : byGroup.getOrDefault(group, List.of())) {
      if (wanted.test(sketched.sketch().source())) {
        read.add(sketched);
      }
    }
    List<NotesOfSource> rest = new ArrayList<>();
    for (NotesOfSource notes : unread.getOrDefault(group, List.of())) {
      if (wanted.test(notes.owner().edition())) {
        rest.add(notes);
      }
    }
    return cut(read, rest, test, most);
  }

  private Cut cut(List<Sketched> notes, List<NotesOfSource> rest, PlaceTest test, int most) {
    Map<String, Rank> ranks = ranks(notes, test);
    First first = new First(most);
    int sources = ranks.size();
    for (NotesOfSource of : rest) { // these are all of the test that their group has
      Rank known = ranks.get(of.owner().edition());
      if (known != null) {
        known.value = Math.min(known.value, of.isPictured() ? 0 : 1);
      } else {
        sources++;
        first.offer(new Rank(of.owner().edition(), of.owner().standing(), of.isPictured() ? 0 : 1));
      }
    }
    for (Rank rank : ranks.values()) {
      first.offer(rank);
    }
    Set<String> shown = first.sources();
    List<Sketched> all = new ArrayList<>(notes);
    for (NotesOfSource of : rest) {
      if (shown.contains(of.owner().edition())) {
        addSketched(of, all);
      }
    }
    List<Classified> whole = new ArrayList<>();
    for (Sketched sketched : all) {
      if (shown.contains(sketched.sketch().source())) {
        whole.add(whole(sketched));
      }
    }
    return new Cut(whole, sources);
  }

  private Map<String, Rank> ranks(List<Sketched> notes, PlaceTest test) {
    Map<String, Rank> ranks = new HashMap<>();
    Rank rank = null;
    for (Sketched sketched : notes) {
      Name name = sketched.name();
      if (name.passes(test)) {
        NoteSketch sketch = sketched.sketch();
        if (rank == null || !rank.source.equals(sketch.source())) {
          rank = ranks.get(sketch.source());
          if (rank == null) {
            rank = new Rank(sketch.source(), sketch.standing(), Integer.MAX_VALUE);
            ranks.put(rank.source, rank);
          }
        }
        rank.value = Math.min(rank.value, rank(name, test));
      }
    }
    return ranks;
  }

  private int rank(Name name, PlaceTest test) {
    boolean narrower =
        name.concept().isPresent()
            && !name.concept().get().equals(concept)
            && wanted.contains(name.concept().get());
    return (narrower ? 2 : 0) + (name.isPictured(test) ? 0 : 1);
  }

  /** How many works some notes are from. */
  static int works(List<Sketched> notes, PlaceTest test) {
    Set<String> works = new HashSet<>();
    String last = "";
    for (Sketched sketched : notes) {
      if (!sketched.sketch().file().equals(last) && sketched.name().passes(test)) {
        last = sketched.sketch().file();
        works.add(last);
      }
    }
    return works.size();
  }

  private static final class Rank implements Comparable<Rank> {
    private final String source;
    private final byte[] standing;
    private int value;

    Rank(String source, byte[] standing, int value) {
      this.source = source;
      this.standing = standing;
      this.value = value;
    }

    /** The one that comes last is the least. */
    @Override
    public int compareTo(Rank other) {
      return value != other.value
          ? Integer.compare(other.value, value)
          : Arrays.compareUnsigned(other.standing, standing);
    }
  }

  /** The first so many of any number; of the others nothing is kept. */
  private static final class First {
    private final int most;
    private final PriorityQueue<Rank> first = new PriorityQueue<>();

    First(int most) {
      this.most = most;
    }

    void offer(Rank rank) {
      if (first.size() < most) {
        first.add(rank);
      } else if (rank.compareTo(first.peek()) > 0) {
        first.poll();
        first.add(rank);
      }
    }

    Set<String> sources() {
      Set<String> sources = new HashSet<>();
      for (Rank rank : first) {
        sources.add(rank.source);
      }
      return sources;
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
