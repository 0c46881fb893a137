package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import merese.search.BestPages.Candidate;
import merese.search.PageFiles.PageFile;
import merese.search.PageHits.PageHit;
import merese.search.PageHits.PageTaker;
import merese.vocabulary.MisreadWords;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.TwoPhaseIterator;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;

/** Asks the index for pages by their words, and for their texts. */
final class PageFinder {
  /** Of the 1,024 clauses that Lucene takes. */
  private static final int MOST_CLAUSES = 1_000;

  private final LuceneCommit lucene;

  PageFinder(LuceneCommit lucene) {
    this.lucene = lucene;
  }

  private interface Reading<T> {
    T read() throws IOException;
  }

  private static <T> T reading(Reading<T> reading) {
    try {
      return reading.read();
    } catch (FindQueryException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  /**
   * As {@link NoteIndex#findPages}. A page has the words or has them not, so that of many pages
   * most are equally good: of these only the files are looked at, and whether words stand side by
   * side is looked for where the page would be shown for it.
   */
  PageHits find(
      PageQuery made,
      FindQuery asked,
      Finder finder,
      int limit,
      Function<String, byte[]> standing) {
    return reading(
        () -> {
          BestPages best = new BestPages(limit);
          Optional<PlainWords> plain = PlainWords.of(asked.root());
          Weight all = finder.weight(made.of(asked.root()), ScoreMode.COMPLETE);
          Optional<Query> sideBySide = made.sideBySide(asked.root());
          Weight bonus =
              sideBySide.isPresent()
                  ? finder.weight(sideBySide.get(), ScoreMode.COMPLETE_NO_SCORES)
                  : null;
          int count = 0;
          for (LeafReaderContext leaf : lucene.reader().leaves()) {
            Optional<PageMatches> found =
                plain.isPresent() ? plain.get().in(leaf.reader()) : Optional.empty();
            if (found.isEmpty()) {
              Scorer scorer = all.scorer(leaf);
              found =
                  scorer == null
                      ? Optional.empty()
                      : Optional.of(PageMatches.of(scorer, leaf.reader().getLiveDocs()));
            }
            if (found.isPresent()) {
              PageFiles.InSegment files = lucene.pageFiles().in(leaf, finder, standing);
              SideBySide beside = SideBySide.of(bonus == null ? null : bonus.scorer(leaf));
              count += take(found.get(), beside, files, leaf.docBase, best);
            }
          }
          return new PageHits(hits(best.all(), finder, limit), count);
        });
  }

  /** Returns how many matches there are. */
  private static int take(
      PageMatches found, SideBySide beside, PageFiles.InSegment files, int docBase, BestPages best)
      throws IOException {
    int count = 0;
    for (int id = found.next(); id != NO_MORE_DOCS; id = found.next()) {
      count++;
      int score = found.score();
      int highest = score + beside.most();
      if (best.mayTake(highest)) {
        PageFile file = files.of(id);
        if (best.mayTake(highest, file)) {
          best.take(beside.at(id) ? highest : score, file, docBase + id);
        }
      }
    }
    return count;
  }

  private record Ranked(Candidate candidate, StoredValue value) {
    static final Comparator<Ranked> BEST_FIRST =
        Comparator.comparing(Ranked::candidate, Candidate.BEST_FIRST).thenComparing(Ranked::value);
  }

  private static List<PageHit> hits(List<Candidate> best, Finder finder, int limit)
      throws IOException {
    List<Ranked> ranked = new ArrayList<>();
    for (Candidate each : best) {
      ranked.add(new Ranked(each, finder.value(each.document())));
    }
    ranked.sort(Ranked.BEST_FIRST);
    List<PageHit> hits = new ArrayList<>();
    for (Ranked each : ranked.subList(0, Math.min(limit, ranked.size()))) {
      hits.add(hit(each.value()));
    }
    return hits;
  }

  /** Tells of pages, one after another, whether they have the words side by side. */
  private static final class SideBySide {
    private final TwoPhaseIterator exactly;
    private final DocIdSetIterator roughly;

    private SideBySide(TwoPhaseIterator exactly, DocIdSetIterator roughly) {
      this.exactly = exactly;
      this.roughly = roughly;
    }

    /**
     * @param scorer of the words side by side; null for nowhere
     */
    static SideBySide of(Scorer scorer) {
      TwoPhaseIterator exactly = scorer == null ? null : scorer.twoPhaseIterator();
      return new SideBySide(
          exactly,
          scorer == null
              ? DocIdSetIterator.empty()
              : exactly == null ? scorer.iterator() : exactly.approximation());
    }

    /** What it is worth. */
    int most() {
      return roughly.cost() == 0 ? 0 : PageQuery.SIDE_BY_SIDE;
    }

    boolean at(int document) throws IOException {
      int at = roughly.docID() < document ? roughly.advance(document) : roughly.docID();
      return at == document && (exactly == null || exactly.matches());
    }
  }

  static PageHit hit(StoredValue value) {
    return new PageHit(value.file(), value.edition(), value.order(), value.payload());
  }

  /** As {@link NoteIndex#eachPage}. */
  void each(Collection<String> concepts, Collection<List<String>> labels, PageTaker taker) {
    reading(
        () -> {
          Finder finder = new Finder(lucene);
          StoredFields texts = lucene.reader().storedFields();
          BitSet done = new BitSet();
          for (Query query : queries(concepts, labels)) {
            finder.each(
                query,
                (document, score) -> {
                  if (!done.get(document)) {
                    done.set(document);
                    taker.take(hit(finder.value(document)), text(texts, document));
                  }
                });
          }
          return done;
        });
  }

  /** Lucene takes only so many clauses in one query, and a vocabulary may have any number. */
  private static List<Query> queries(Collection<String> concepts, Collection<List<String>> labels) {
    List<Query> queries = new ArrayList<>();
    List<BytesRef> names = new ArrayList<>();
    concepts.forEach(c -> names.add(new BytesRef(Fields.bounded(c))));
    queries.add(new TermInSetQuery(Fields.PAGE_NAMES, names));
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    int clauses = 0;
    for (List<String> words : labels) {
      int more = 1 + 5 * words.size();
      if (clauses + more > MOST_CLAUSES && clauses > 0) {
        queries.add(any.build());
        any = new BooleanQuery.Builder();
        clauses = 0;
      }
      any.add(holding(words), Occur.SHOULD);
      clauses += more;
    }
    queries.add(any.build());
    return queries;
  }

  private static Query holding(List<String> words) {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    for (String word : words) {
      BooleanQuery.Builder either = new BooleanQuery.Builder();
      either.add(new TermQuery(new Term(Fields.PAGE, Fields.bounded(word))), Occur.SHOULD);
      String loose = Fields.bounded(MisreadWords.loose(word));
      either.add(new TermQuery(new Term(Fields.PAGE_LOOSE, loose)), Occur.SHOULD);
      for (String form : List.of(Fields.bounded(word), loose)) {
        either.add(new TermQuery(new Term(Fields.PAGE_END, form)), Occur.SHOULD);
      }
      all.add(either.build(), Occur.FILTER);
    }
    return all.build();
  }

  /** The text of a page, as {@link merese.vocabulary.PageReading#kept} gave it. */
  String text(String file, int page) {
    return reading(
        () -> {
          Term unique = new Term(Fields.UNIQUE, Fields.bounded(Fields.page(file, page)));
          for (LeafReaderContext leaf : lucene.reader().leaves()) {
            PostingsEnum found = leaf.reader().postings(unique, PostingsEnum.NONE);
            Bits live = leaf.reader().getLiveDocs();
            for (int id = found == null ? NO_MORE_DOCS : found.nextDoc();
                id != NO_MORE_DOCS;
                id = found.nextDoc()) {
              if (live == null || live.get(id)) {
                return text(leaf.reader().storedFields(), id);
              }
            }
          }
          throw new IndexDamagedException("the index lacks page " + page + " of " + file, null);
        });
  }

  private static String text(StoredFields texts, int document) throws IOException {
    return texts.document(document, Set.of(Fields.PAGE_TEXT)).get(Fields.PAGE_TEXT);
  }
}
