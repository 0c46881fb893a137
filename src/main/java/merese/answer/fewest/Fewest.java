package merese.answer.fewest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.Entries;
import merese.answer.NamedSource;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.fewest.FewestSources.Behind;
import merese.answer.fewest.FewestSources.Choice;
import merese.answer.fewest.FewestSources.Find;
import merese.answer.fewest.FewestSources.Instead;
import merese.answer.fewest.FewestSources.MoreTies;
import merese.answer.fewest.FewestSources.Nowhere;
import merese.answer.fewest.FewestSources.Proof;
import merese.answer.fewest.FewestSources.Rank;
import merese.answer.fewest.FewestSources.Taken;
import merese.answer.fewest.FewestSources.Tie;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Answers which sources are the fewest that have all features between them (R6). What a source only
 * says it does not show is never had (R3), and the user's own articles are no sources here.
 */
public final class Fewest {
  private static final int MOST_TIES = 10;

  private final Shelf shelf;
  private final FewestQuestion question;
  private final SourceLines lines;
  private final List<Topic> topics;
  private final Set<Source> must;
  private final Set<Source> without;

  /** For each topic, what each source has of it, whether or not it is allowed. */
  private final List<Map<Source, Find>> has = new ArrayList<>();

  /** For each topic, who says that it is not shown, and which of the user's own works have it. */
  private final List<List<SourceLine>> notShown = new ArrayList<>();

  private final List<List<SourceLine>> own = new ArrayList<>();

  private Fewest(Shelf shelf, FewestQuestion question) {
    this.shelf = shelf;
    this.question = question;
    this.lines = new SourceLines();
    this.topics = Topic.withFacets(shelf, question.terms(), question.facet());
    this.must = named(question.must());
    this.without = named(question.without());
    if (!Collections.disjoint(must, without)) {
      throw new FewestException("a source is both to be taken and not to be taken; leave one out");
    }
    for (Source source : must) {
      if (source.mine()) {
        throw new FewestException(
            source.key() + " is a piece of your own, which is no source here");
      }
    }
    Map<String, Source> byKey = new LinkedHashMap<>();
    shelf.sources().forEach(source -> byKey.put(source.key(), source));
    for (Topic topic : topics) {
      ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
      notShown.add(sources(coverage, Group.SAYS_NOT_SHOWN));
      own.add(sources(coverage, Group.OWN_WORK));
      Entries entries = new Entries(lines, shelf.thesaurus(), Optional.of(topic.concept()));
      Map<Source, Find> found = new TreeMap<>(Source.BY_YEAR);
      for (Entry entry : entries.of(coverage.in(Group.COUNTED), PlaceTest.COVERS)) {
        found.put(byKey.get(entry.source().key()), new Find(topic.heading(), entry.passages()));
      }
      has.add(found);
    }
  }

  /** The sources of a group, by year. */
  private List<SourceLine> sources(ConceptCoverage coverage, Group group) {
    Set<Source> sources = new TreeSet<>(Source.BY_YEAR);
    coverage.in(group).forEach(classified -> sources.add(classified.sourced().source()));
    return sources.stream().map(lines::of).toList();
  }

