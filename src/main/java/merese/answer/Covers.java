package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Checked;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.LeftOut;
import merese.answer.Coverage.NotChecked;
import merese.answer.Coverage.Section;
import merese.answer.Coverage.SourceLine;
import merese.answer.CoverageQuestion.Showing;
import merese.model.Mine.Untraced;
import merese.model.Naming;
import merese.model.PlaceTest;
import merese.search.Census;
import merese.search.NoteSet;
import merese.search.PagesOfSource;
import merese.search.SourceSet;
import merese.shelf.NoteSketch;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.shelf.SourcedPage;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/**
 * Answers which sources cover a feature, by the rules R1 to R5, R7 and R9.
 *
 * <p>A question that can mean one thing only is answered for that concept, whatever the sources
 * call it. A word that can mean several gets a section for each, which holds the sources that print
 * the word and, apart, those that have the same feature under another name.
 *
 * <p>This is on the way of every start, so it is written in plain loops: a process pays for the
 * first use of each lambda and each stream.
 */
public final class Covers {
  private static final int NEAR_TERMS = 5;

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final CoverageQuestion question;
  private final SourceLines lines;
  private final Wanted wanted;

  private Covers(Shelf shelf, CoverageQuestion question) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.question = question;
    this.lines = new SourceLines();
    this.wanted = new Wanted(shelf, question.narrowing());
  }

  /**
   * Answers a question.
   *
   * @throws UnknownConceptException where the question names a concept that is not there
   */
  public static Coverage answer(Shelf shelf, CoverageQuestion question) {
    return shelf.ask(new Asking(question));
  }

  private record Asking(CoverageQuestion question) implements Function<Shelf, Coverage> {
    @Override
    public Coverage apply(Shelf shelf) {
      return new Covers(shelf, question).answer();
    }
  }

  private Coverage answer() {
    Interpretation meant = Interpretation.of(shelf, question);
    List<ConceptCoverage> found = new ArrayList<>();
    for (String concept : meant.concepts()) {
      found.add(ConceptCoverage.of(shelf, concept));
    }
    boolean byWord = meant.ask().isPresent();
    List<Classified> unassigned = new ArrayList<>();
    if (byWord || found.isEmpty()) {
      addPrintedWithoutMeaning(unassigned);
    }
    List<Section> sections = sections(found, byWord);
    List<PagesOfSource> naming = shelf.sourcesNaming(meant.concepts(), wanted.selection());
    int shown = question.showing().of(naming.size());
    List<OnPages> onPages = onPages(naming.subList(0, shown), found);
    Silence silence = found.isEmpty() ? Silence.NONE : silence(meant, grouped(found, unassigned));
    return new Coverage(
        question.phrase().isPresent() ? question.phrase().get() : question.concept().get(),
        meant.ask(),
        sections,
        new Entries(lines, thesaurus, Optional.empty()).of(unassigned, PlaceTest.PRESENT),
        silence.checked(),
        silence.allChecked(),
        silence.notChecked(),
        silence.allNotChecked(),
        leftOut(found),
        found.isEmpty() && unassigned.isEmpty() ? nearTerms() : List.of(),
        met(),
        onPages,
        naming.size() > shown ? naming.size() : onPages.size());
  }

  private List<OnPages> onPages(List<PagesOfSource> naming, List<ConceptCoverage> found) {
    if (naming.isEmpty()) {
      return List.of();
    }
    Set<String> sources = new HashSet<>();
    List<SourcedPage> pages = new ArrayList<>();
    for (PagesOfSource each : naming) {
      sources.add(each.owner().edition());
      pages.addAll(shelf.pages(each));
    }
    return new PagesNaming(shelf, found, sources).onPages(pages, lines);
  }

  private List<Section> sections(List<ConceptCoverage> found, boolean byWord) {
    List<Section> sections = new ArrayList<>();
    SectionMaker maker = new SectionMaker(shelf, lines, question.narrowing(), question.showing());
    if (byWord) {
      Words words = new Words(thesaurus, List.of(question.phrase().get()));
      for (int i = 0; i < found.size(); i++) {
        List<ConceptCoverage> others = new ArrayList<>(found);
        others.remove(i);
        sections.add(maker.ofWord(letter(i), found.get(i), others, words));
      }
    } else if (!found.isEmpty()) {
      sections.add(maker.ofConcept(found.get(0)));
    }
    return sections;
  }

  private static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + (index - 25);
  }

  /** Adds notes that print the phrase and say nothing of what it means. */
  private void addPrintedWithoutMeaning(List<Classified> found) {
    Words words = new Words(thesaurus, List.of(question.phrase().get()));
    Census census = shelf.census();
    NoteSet printing = census.unassigned().and(census.printing(words.forms()));
    for (NoteSketch sketch : shelf.sketches(printing)) {
      SourcedNote sourced = shelf.note(sketch);
      for (Naming naming : sourced.note().namings()) {
        if (naming.concept().isEmpty()
            && words.occurIn(naming.printed())
            && wanted.includes(sourced.source())) {
          found.add(new Classified(sourced, naming, Group.MEANING_NOT_STATED));
        }
      }
    }
  }

  /** The sources that are in some group. */
  private SourceSet grouped(List<ConceptCoverage> found, List<Classified> unassigned) {
    Set<String> keys = new HashSet<>();
    for (Classified classified : unassigned) {
      keys.add(classified.sourced().source().key());
    }
    SourceSet grouped = shelf.census().called(keys);
    for (ConceptCoverage coverage : found) {
      grouped = grouped.or(coverage.sources());
    }
    return grouped;
  }

  /** The sources that are wanted and in no group: looked through or not, the first of each. */
  private record Silence(
      List<Checked> checked, int allChecked, List<NotChecked> notChecked, int allNotChecked) {
    static final Silence NONE = new Silence(List.of(), 0, List.of(), 0);
  }

  private Silence silence(Interpretation meant, SourceSet grouped) {
    Census census = shelf.census();
    CheckLog log = CheckLog.unread(shelf, lines, meant.concepts(), question.narrowing());
    SourceSet silent = wanted.sources().without(grouped);
    SourceSet checked = silent.and(log.reached());
    SourceSet notChecked = silent.without(checked);
    Showing showing = question.showing().beside();
    return new Silence(
        log.checked(log.read(census.first(checked, showing.of(checked.size())))),
        checked.size(),
        log.notChecked(log.read(census.first(notChecked, showing.of(notChecked.size())))),
        notChecked.size());
  }

  /** Sources with coverage that the question did not want, by the reason. */
  private List<LeftOut> leftOut(List<ConceptCoverage> found) {
    if (!wanted.narrows()) {
      return List.of();
    }
    Map<String, Set<Source>> byReason = new TreeMap<>();
    for (ConceptCoverage coverage : found) {
      SourceSet counted = coverage.sources(Group.COUNTED).without(shelf.census().ownWork());
      for (Source source : shelf.sources(counted)) {
        String reason = wanted.reasonAgainst(source);
        if (!reason.isEmpty()) {
          Set<Source> known = byReason.get(reason);
          if (known == null) {
            known = new LinkedHashSet<>();
            byReason.put(reason, known);
          }
          known.add(source);
        }
      }
    }
    List<LeftOut> leftOut = new ArrayList<>();
    for (Map.Entry<String, Set<Source>> each : byReason.entrySet()) {
      List<SourceLine> sources = new ArrayList<>();
      for (Source source : lines.sorted(each.getValue())) {
        sources.add(lines.of(source));
      }
      leftOut.add(new LeftOut(each.getKey(), sources));
    }
    return leftOut;
  }

  private List<String> nearTerms() {
    List<String> near = new ArrayList<>();
    for (NearTerm term : thesaurus.nearTerms(question.phrase().get(), NEAR_TERMS)) {
      near.add(Thesaurus.display(term.label()));
    }
    return near;
  }

  /** The user's words whose source is forgotten, where one is the word asked for. */
  private List<Untraced> met() {
    List<Untraced> met = new ArrayList<>();
    if (question.phrase().isPresent()) {
      for (Untraced untraced : shelf.mine().untraced()) {
        if (thesaurus.areSameWords(untraced.word(), question.phrase().get())) {
          met.add(untraced);
        }
      }
    }
    return met;
  }
}
