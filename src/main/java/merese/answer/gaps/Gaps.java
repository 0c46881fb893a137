package merese.answer.gaps;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.CheckLog;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.SourceLine;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Headings;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.gaps.GapList.Gap;
import merese.answer.gaps.GapList.Looked;
import merese.answer.gaps.GapList.OutOfScope;
import merese.answer.gaps.GapList.State;
import merese.answer.gaps.GapList.Use;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.Thesaurus;

/**
 * Answers what is not known, and says of each thing why: looked for in vain, looked up in an index
 * alone, out of a source's scope, or not looked for. Nothing is called unrecorded because nobody
 * looked.
 *
 * <p>A concept takes in what is narrower (R1). Sources that only say that it is not shown (R3), and
 * the user's own articles, name nothing.
 */
public final class Gaps {
  private final Shelf shelf;
  private final GapsQuestion question;
  private final SourceLines lines;
  private final List<Source> sources = new ArrayList<>();

  private Gaps(Shelf shelf, GapsQuestion question) {
    this.shelf = shelf;
    this.question = question;
    this.lines = new SourceLines();
    for (Source source : shelf.sources()) {
      if (!source.mine() && (!question.owned() || source.owned())) {
        sources.add(source);
      }
    }
    sources.sort(Source.BY_YEAR);
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static GapList answer(Shelf shelf, GapsQuestion question) {
    return shelf.ask(s -> new Gaps(s, question).answer());
  }

  private GapList answer() {
    List<Topic> topics =
        question.terms().isEmpty()
            ? wholeVocabulary()
            : Topic.withFacets(
                shelf, question.terms().stream().map(this::known).toList(), Optional.empty());
    List<Gap> gaps = new ArrayList<>();
    Tasks tasks = new Tasks(lines, sources);
    for (Topic topic : topics) {
      Gap gap = gap(topic);
      gaps.add(gap);
      tasks.add(gap);
    }
    return new GapList(
        question.terms().isEmpty(),
        question.owned(),
        sources.size(),
        gaps,
        tasks.inShelfOrder(),
        untraced());
  }

  /** A label of the user's own that the vocabulary has not is taken for the concept it is for. */
  private String known(String term) {
    Thesaurus thesaurus = shelf.thesaurus();
    if (thesaurus.concept(term).isEmpty()
        && thesaurus.facet(term).isEmpty()
        && shelf.meanings(List.of(term)).get(term).isEmpty()) {
      for (Coinage coinage : shelf.mine().coinages()) {
        if (thesaurus.areSameWords(coinage.label(), term)) {
          return coinage.concept();
        }
      }
    }
    return term;
  }

  private List<Topic> wholeVocabulary() {
    List<Topic> topics = new ArrayList<>();
    for (Concept concept : shelf.thesaurus().concepts()) {
      topics.add(new Topic(concept.id(), Headings.of(shelf, concept.id())));
    }
    return topics;
  }

  /** All of them, or those that are the very words asked for. */
  private List<Untraced> untraced() {
    List<Untraced> found = new ArrayList<>();
    for (Untraced untraced : shelf.mine().untraced()) {
      boolean asked = question.terms().isEmpty();
      for (String term : question.terms()) {
        asked |= shelf.thesaurus().areSameWords(untraced.word(), term);
      }
      if (asked) {
        found.add(untraced);
      }
    }
    return found;
  }

  private Gap gap(Topic topic) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    List<Use> uses = uses(coverage, Group.COUNTED);
    Set<String> known = new HashSet<>();
    for (Group group : List.of(Group.COUNTED, Group.HOW_IT_IS_MADE, Group.SAYS_NOT_SHOWN)) {
      for (Classified classified : coverage.in(group)) {
        known.add(classified.sourced().source().key());
      }
    }
    CheckLog log = CheckLog.of(shelf, lines, List.of(topic.concept()), Narrowing.NONE);
    Silent silent = new Silent();
    for (Source source : sources) {
      if (!known.contains(source.key())) {
        silent.add(lines.of(source), log.reaching(source), log.remark(source));
      }
    }
    List<Coinage> coinages = new ArrayList<>();
    for (Coinage coinage : shelf.mine().coinages()) {
      if (coinage.concept().equals(topic.concept())) {
        coinages.add(coinage);
      }
    }
    Pieces pieces = Pieces.of(shelf, coverage.wanted());
    State state = state(uses);
    List<Use> mayMeanIt = uses(coverage, Group.MEANING_NOT_STATED);
    List<Use> ownWork = uses(coverage, Group.OWN_WORK);
    List<Use> notShown = uses(coverage, Group.SAYS_NOT_SHOWN);
    return new Gap(
        topic.heading(),
        state,
        uses,
        ownWork,
        notShown,
        mayMeanIt,
        silent.lookedThrough,
        silent.indexOnly,
        silent.wordSearchOnly,
        silent.toNote,
        silent.notInList,
        silent.noList,
        silent.outOfScope,
        silent.notChecked,
        coinages,
        pieces.lines(),
        Wording.of(state, uses, ownWork, notShown, mayMeanIt, silent, question.owned()),
        Wording.ofMine(coinages, pieces, uses));
  }