  private Set<Source> named(List<String> keys) {
    Set<Source> sources = new HashSet<>();
    for (String key : keys) {
      sources.add(NamedSource.find(shelf, key).source());
    }
    return sources;
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   * @throws merese.answer.UnknownSourceException for a key that no source has
   */
  public static FewestSources answer(Shelf shelf, FewestQuestion question) {
    return shelf.ask(opened -> new Fewest(opened, question).answer());
  }

  private FewestSources answer() {
    Candidates candidates = candidates(Set.of());
    Search search = new Search(candidates, deadline());
    search.run(MOST_TIES + 1);
    List<Tie> ties = new ArrayList<>();
    for (List<Integer> tie : search.covers().stream().skip(1).limit(MOST_TIES).toList()) {
      Rank rank = candidates.rank(tie);
      ties.add(
          new Tie(
              tie.stream().map(candidates.sources::get).map(lines::of).toList(),
              rank,
              behind(candidates.rank(search.covers().get(0)), rank)));
    }
    Optional<Choice> best =
        search.covers().isEmpty()
            ? Optional.empty()
            : Optional.of(candidates.choice(search.covers().get(0)));
    return new FewestSources(
        topics.stream().map(Topic::heading).toList(),
        question.pictured(),
        candidates.sources.size(),
        search.proof(question.seconds()),
        best,
        ties,
        moreTies(search),
        candidates.nowhere,
        best.flatMap(this::instead));
  }

  private long deadline() {
    return System.nanoTime() + question.seconds() * 1_000_000_000L;
  }

  private static MoreTies moreTies(Search search) {
    if (!search.isComplete()) {
      return MoreTies.NOT_KNOWN;
    }
    return search.covers().size() > MOST_TIES + 1 ? MoreTies.SOME : MoreTies.NONE;
  }

  private static Behind behind(Rank best, Rank other) {
    if (other.pictured() != best.pictured()) {
      return Behind.PICTURED;
    } else if (other.exact() != best.exact()) {
      return Behind.EXACT;
    } else if (other.owned() != best.owned()) {
      return Behind.OWNED;
    }
    return other.years().equals(best.years()) ? Behind.AUTHORS : Behind.YEARS;
  }

  /** The best choice without what is lent, missing or elsewhere. */
  private Optional<Instead> instead(Choice best) {
    List<SourceLine> unavailable =
        best.sources().stream()
            .map(Taken::source)
            .filter(source -> source.whereabouts().isPresent())
            .toList();
    if (unavailable.isEmpty()) {
      return Optional.empty();
    }
    Set<String> keys = new HashSet<>();
    shelf.sources().stream()
        .filter(source -> source.whereabouts().isPresent())
        .forEach(source -> keys.add(source.key()));
    Candidates others = candidates(keys);
    boolean all = others.topics.size() == candidates(Set.of()).topics.size();
    if (!all) {
      return Optional.of(new Instead(unavailable, Optional.empty(), false));
    }
    Search search = new Search(others, deadline());
    search.run(0);
    boolean proved = search.proof(question.seconds()).fewest();
    Optional<Choice> choice = search.covers().stream().findFirst().map(others::choice);
    return Optional.of(new Instead(unavailable, choice, proved));
  }

  private boolean isAllowed(Source source) {
    return !without.contains(source)
        && (must.contains(source) || !question.owned() || source.owned());
  }

  private boolean isHad(Find find) {
    return !question.pictured() || find.isPictured();
  }

  /**
   * @param left keys of sources that are left out
   */
  private Candidates candidates(Set<String> left) {
    Candidates candidates = new Candidates();
    Set<Source> sources = new HashSet<>(must);
    for (int i = 0; i < topics.size(); i++) {
      List<Source> having =
          has.get(i).entrySet().stream()
              .filter(e -> isHad(e.getValue()) && isAllowed(e.getKey()))
              .map(Map.Entry::getKey)
              .toList();
      if (having.isEmpty()) {
        candidates.nowhere.add(nowhere(i));
      } else if (having.stream().anyMatch(s -> !left.contains(s.key()))) {
        candidates.topics.add(i);
        sources.addAll(having);
      }
    }
    sources.removeIf(source -> left.contains(source.key()));
    candidates.sources.addAll(sources);
    candidates.sources.sort(Source.BY_YEAR);
    return candidates;
  }

  private Nowhere nowhere(int topic) {
    List<SourceLine> inWords = new ArrayList<>();
    List<SourceLine> notAllowed = new ArrayList<>();
    has.get(topic)
        .forEach(
            (source, find) -> {
              if (!isAllowed(source)) {
                notAllowed.add(lines.of(source));
              } else {
                inWords.add(lines.of(source));
              }
            });
    return new Nowhere(
        topics.get(topic).heading(), inWords, notAllowed, notShown.get(topic), own.get(topic));
  }

  /** The sources that may be taken, in the order of years and authors, and the topics they have. */
  private final class Candidates {
    private final List<Source> sources = new ArrayList<>();
    private final List<Integer> topics = new ArrayList<>();
    private final List<Nowhere> nowhere = new ArrayList<>();

    CoverProblem problem() {
      BitSet forced = new BitSet();
      for (int i = 0; i < sources.size(); i++) {
        forced.set(i, must.contains(sources.get(i)));
      }
      return new CoverProblem(topics.size(), rows(find -> true), forced);
    }

    Ranking ranking() {
      BitSet owned = new BitSet();
      int[] years = new int[sources.size()];
      for (int i = 0; i < years.length; i++) {
        owned.set(i, sources.get(i).owned());
        years[i] = sources.get(i).year().orElse(Ranking.UNDATED);
      }
      return new Ranking(rows(Find::isPictured), rows(this::isExact), owned, years);
    }

    private boolean isExact(Find find) {
      return find.passages().stream()
          .anyMatch(p -> !p.narrower() && (!question.pictured() || !p.pictured().isEmpty()));
    }

    private List<BitSet> rows(Predicate<Find> test) {
      List<BitSet> rows = new ArrayList<>();
      for (Source source : sources) {
        BitSet had = new BitSet();
        for (int row = 0; row < topics.size(); row++) {
          Find find = has.get(topics.get(row)).get(source);
          had.set(row, find != null && isHad(find) && test.test(find));
        }
        rows.add(had);
      }
      return rows;
    }

    Rank rank(List<Integer> cover) {
      Ranking ranking = ranking();
      return new Rank(
          cover.size(),
          union(ranking.pictured(), cover).cardinality(),
          union(ranking.exact(), cover).cardinality(),
          (int) cover.stream().filter(ranking.owned()::get).count(),
          cover.stream().map(c -> year(sources.get(c))).toList());
    }

    private static String year(Source source) {
      return source.year().isPresent() ? Integer.toString(source.year().getAsInt()) : "n.d.";
    }

    private static BitSet union(List<BitSet> rows, List<Integer> cover) {
      BitSet union = new BitSet();
      cover.forEach(column -> union.or(rows.get(column)));
      return union;
    }

    Choice choice(List<Integer> cover) {
      List<Taken> taken = new ArrayList<>();
      for (int column : cover) {
        Source source = sources.get(column);
        List<Find> finds = new ArrayList<>();
        for (int topic : topics) {
          Find find = has.get(topic).get(source);
          if (find != null && isHad(find)) {
            finds.add(question.pictured() ? find.onlyPictured() : find);
          }
        }
        taken.add(new Taken(lines.of(source), must.contains(source), finds));
      }
      Ranking ranking = ranking();
      return new Choice(
          taken,
          rank(cover),
          without(union(ranking.pictured(), cover)),
          without(union(ranking.exact(), cover)));
    }

    private List<Heading> without(BitSet rows) {
      List<Heading> left = new ArrayList<>();
      for (int row = 0; row < topics.size(); row++) {
        if (!rows.get(row)) {
          left.add(Fewest.this.topics.get(topics.get(row)).heading());
        }
      }
      return left;
    }
  }

  /** One search: how few do, then which of those come first. */
  private static final class Search {
    private final Candidates candidates;
    private final CoverProblem problem;
    private final long deadline;
    private final List<List<Integer>> covers = new ArrayList<>();
    private int atLeast;
    private boolean fewest;
    private boolean ranked;
    private boolean complete;

    Search(Candidates candidates, long deadline) {
      this.candidates = candidates;
      this.problem = candidates.problem();
      this.deadline = deadline;
    }

    /**
     * @param ties how many covers beside the best are looked for
     */
    void run(int ties) {
      if (candidates.sources.isEmpty()) {
        fewest = true;
        ranked = true;
        complete = true;
        return;
      }
      FewestColumns found = FewestColumns.of(problem, deadline);
      atLeast = found.atLeast();
      fewest = found.isProved();
      int size = found.columns().size();
      CoverSolver solver = new CoverSolver(problem, deadline);
      solver.atMost(solver.size(), size);
      Ranking ranking = candidates.ranking();
      while (covers.size() <= ties) {
        Ranking.Found next = fewest ? ranking.next(solver, size) : Ranking.Found.UNPROVED;
        if (next.state() != CoverSolver.State.PROVED) {
          complete = next.state() == CoverSolver.State.NONE;
          break;
        }
        covers.add(next.columns());
        ranked = true;
        complete = covers.size() > ties;
      }
      if (covers.isEmpty()) {
        covers.add(found.columns());
      }
    }

    List<List<Integer>> covers() {
      return covers;
    }

    boolean isComplete() {
      return complete;
    }

    Proof proof(int seconds) {
      return new Proof(fewest, ranked, atLeast, seconds);
    }
  }
}
