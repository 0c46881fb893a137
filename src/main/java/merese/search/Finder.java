package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import merese.search.FoundHits.FoundHit;
import merese.vocabulary.Thesaurus;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
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
  private final Thesaurus thesaurus;

  Finder(IndexReader reader, Thesaurus thesaurus) {
    this.searcher = new LiveSearcher(reader);
    this.thesaurus = thesaurus;
  }

  /**
   * @param rank the place of an edition among hits that are otherwise equal
   */
  FoundHits find(FindQuery asked, int limit, ToIntFunction<String> rank) throws IOException {
    FindLucene queries =
        new FindLucene(asked, new FindConcepts(asked.text(), thesaurus), this::editions);
    List<Scored> strict = scored(queries.strict());
    List<FoundHit> hits = new ArrayList<>(best(strict, limit, rank, true));
    Optional<Query> loose = queries.loose();
    int some = 0;
    if (loose.isPresent()) {
      Set<Integer> known = new HashSet<>();
      strict.forEach(s -> known.add(s.id()));
      List<Scored> rest = scored(loose.get());
      rest.removeIf(s -> known.contains(s.id()));
      some = rest.size();
      hits.addAll(best(rest, limit - hits.size(), rank, false));
    }
    return new FoundHits(hits, strict.size(), some);
  }

  private record Scored(int id, int score) {}

  private List<Scored> scored(Query query) throws IOException {
    List<Scored> found = new ArrayList<>();
    Weight weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE, 1);
    for (LeafReaderContext leaf : searcher.getLeafContexts()) {
      Scorer scorer = weight.scorer(leaf);
      if (scorer != null) {
        Bits live = leaf.reader().getLiveDocs();
        DocIdSetIterator ids = scorer.iterator();
        for (int id = ids.nextDoc(); id != NO_MORE_DOCS; id = ids.nextDoc()) {
          if (live == null || live.get(id)) {
            found.add(new Scored(leaf.docBase + id, Math.round(scorer.score() / SAME)));
          }
        }
      }
    }
    return found;
  }

  private List<FoundHit> best(List<Scored> found, int most, ToIntFunction<String> rank, boolean all)
      throws IOException {
    if (most <= 0 || found.isEmpty()) {
      return List.of();
    }
    List<Scored> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(Scored::score).reversed());
    int last = sorted.get(Math.min(most, sorted.size()) - 1).score();
    List<Ranked> ranked = new ArrayList<>();
    for (Scored each : sorted) {
      if (each.score() < last) {
        break;
      }
      Document document =
          searcher
              .storedFields()
              .document(each.id(), Set.of(Fields.FOUND, Fields.FILE, Fields.EDITION, Fields.ORDER));
      ranked.add(new Ranked(each, document, rank.applyAsInt(edition(document))));
    }
    ranked.sort(Ranked.BEST_FIRST);
    List<FoundHit> hits = new ArrayList<>();
    for (Ranked each : ranked.subList(0, Math.min(most, ranked.size()))) {
      Document whole = searcher.storedFields().document(each.scored().id());
      hits.add(
          new FoundHit(
              each.kind(),
              whole.get(Fields.FILE),
              edition(whole),
              each.order(),
              all,
              NoteIndex.payload(whole)));
    }
    return hits;
  }

  private static String edition(Document document) {
    String edition = document.get(Fields.EDITION);
    return edition == null ? "" : edition;
  }

  /** Documents of one file that are no notes keep the order of the file, which is that of ids. */
  private record Ranked(Scored scored, Document document, int rank) {
    static final Comparator<Ranked> BEST_FIRST =
        Comparator.comparingInt((Ranked r) -> -r.scored().score())
            .thenComparing(Ranked::kind)
            .thenComparingInt(Ranked::rank)
            .thenComparing(r -> r.document().get(Fields.FILE))
            .thenComparing(r -> edition(r.document()))
            .thenComparingInt(Ranked::order)
            .thenComparingInt(r -> r.scored().id());

    HitKind kind() {
      return HitKind.valueOf(document.get(Fields.FOUND).toUpperCase(Locale.ROOT));
    }

    int order() {
      return document.getField(Fields.ORDER) == null
          ? 0
          : document.getField(Fields.ORDER).numericValue().intValue();
    }
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
        editions.add(
            searcher
                .storedFields()
                .document(each.id(), Set.of(Fields.EDITION))
                .get(Fields.EDITION));
      }
      return editions;
    } catch (IOException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }
}
