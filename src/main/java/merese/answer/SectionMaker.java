package merese.answer;

import static merese.answer.Coverage.Group.COUNTED;
import static merese.answer.Coverage.Group.GENERAL_ONLY;
import static merese.answer.Coverage.Group.HOW_IT_IS_MADE;
import static merese.answer.Coverage.Group.IN_WORDS_ONLY;
import static merese.answer.Coverage.Group.LOOK_ALIKES;
import static merese.answer.Coverage.Group.MEANING_NOT_STATED;
import static merese.answer.Coverage.Group.NOT_THIS;
import static merese.answer.Coverage.Group.OTHER_PLACES;
import static merese.answer.Coverage.Group.OWN_WORK;
import static merese.answer.Coverage.Group.SAME_FEATURE;
import static merese.answer.Coverage.Group.SAYS_NOT_SHOWN;
import static merese.answer.Coverage.Group.SILENT_ON_PLACE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Narrowing;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.LookAlikePair;
import merese.vocabulary.Thesaurus;

/** Lays the notes on one meaning out as the section of an answer. */
final class SectionMaker {
  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final Narrowing narrowing;
  private final Wanted wanted;
  private final Evidence evidence;

  SectionMaker(Shelf shelf, SourceLines lines, Narrowing narrowing) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
    this.narrowing = narrowing;
    this.wanted = new Wanted(narrowing);
    this.evidence = new Evidence(shelf, lines);
  }

  /** All there is on a concept, whatever it is called. */
  Section ofConcept(ConceptCoverage coverage) {
    Entries entries = entries(coverage);
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    List<Classified> counted = only(coverage.in(COUNTED));
    narrow(groups, entries.of(counted, Classifier::covers), counted, COUNTED);
    groups.put(
        HOW_IT_IS_MADE,
        entries.of(only(coverage.in(COUNTED, HOW_IT_IS_MADE)), Place::showsProcess));
    groups.put(
        SAYS_NOT_SHOWN,
        entries.of(
            only(coverage.in(COUNTED, HOW_IT_IS_MADE, SAYS_NOT_SHOWN)), Classifier::isAbsence));
    for (Group group : List.of(NOT_THIS, LOOK_ALIKES, GENERAL_ONLY, MEANING_NOT_STATED)) {
      groups.put(group, entries.of(only(coverage.in(group)), place -> true));
    }
    groups.put(OWN_WORK, entries.of(coverage.in(OWN_WORK), Classifier::covers));
    return section(Optional.empty(), coverage, groups, counted);
  }

  /**
   * What the word has to do with one of its meanings.
   *
   * @param others the word's other meanings, which keep the notes that are nearer to them
   */
  Section ofWord(
      String letter, ConceptCoverage coverage, List<ConceptCoverage> others, Words words) {
    Entries entries = entries(coverage);
    Predicate<Classified> prints = c -> words.occurIn(thesaurus, c.naming().printed());
    Predicate<Classified> ours = c -> belongsHere(c, coverage, others);
    List<Classified> counted = only(coverage.in(COUNTED)).stream().filter(ours).toList();
    Map<Group, List<Entry>> groups = new EnumMap<>(Group.class);
    List<Classified> printed = counted.stream().filter(prints).toList();
    narrow(groups, entries.of(printed, Classifier::covers), printed, COUNTED);
    Set<Source> printing =
        printed.stream().map(c -> c.sourced().source()).collect(Collectors.toSet());
    List<Classified> otherwise =
        counted.stream()
            .filter(prints.negate())
            .filter(c -> !printing.contains(c.sourced().source()))
            .toList();
    narrow(groups, entries.of(otherwise, Classifier::covers), otherwise, SAME_FEATURE);
    groups.put(
        SAYS_NOT_SHOWN,
        entries.of(
            only(coverage.in(COUNTED, SAYS_NOT_SHOWN)).stream()
                .filter(ours)
                .filter(prints)
                .toList(),
            Classifier::isAbsence));
    return section(Optional.of(letter), coverage, groups, counted);
  }

  private static boolean belongsHere(
      Classified classified, ConceptCoverage coverage, List<ConceptCoverage> others) {
    String concept = classified.naming().concept().get();
    return others.stream()
        .filter(other -> coverage.wanted().contains(other.concept()))
        .noneMatch(nearer -> nearer.wanted().contains(concept));
  }

  private Section section(
      Optional<String> letter,
      ConceptCoverage coverage,
      Map<Group, List<Entry>> groups,
      List<Classified> counted) {
    List<Grouped> filled = new ArrayList<>();
    groups.forEach(
        (group, entries) -> {
          if (!entries.isEmpty()) {
            filled.add(new Grouped(group, entries));
          }
        });
    List<Entry> first = groups.getOrDefault(COUNTED, List.of());
    return new Section(
        letter,
        Headings.of(shelf, coverage.concept()),
        first.size(),
        works(first),
        filled,
        letter.isPresent() ? List.of() : howToTell(coverage.concept()),
        letter.isPresent() ? List.of() : evidence.otherUsesOfWords(filled, counted),
        letter.isPresent() ? List.of() : evidence.ownPieces(coverage.wanted()),
        letter.isPresent() ? List.of() : evidence.experience(coverage.wanted()));
  }

  private int works(List<Entry> entries) {
    Set<String> keys = entries.stream().map(e -> e.source().key()).collect(Collectors.toSet());
    return (int)
        shelf.sources().stream()
            .filter(s -> keys.contains(s.key()))
            .map(s -> s.work().id())
            .distinct()
            .count();
  }

  /** Parts what is covered by what the question narrows: pictures (R2), then the place. */
  private void narrow(
      Map<Group, List<Entry>> groups, List<Entry> all, List<Classified> notes, Group counted) {
    PlaceClaims claims = new PlaceClaims(narrowing.place(), notes);
    for (Entry entry : evidence.withConflictsAndPictures(all, notes)) {
      Group group = counted;
      if (narrowing.pictured() && !Entries.isPictured(entry)) {
        group = IN_WORDS_ONLY;
      } else if (narrowing.place().isPresent()) {
        group = claims.group(entry, counted, SILENT_ON_PLACE, OTHER_PLACES);
      }
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(claims.with(entry));
    }
  }

  /** A pair that one side states without a test is left out where the other side gives one. */
  private List<HowToTell> howToTell(String concept) {
    List<LookAlikePair> pairs = thesaurus.lookAlikes(concept);
    List<HowToTell> lines = new ArrayList<>();
    for (LookAlikePair pair : pairs) {
      boolean saidBetter =
          pairs.stream().anyMatch(p -> isSamePair(p, pair) && p.test().isPresent());
      if (pair.test().isPresent() || !saidBetter) {
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

  private static boolean isSamePair(LookAlikePair a, LookAlikePair b) {
    return a.here().id().equals(b.here().id()) && a.other().id().equals(b.other().id());
  }

  private Entries entries(ConceptCoverage coverage) {
    return new Entries(lines, thesaurus, Optional.of(coverage.concept()));
  }

  private List<Classified> only(List<Classified> namings) {
    return namings.stream().filter(c -> wanted.includes(c.sourced().source())).toList();
  }
}
