package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import merese.search.PageHits.PageHit;
import merese.vocabulary.MisreadWords;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.Bits;

/** Asks the index for pages by their words, and for their texts. */
final class PageFinder {
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

  /** As {@link NoteIndex#findPages}. */
  PageHits find(
      PageQuery made,
      FindQuery asked,
      Finder finder,
      int limit,
      Function<String, byte[]> standing) {
    return reading(
        () -> {
          List<Finder.Scored> all = finder.scored(made.of(asked.root()));
          List<Ranked> found = new ArrayList<>();
          for (Finder.Scored each : Finder.notWorseThanTheLast(all, limit)) {
            StoredValue value = finder.value(each.id());
            found.add(new Ranked(each.score(), standing.apply(value.edition()), value));
          }
          found.sort(Ranked.BEST_FIRST);
          List<PageHit> best = new ArrayList<>();
          found.subList(0, Math.min(limit, found.size())).forEach(r -> best.add(hit(r.value())));
          return new PageHits(best, all.size());
        });
  }

  /** What has the words better comes first; then by source, file and page. */
  private record Ranked(int score, byte[] standing, StoredValue value) {
    static final Comparator<Ranked> BEST_FIRST =
        Comparator.comparingInt((Ranked r) -> -r.score())
            .thenComparing(Ranked::standing, Arrays::compareUnsigned)
            .thenComparing(Ranked::value);
  }

  static PageHit hit(StoredValue value) {
    return new PageHit(value.file(), value.edition(), value.order(), value.payload());
  }

  /** The pages that have all words of one of the labels somewhere, if only loosely. */
  List<PageHit> holding(Collection<List<String>> labels) {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    for (List<String> words : labels) {
      BooleanQuery.Builder all = new BooleanQuery.Builder();
      for (String word : words) {
        BooleanQuery.Builder either = new BooleanQuery.Builder();
        either.add(new TermQuery(new Term(Fields.PAGE, word)), Occur.SHOULD);
        either.add(
            new TermQuery(new Term(Fields.PAGE_LOOSE, MisreadWords.loose(word))), Occur.SHOULD);
        for (String form : List.of(word, MisreadWords.loose(word))) {
          either.add(new TermQuery(new Term(Fields.PAGE_END, form)), Occur.SHOULD);
        }
        all.add(either.build(), Occur.FILTER);
      }
      any.add(all.build(), Occur.SHOULD);
    }
    Query query = any.build();
    return reading(
        () -> {
          Finder finder = new Finder(lucene);
          List<PageHit> hits = new ArrayList<>();
          for (Finder.Scored each : finder.scored(query)) {
            hits.add(hit(finder.value(each.id())));
          }
          return hits;
        });
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
                return leaf.reader()
                    .storedFields()
                    .document(id, Set.of(Fields.PAGE_TEXT))
                    .get(Fields.PAGE_TEXT);
              }
            }
          }
          throw new IndexDamagedException("the index lacks page " + page + " of " + file, null);
        });
  }
}