  private List<Use> uses(ConceptCoverage coverage, Group group) {
    return Uses.of(coverage.in(group), lines, sources, group);
  }

  private static State state(List<Use> uses) {
    boolean named = uses.stream().anyMatch(use -> !use.printed().isEmpty());
    boolean pictured = uses.stream().anyMatch(use -> !use.pictured().isEmpty());
    if (uses.isEmpty()) {
      return State.NOTHING;
    } else if (!named) {
      return State.WITHOUT_A_NAME;
    }
    return pictured ? State.NAMED_AND_PICTURED : State.NAMED_ONLY;
  }

  /** The sources that have nothing, each in the first list that fits. */
  static final class Silent {
    final List<Looked> lookedThrough = new ArrayList<>();
    final List<Looked> indexOnly = new ArrayList<>();
    final List<Looked> wordSearchOnly = new ArrayList<>();
    final List<Looked> toNote = new ArrayList<>();
    final List<Looked> notInList = new ArrayList<>();
    final List<Looked> noList = new ArrayList<>();
    final List<OutOfScope> outOfScope = new ArrayList<>();
    final List<SourceLine> notChecked = new ArrayList<>();

    void add(SourceLine source, List<Check> checks, Optional<String> remark) {
      if (!checks.isEmpty()) {
        List<CheckLine> said = checks.stream().map(CheckLog::line).toList();
        list(checks).add(new Looked(source, said));
      } else if (remark.isPresent()) {
        outOfScope.add(new OutOfScope(source, remark.get()));
      } else {
        notChecked.add(source);
      }
    }

    private List<Looked> list(List<Check> checks) {
      if (checks.stream().anyMatch(c -> c.result() == Check.Result.FOUND)) {
        return toNote;
      } else if (checks.stream().anyMatch(c -> c.result() == Check.Result.NOT_IN_LIST)) {
        return notInList;
      } else if (checks.stream()
          .anyMatch(c -> c.result() == Check.Result.NONE && c.method().ofPages())) {
        return lookedThrough;
      } else if (checks.stream().anyMatch(c -> c.result() == Check.Result.NO_LIST)) {
        return noList;
      }
      return checks.stream().anyMatch(c -> c.method() == Check.Method.INDEX_ONLY)
          ? indexOnly
          : wordSearchOnly;
    }

    /** All that were looked through without finding it, by year. */
    List<Looked> inVain() {
      List<Looked> all = new ArrayList<>();
      all.addAll(lookedThrough);
      all.addAll(notInList);
      all.addAll(noList);
      all.addAll(indexOnly);
      all.addAll(wordSearchOnly);
      return all;
    }
  }
}
