package merese.answer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage.Cut;
import merese.answer.ConceptCoverage.Sketched;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Showing;
import merese.model.PlaceTest;
import merese.search.SourceSet;
import merese.shelf.Shelf;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/** Lays the notes on one meaning out as the section of an answer. */
final class SectionMaker {
  /** The groups beside what counts. */
  private static final Group[] OTHERS = {
    Group.HOW_IT_IS_MADE,
    Group.SAYS_NOT_SHOWN,
    Group.NOT_THIS,
    Group.LOOK_ALIKES,
    Group.GENERAL_ONLY,
    Group.MEANING_NOT_STATED,
    Group.OWN_WORK
  };

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final Narrowing narrowing;
  private final Wanted wanted;
  private final Evidence evidence;
  private final Showing showing;

  /**
   * @param showing how many sources of a group are shown
   */
  SectionMaker(Shelf shelf, SourceLines lines, Narrowing narrowing, Showing showing) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
    this.narrowing = narrowing;
    this.wanted = new Wanted(shelf, narrowing);
    this.evidence = new Evidence(shelf, lines);
    this.showing = showing;
  }

  /** All there is on a concept, whatever it is called. */
  Section ofConcept(ConceptCoverage coverage) {
    Entries entries = entries(coverage);
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    Map<Group, SourceSet> all = new EnumMap<>(Group.class);
    List<Classified> counted = counted(coverage, all);
    narrow(groups, entries.of(counted, PlaceTest.COVERS), counted, Group.COUNTED);
    for (Group group : OTHERS) {
      SourceSet among = group == Group.OWN_WORK ? shelf.census().ownWork() : wanted.sources();
      Cut cut = coverage.cut(group, among, showing.beside());
      groups.put(group, entries.of(cut.notes(), ConceptCoverage.test(group)));
      all.put(group, cut.sources());
    }
    List<Entry> first = groups.getOrDefault(Group.COUNTED, List.of());
    SourceSet countedAll = all.get(Group.COUNTED);
    boolean isCut = countedAll != null && countedAll.size() > first.size();
    return new Section(
        Optional.empty(),
        Headings.of(shelf, coverage.concept()),
        isCut ? countedAll.size() : first.size(),
        isCut ? shelf.census().works(countedAll) : works(first),
        filled(groups, all),
        howToTell(coverage.concept()),
        evidence.otherUsesOfWords(counted, coverage.wanted(), showing.isAll()),
        evidence.ownPieces(coverage.wanted()),
        evidence.experience(coverage.wanted()));
  }

  /**
   * What counts. Of a question about a place each source is read, to see what it says of it.
   *
   * @param all takes the groups of which only the first sources are read
   */
  private List<Classified> counted(ConceptCoverage coverage, Map<Group, SourceSet> all) {
    if (narrowing.place().isPresent()) {
      return coverage.cut(Group.COUNTED, wanted.sources(), Showing.ALL).notes();
    } else if (!narrowing.pictured()) {
      Cut cut = coverage.cut(Group.COUNTED, wanted.sources(), showing);
      all.put(Group.COUNTED, cut.sources());
      return cut.notes();
    }
    SourceSet picturing = coverage.picturing();
    Cut pictured = coverage.cut(Group.COUNTED, wanted.sources().and(picturing), showing);
    Cut inWords =
        coverage.cut(Group.COUNTED, wanted.sources().without(picturing), showing.beside());
    all.put(Group.COUNTED, pictured.sources());
    all.put(Group.IN_WORDS_ONLY, inWords.sources());
    List<Classified> both = new ArrayList<>(pictured.notes());
    both.addAll(inWords.notes());
    return both;
  }

  /**
   * What the word has to do with one of its meanings.
   *
   * @param others the word's other meanings, which keep the notes that are nearer to them
   */
  Section ofWord(
      String letter, ConceptCoverage coverage, List<ConceptCoverage> others, Words words) {
    List<Sketched> printed = new ArrayList<>();
    List<Sketched> otherwise = new ArrayList<>();
    Set<String> printing = new HashSet<>();
    List<Sketched> counting = coverage.sketched(wanted.sources(), Group.COUNTED);
    for (Sketched each : counting) {
      if (!belongsElsewhere(each, coverage, others)) {
        if (words.occurIn(each.naming().name().printed())) {
          printed.add(each);
          printing.add(each.note().source());
        } else {
          otherwise.add(each);
        }
      }
    }
    List<Sketched> elsewhere = new ArrayList<>();
    for (Sketched each : otherwise) {
      if (!printing.contains(each.note().source())) {
        elsewhere.add(each);
      }
    }
    List<Sketched> denied = new ArrayList<>();
    List<Sketched> denying = new ArrayList<>(counting);
    denying.addAll(coverage.sketched(wanted.sources(), Group.SAYS_NOT_SHOWN));
    for (Sketched each : denying) {
      if (!belongsElsewhere(each, coverage, others)
          && words.occurIn(each.naming().name().printed())) {
        denied.add(each);
      }
    }
    Entries entries = entries(coverage);
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    Map<Group, SourceSet> all = new EnumMap<>(Group.class);
    List<Classified> counted = first(Group.COUNTED, printed, coverage, all);
    narrow(groups, entries.of(counted, PlaceTest.COVERS), counted, Group.COUNTED);
    List<Classified> same = first(Group.SAME_FEATURE, elsewhere, coverage, all);
    narrow(groups, entries.of(same, PlaceTest.COVERS), same, Group.SAME_FEATURE);
    groups.put(
        Group.SAYS_NOT_SHOWN,
        entries.of(first(Group.SAYS_NOT_SHOWN, denied, coverage, all), PlaceTest.ABSENCE));
    List<Entry> first = groups.getOrDefault(Group.COUNTED, List.of());
    SourceSet countedAll = all.get(Group.COUNTED);
    return new Section(
        Optional.of(letter),
        Headings.of(shelf, coverage.concept()),
        countedAll != null ? countedAll.size() : first.size(),
        countedAll != null ? shelf.census().works(countedAll) : works(first),
        filled(groups, all),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /**
   * The notes of a group's first sources, read. Where the question parts the group by pictures or
   * by a place, all are read, to see what goes where.
   *
   * @param all takes the group where only the first of its sources are read
   */
  private List<Classified> first(
      Group group, List<Sketched> some, ConceptCoverage coverage, Map<Group, SourceSet> all) {
    boolean parted = narrowing.pictured() || narrowing.place().isPresent();
    PlaceTest test = group == Group.SAYS_NOT_SHOWN ? PlaceTest.ABSENCE : PlaceTest.COVERS;
    Showing usual = group == Group.COUNTED ? showing : showing.beside();
    Showing most = parted && group != Group.SAYS_NOT_SHOWN ? Showing.ALL : usual;
    FirstSketched first = FirstSketched.of(some, coverage.concept(), thesaurus, test, most);
    if (first.shown().size() < some.size()) {
      all.put(group, shelf.census().called(first.sources()));
    }
    return coverage.whole(first.shown());
  }

  /** Whether another meaning is narrower than this one and nearer to the note. */
  private static boolean belongsElsewhere(
      Sketched sketched, ConceptCoverage coverage, List<ConceptCoverage> others) {
    String concept = sketched.naming().name().concept().get();
    for (ConceptCoverage other : others) {
      if (coverage.wanted().contains(other.concept()) && other.wanted().contains(concept)) {
        return true;
      }
    }
    return false;
  }

  /**
   * @param all the sources of the groups of which there are only the first
   */
  private static List<Grouped> filled(Map<Group, List<Entry>> groups, Map<Group, SourceSet> all) {
    List<Grouped> filled = new ArrayList<>();
    for (Map.Entry<Group, List<Entry>> each : groups.entrySet()) {
      if (!each.getValue().isEmpty()) {
        int shown = each.getValue().size();
        SourceSet sources = all.get(each.getKey());
        int number = sources == null ? shown : Math.max(shown, sources.size());
        filled.add(new Grouped(each.getKey(), each.getValue(), number));
      }
    }
    return filled;
  }

  private int works(List<Entry> entries) {
    Set<String> ids = new HashSet<>();
    for (Entry entry : entries) {
      ids.add(shelf.source(entry.source().key()).workId());
    }
    return ids.size();
  }

  /** Parts what is covered by what the question narrows: pictures (R2), then the place. */
  private void narrow(
      Map<Group, List<Entry>> groups, List<Entry> all, List<Classified> notes, Group counted) {
    PlaceClaims claims = new PlaceClaims(narrowing.place(), notes);
    for (Entry entry : evidence.withConflictsAndPictures(all, notes)) {
      Group group = counted;
      if (narrowing.pictured() && !Entries.isPictured(entry)) {
        group = Group.IN_WORDS_ONLY;
      } else if (narrowing.place().isPresent()) {
        group = claims.group(entry, counted, Group.SILENT_ON_PLACE, Group.OTHER_PLACES);
      }
      List<Entry> known = groups.get(group);
      if (known == null) {
        known = new ArrayList<>();
        groups.put(group, known);
      }
      known.add(claims.with(entry));
    }
  }

  /** A pair that one side states without a test is left out where the other side gives one. */
  private List<HowToTell> howToTell(String concept) {
    List<LookAlikePair> pairs = thesaurus.lookAlikes(concept);
    List<HowToTell> lines = new ArrayList<>();
    for (LookAlikePair pair : pairs) {
      if (pair.test().isPresent() || !isTold(pair, pairs)) {
        lines.add(
            new HowToTell(
                evidence.line(pair.here().id()),
                evidence.line(pair.other().id()),
                pair.test(),
                evidence.line(pair.statedBy().id())));
      }
    }
    return lines;
  }

  private static boolean isTold(LookAlikePair pair, List<LookAlikePair> pairs) {
    for (LookAlikePair other : pairs) {
      if (other.test().isPresent()
          && other.here().id().equals(pair.here().id())
          && other.other().id().equals(pair.other().id())) {
        return true;
      }
    }
    return false;
  }

  private Entries entries(ConceptCoverage coverage) {
    return new Entries(lines, thesaurus, Optional.of(coverage.concept()));
  }
}
