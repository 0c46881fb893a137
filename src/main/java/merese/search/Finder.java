package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import merese.search.FoundHits.FoundHit;
import merese.vocabulary.Thesaurus;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.Bits;

/** Asks the index questions in words. */
final class Finder {
  /** Scores that differ by less are the same, in whatever order their parts were added up. */
  private static final float SAME = 1e-3f;

  private final LiveSearcher searcher;

  Finder(LuceneCommit lucene) {
    this.searcher = lucene.searcher();
  }

  /** As {@link NoteIndex#find}; here, so that other questions do not load what this one needs. */
  static FoundHits ask(LuceneCommit lucene, FindQuery asked, int limit, Thesaurus thesaurus) {
    try {
      return new Finder(lucene).find(asked, limit, thesaurus);
    } catch (FindQueryException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  /** As {@link NoteIndex#findPages}. */
  static PageHits pages(
      LuceneCommit lucene,
      FindQuery asked,
      int limit,
      Thesaurus thesaurus,
      Function<String, byte[]> standing) {
    if (!PageQuery.looksForWords(asked)) {
      return new PageHits(List.of(), 0);
    }
    Finder finder = new Finder(lucene);
    FindConcepts concepts = new FindConcepts(asked.text(), thesaurus);
    FindLucene sources = new FindLucene(asked, concepts, finder::editions);
    PageQuery made = new PageQuery(sources, concepts);
    return new PageFinder(lucene).find(made, asked, finder, limit, standing);
  }

  /** As {@link NoteIndex#near}. */
  static List<NearWord> near(LuceneCommit lucene, FindQuery asked) {
    try {
      return NearWords.of(lucene.searcher(), asked);
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  private FoundHits find(FindQuery asked, int limit, Thesaurus thesaurus) throws IOException {
    FindLucene queries =
        new FindLucene(asked, new FindConcepts(asked.text(), thesaurus), this::editions);
    Matches strict = matches(queries.strict(), Matches.NONE);
    List<FoundHit> hits = new ArrayList<>(best(strict, limit, true));
    Optional<Query> loose = queries.loose();
    int some = 0;
    if (loose.isPresent()) {
      Matches rest = matches(loose.get(), strict);
      some = rest.count();
      hits.addAll(best(rest, limit - hits.size(), false));
    }
    return new FoundHits(hits, strict.count(), some);
  }

  record Scored(int id, int score) {}

  /** Takes what a query matches, in the order of the documents' numbers. */
  interface Match {
    void take(int document, int score) throws IOException;
  }

  List<Scored> scored(Query query) throws IOException {
    Matches found = new Matches();
    each(query, Matches.NONE, found::add);
    return found.all();
  }

  /**
   * @param known what is found already; it is left out, and not scored again
   */
  private Matches matches(Query query, Matches known) throws IOException {
    Matches found = new Matches();
    each(query, known, found::add);
    return found;
  }

  void each(Query query, Match match) throws IOException {
    each(query, Matches.NONE, match);
  }

  Weight weight(Query query, ScoreMode mode) throws IOException {
    return searcher.createWeight(searcher.rewrite(query), mode, 1);
  }

  private void each(Query query, Matches known, Match match) throws IOException {
    int next = 0;
    Weight weight = weight(query, ScoreMode.COMPLETE);
    for (LeafReaderContext leaf : searcher.getLeafContexts()) {
      Scorer scorer = weight.scorer(leaf);
      if (scorer != null) {
        Bits live = leaf.reader().getLiveDocs();
        DocIdSetIterator ids = scorer.iterator();
        for (int id = ids.nextDoc(); id != NO_MORE_DOCS; id = ids.nextDoc()) {
          while (next < known.count() && known.id(next) < leaf.docBase + id) {
            next++;
          }
          boolean isKnown = next < known.count() && known.id(next) == leaf.docBase + id;
          if (!isKnown && (live == null || live.get(id))) {
            match.take(leaf.docBase + id, Math.round(scorer.score() / SAME));
          }
        }
      }
    }
  }

  private List<FoundHit> best(Matches found, int most, boolean all) throws IOException {
    List<Scored> sorted = found.notWorseThanTheLast(most);
    List<HitKind> kinds = kinds(sorted);
    List<Ranked> ranked = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      Scored each = sorted.get(i);
      ranked.add(new Ranked(each.score(), kinds.get(i), value(each.id())));
    }
    ranked.sort(Ranked.BEST_FIRST);
    List<FoundHit> hits = new ArrayList<>();
    for (Ranked each : ranked.subList(0, Math.min(most, ranked.size()))) {
      StoredValue value = each.value();
      hits.add(new FoundHit(each.kind(), value.owner(), value.order(), all, value.payload()));
    }
    return hits;
  }

  /** What is otherwise equal goes by kind, by the standing of its source, then as values sort. */
  private record Ranked(int score, HitKind kind, StoredValue value) {
    static final Comparator<Ranked> BEST_FIRST =
        Comparator.comparingInt((Ranked r) -> -r.score())
            .thenComparing(Ranked::kind)
            .thenComparing(r -> r.value().owner().standing(), Arrays::compareUnsigned)
            .thenComparing(Ranked::value);
  }

  StoredValue value(int id) throws IOException {
    List<LeafReaderContext> leaves = searcher.getLeafContexts();
    LeafReaderContext leaf = leaves.get(ReaderUtil.subIndex(id, leaves));
    BinaryDocValues stored = leaf.reader().getBinaryDocValues(Fields.STORED);
    stored.advanceExact(id - leaf.docBase);
    return StoredValue.of(stored.binaryValue(), id);
  }

  /**
   * What each of some documents is found as.
   *
   * @param documents in the order of their numbers
   */
  private List<HitKind> kinds(List<Scored> documents) throws IOException {
    List<LeafReaderContext> leaves = searcher.getLeafContexts();
    HitKind[] kinds = new HitKind[documents.size()];
    for (HitKind kind : HitKind.values()) {
      Term term = new Term(Fields.FOUND, kind.code());
      int leaf = -1;
      PostingsEnum found = null;
      for (int i = 0; i < kinds.length; i++) {
        int id = documents.get(i).id();
        int in = ReaderUtil.subIndex(id, leaves);
        if (in != leaf) {
          leaf = in;
          found = leaves.get(leaf).reader().postings(term, PostingsEnum.NONE);
        }
        int inLeaf = id - leaves.get(leaf).docBase;
        if (found != null
            && (found.docID() >= inLeaf ? found.docID() : found.advance(inLeaf)) == inLeaf) {
          kinds[i] = kind;
        }
      }
    }
    return Arrays.asList(kinds);
  }

  private Set<String> editions(Query query) {
    try {
      Set<String> editions = new TreeSet<>();
      Query sources =
          new BooleanQuery.Builder()
              .add(query, Occur.MUST)
              .add(new TermQuery(new Term(Fields.TYPE, Fields.SOURCE)), Occur.FILTER)
              .build();
      for (Scored each : scored(sources)) {
        editions.add(value(each.id()).edition());
      }
      return editions;
    } catch (IOException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }
}
