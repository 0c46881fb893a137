package merese.answer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.Classifier.Sketched;
import merese.answer.ConceptCoverage.Cut;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Narrowing;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/** Lays the notes on one meaning out as the section of an answer. */
final class SectionMaker {
  /** Groups that take in all places of their notes. */
  private static final Group[] WHOLE = {
    Group.NOT_THIS, Group.LOOK_ALIKES, Group.GENERAL_ONLY, Group.MEANING_NOT_STATED
  };

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final Narrowing narrowing;
  private final Wanted wanted;
  private final Evidence evidence;
  private final int most;

  /**
   * @param most how many sources of a group are shown
   */
  SectionMaker(Shelf shelf, SourceLines lines, Narrowing narrowing, int most) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
    this.narrowing = narrowing;
    this.wanted = new Wanted(shelf, narrowing);
    this.evidence = new Evidence(shelf, lines);
    this.most = most;
  }

  /** All there is on a concept, whatever it is called. */
  Section ofConcept(ConceptCoverage coverage) {
    Entries entries = entries(coverage);
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    Map<Group, Integer> all = new EnumMap<>(Group.class);
    Counting counting = counted(coverage, all);
    List<Classified> counted = counting.cut().notes();
    narrow(groups, entries.of(counted, PlaceTest.COVERS), counted, Group.COUNTED);
    List<Sketched> made = only(coverage.sketchedIn(Group.COUNTED, Group.HOW_IT_IS_MADE));
    Cut making = coverage.cut(made, PlaceTest.PROCESS, most);
    put(groups, all, Group.HOW_IT_IS_MADE, entries, making, PlaceTest.PROCESS);
    made.addAll(only(coverage.sketchedIn(Group.SAYS_NOT_SHOWN)));
    Cut denying = coverage.cut(made, PlaceTest.ABSENCE, most);
    put(groups, all, Group.SAYS_NOT_SHOWN, entries, denying, PlaceTest.ABSENCE);
    for (Group group : WHOLE) {
      Cut those = coverage.cut(group, wanted, PlaceTest.PRESENT, most);
      put(groups, all, group, entries, those, PlaceTest.PRESENT);
    }
    Cut own = coverage.cut(coverage.sketchedIn(Group.OWN_WORK), PlaceTest.COVERS, most);
    put(groups, all, Group.OWN_WORK, entries, own, PlaceTest.COVERS);
    List<Entry> first = groups.getOrDefault(Group.COUNTED, List.of());
    boolean isCut = all.getOrDefault(Group.COUNTED, 0) > first.size();
    return new Section(
        Optional.empty(),
        Headings.of(shelf, coverage.concept()),
        isCut ? all.get(Group.COUNTED) : first.size(),
        isCut ? counting.works() : works(first),
        filled(groups, all),
        howToTell(coverage.concept()),
        evidence.otherUsesOfWords(counted),
        evidence.ownPieces(coverage.wanted()),
        evidence.experience(coverage.wanted()));
  }

  /**
   * What counts.
   *
   * @param works how many works all counted sources are editions of
   */
  private record Counting(Cut cut, int works) {}

  /** Of a question about a place each source is read, to see what it says of it. */
  private Counting counted(ConceptCoverage coverage, Map<Group, Integer> all) {
    List<Sketched> counted = only(coverage.sketchedIn(Group.COUNTED));
    if (narrowing.place().isPresent()) {
      return new Counting(coverage.cut(counted, PlaceTest.COVERS, Integer.MAX_VALUE), 0);
    } else if (!narrowing.pictured()) {
      Cut cut = coverage.cut(counted, PlaceTest.COVERS, most);
      all.put(Group.COUNTED, cut.sources());
      return new Counting(cut, ConceptCoverage.works(counted, PlaceTest.COVERS));
    }
    Set<String> picturing = new HashSet<>();
    for (Sketched sketched : counted) {
      if (sketched.name().isPictured(PlaceTest.COVERS)) {
        picturing.add(sketched.sketch().source());
      }
    }
    List<Sketched> pictured = new ArrayList<>();
    List<Sketched> inWords = new ArrayList<>();
    for (Sketched sketched : counted) {
      (picturing.contains(sketched.sketch().source()) ? pictured : inWords).add(sketched);
    }
    Cut first = coverage.cut(pictured, PlaceTest.COVERS, most);
    Cut rest = coverage.cut(inWords, PlaceTest.COVERS, most);
    all.put(Group.COUNTED, first.sources());
    all.put(Group.IN_WORDS_ONLY, rest.sources());
    return new Counting(first.and(rest), ConceptCoverage.works(pictured, PlaceTest.COVERS));
  }

  private static void put(
      Map<Group, List<Entry>> groups,
      Map<Group, Integer> all,
      Group group,
      Entries entries,
      Cut cut,
      PlaceTest test) {
    groups.put(group, entries.of(cut.notes(), test));
    all.put(group, cut.sources());
  }

  /**
   * What the word has to do with one of its meanings.
   *
   * @param others the word's other meanings, which keep the notes that are nearer to them
   */
  Section ofWord(
      String letter, ConceptCoverage coverage, List<ConceptCoverage> others, Words words) {
    Entries entries = entries(coverage);
    List<Classified> printed = new ArrayList<>();
    List<Classified> otherwise = new ArrayList<>();
    Set<Source> printing = new HashSet<>();
    for (Classified classified : onlyWhole(coverage.in(Group.COUNTED))) {
      if (!belongsElsewhere(classified, coverage, others)) {
        if (words.occurIn(classified.naming().printed())) {
          printed.add(classified);
          printing.add(classified.sourced().source());
        } else {
          otherwise.add(classified);
        }
      }
    }
    List<Classified> elsewhere = new ArrayList<>();
    for (Classified classified : otherwise) {
      if (!printing.contains(classified.sourced().source())) {
        elsewhere.add(classified);
      }
    }
    List<Classified> denied = new ArrayList<>();
    for (Classified classified : onlyWhole(coverage.in(Group.COUNTED, Group.SAYS_NOT_SHOWN))) {
      if (!belongsElsewhere(classified, coverage, others)
          && words.occurIn(classified.naming().printed())) {
        denied.add(classified);
      }
    }
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    narrow(groups, entries.of(printed, PlaceTest.COVERS), printed, Group.COUNTED);
    narrow(groups, entries.of(elsewhere, PlaceTest.COVERS), elsewhere, Group.SAME_FEATURE);
    groups.put(Group.SAYS_NOT_SHOWN, entries.of(denied, PlaceTest.ABSENCE));
    List<Entry> first = groups.getOrDefault(Group.COUNTED, List.of());
    return new Section(
        Optional.of(letter),
        Headings.of(shelf, coverage.concept()),
        first.size(),
        works(first),
        filled(groups, Map.of()),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /** Whether another meaning is narrower than this one and nearer to the note. */
  private static boolean belongsElsewhere(
      Classified classified, ConceptCoverage coverage, List<ConceptCoverage> others) {
    String concept = classified.naming().concept().get();
    for (ConceptCoverage other : others) {
      if (coverage.wanted().contains(other.concept()) && other.wanted().contains(concept)) {
        return true;
      }
    }
    return false;
  }

  /**
   * @param all how many entries a group has of which there are only the first
   */
  private static List<Grouped> filled(Map<Group, List<Entry>> groups, Map<Group, Integer> all) {
    List<Grouped> filled = new ArrayList<>();
    for (Map.Entry<Group, List<Entry>> each : groups.entrySet()) {
      if (!each.getValue().isEmpty()) {
        int shown = each.getValue().size();
        int number = Math.max(shown, all.getOrDefault(each.getKey(), shown));
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

  private List<Sketched> only(List<Sketched> namings) {
    if (!wanted.narrows()) {
      return namings;
    }
    List<Sketched> wantedOnes = new ArrayList<>();
    for (Sketched sketched : namings) {
      if (wanted.test(sketched.sketch().source())) {
        wantedOnes.add(sketched);
      }
    }
    return wantedOnes;
  }

  private List<Classified> onlyWhole(List<Classified> namings) {
    List<Classified> wantedOnes = new ArrayList<>();
    for (Classified classified : namings) {
      if (wanted.includes(classified.sourced().source())) {
        wantedOnes.add(classified);
      }
    }
    return wantedOnes;
  }
}
