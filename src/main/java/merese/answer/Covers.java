package merese.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.LeftOut;
import merese.answer.Coverage.Section;
import merese.model.Naming;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/**
 * Answers which sources cover a feature, by the rules R1 to R5, R7 and R9.
 *
 * <p>A question that can mean one thing only is answered for that concept, whatever the sources
 * call it. A word that can mean several gets a section for each, which holds the sources that print
 * the word and, apart, those that have the same feature under another name.
 */
public final class Covers {
  private static final int NEAR_TERMS = 5;

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final CoverageQuestion question;
  private final SourceLines lines;

  private Covers(Shelf shelf, CoverageQuestion question) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.question = question;
    this.lines = new SourceLines(shelf.sources());
  }

  /**
   * @throws UnknownConceptException where the question names a concept that is not there
   */
  public static Coverage answer(Shelf shelf, CoverageQuestion question) {
    return new Covers(shelf, question).answer();
  }

  private Coverage answer() {
    Interpretation meant = Interpretation.of(shelf, question);
    List<ConceptCoverage> found =
        meant.concepts().stream().map(id -> ConceptCoverage.of(shelf, id)).toList();
    boolean byWord = meant.ask().isPresent();
    SectionMaker maker = new SectionMaker(shelf, lines, question.narrowing());
    List<Section> sections = new ArrayList<>();
    if (byWord) {
      Words words = new Words(thesaurus, List.of(question.phrase().get()));
      for (int i = 0; i < found.size(); i++) {
        sections.add(maker.ofWord(letter(i), found.get(i), others(found, i), words));
      }
    } else if (!found.isEmpty()) {
      sections.add(maker.ofConcept(found.get(0)));
    }

    List<Classified> unassigned =
        byWord || found.isEmpty() ? printedWithoutMeaning() : List.<Classified>of();
    Set<Source> grouped = new LinkedHashSet<>();
    found.forEach(f -> grouped.addAll(f.sources()));
    unassigned.forEach(c -> grouped.add(c.sourced().source()));
    CheckLog log = CheckLog.of(shelf, lines, meant.concepts(), question.narrowing());
    List<Source> silent =
        shelf.sources().stream()
            .filter(s -> !s.work().mine() && !grouped.contains(s))
            .filter(new Wanted(question.narrowing())::includes)
            .sorted(Source.BY_YEAR)
            .toList();
    boolean unknown = found.isEmpty() && unassigned.isEmpty();
    return new Coverage(
        question.phrase().orElseGet(question.concept()::get),
        meant.ask(),
        sections,
        new Entries(lines, thesaurus, Optional.empty()).of(unassigned, place -> true),
        found.isEmpty() ? List.of() : log.checked(silent),
        found.isEmpty() ? List.of() : log.notChecked(silent),
        leftOut(found),
        unknown ? nearTerms() : List.of(),
        met());
  }

  private static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + (index - 25);
  }

  private static List<ConceptCoverage> others(List<ConceptCoverage> all, int index) {
    List<ConceptCoverage> others = new ArrayList<>(all);
    others.remove(index);
    return others;
  }

  /** Notes that print the phrase and say nothing of what it means. */
  private List<Classified> printedWithoutMeaning() {
    Words words = new Words(thesaurus, List.of(question.phrase().get()));
    Wanted wanted = new Wanted(question.narrowing());
    List<Classified> found = new ArrayList<>();
    for (SourcedNote sourced : shelf.notes(words.criteria())) {
      for (Naming naming : sourced.note().namings()) {
        if (naming.concept().isEmpty()
            && words.occurIn(thesaurus, naming.printed())
            && wanted.includes(sourced.source())) {
          found.add(new Classified(sourced, naming, Group.MEANING_NOT_STATED));
        }
      }
    }
    return found;
  }

  /** Sources with coverage that the question did not want, by the reason. */
  private List<LeftOut> leftOut(List<ConceptCoverage> found) {
    Wanted wanted = new Wanted(question.narrowing());
    Map<String, Set<Source>> byReason = new TreeMap<>();
    for (ConceptCoverage coverage : found) {
      for (Classified classified : coverage.in(Group.COUNTED)) {
        Source source = classified.sourced().source();
        wanted
            .reasonAgainst(source)
            .ifPresent(r -> byReason.computeIfAbsent(r, x -> new LinkedHashSet<>()).add(source));
      }
    }
    List<LeftOut> leftOut = new ArrayList<>();
    byReason.forEach(
        (reason, sources) ->
            leftOut.add(
                new LeftOut(
                    reason, sources.stream().sorted(Source.BY_YEAR).map(lines::of).toList())));
    return leftOut;
  }

  private List<String> nearTerms() {
    List<String> near = new ArrayList<>();
    for (NearTerm term : thesaurus.nearTerms(question.phrase().get(), NEAR_TERMS)) {
      near.add(term.label().text());
    }
    return near;
  }

  private List<merese.model.Mine.Untraced> met() {
    return question.phrase().stream()
        .flatMap(
            phrase ->
                shelf.mine().untraced().stream()
                    .filter(u -> thesaurus.areSameWords(u.word(), phrase)))
        .toList();
  }

  /** The entries of a section that count, for those who list sources. */
  public static List<Entry> counted(Section section) {
    return section.group(Group.COUNTED);
  }
}
