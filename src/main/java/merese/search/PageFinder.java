package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import merese.search.PageHits.PageHit;
import merese.search.PageHits.PageTaker;
import merese.vocabulary.MisreadWords;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
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
   * most are equally good: of those only the files are looked at, and the pages of the first files
   * read.
   */
  PageHits find(
      PageQuery made,
      FindQuery asked,
      Finder finder,
      int limit,
      Function<String, byte[]> standing) {
    return reading(
        () -> {
          Matches found = new Matches();
          finder.each(made.of(asked.root()), found);
          int last = found.lastOf(limit);
          List<Ranked> better = new ArrayList<>();
          Files files = new Files(lucene.reader().leaves());
          for (int i = 0; i < found.count; i++) {
            int document = found.documents[i];
            if (found.scores[i] > last) {
              StoredValue value = finder.value(document);
              better.add(new Ranked(found.scores[i], standing.apply(value.edition()), value));
            } else if (found.scores[i] == last) {
              files.of(document).add(document);
            }
          }
          better.sort(Ranked.BEST_FIRST);
          List<PageHit> best = new ArrayList<>();
          better.forEach(r -> best.add(hit(r.value())));
          addFirst(files.all.values(), finder, limit, standing, best);
          return new PageHits(best, found.count);
        });
  }

  /** Adds the first pages of the first sources until there are enough. */
  private static void addFirst(
      Collection<PagesOfFile> files,
      Finder finder,
      int limit,
      Function<String, byte[]> standing,
      List<PageHit> best)
      throws IOException {
    List<PagesOfFile> sorted = new ArrayList<>(files);
    Map<String, byte[]> standings = new HashMap<>();
    for (PagesOfFile each : sorted) {
      each.first = finder.value(each.documents[0]);
      each.standing = standings.computeIfAbsent(each.first.edition(), standing);
    }
    sorted.sort(PagesOfFile.FIRST);
    for (PagesOfFile each : sorted) {
      if (best.size() >= limit) {
        return;
      }
      List<StoredValue> pages = new ArrayList<>();
      for (int i = 0; i < each.count; i++) {
        pages.add(finder.value(each.documents[i]));
      }
      pages.sort(Comparator.naturalOrder());
      for (StoredValue page : pages.subList(0, Math.min(limit - best.size(), pages.size()))) {
        best.add(hit(page));
      }
    }
  }

  /** Takes matches, of which there may be very many: two numbers each. */
  private static final class Matches implements Finder.Match {
    private int[] documents = new int[64];
    private int[] scores = new int[64];
    private int count;

    @Override
    public void take(int document, int score) {
      if (count == documents.length) {
        documents = Arrays.copyOf(documents, 2 * count);
        scores = Arrays.copyOf(scores, 2 * count);
      }
      documents[count] = document;
      scores[count++] = score;
    }

    /** The score of the last of so many best ones; one more than any for none. */
    private int lastOf(int most) {
      if (most <= 0 || count == 0) {
        return Integer.MAX_VALUE;
      }
      int[] sorted = Arrays.copyOf(scores, count);
      Arrays.sort(sorted);
      return sorted[Math.max(0, count - most)];
    }
  }

  /** Which file a page is in; those of one file mostly follow each other. */
  private static final class Files {
    private final List<LeafReaderContext> leaves;
    private final Map<BytesRef, PagesOfFile> all = new HashMap<>();
    private BinaryDocValues stored;
    private int base;
    private int end;
    private BytesRef lastOwner = new BytesRef();
    private PagesOfFile last;

    Files(List<LeafReaderContext> leaves) {
      this.leaves = leaves;
    }

    /**
     * @param document higher than the last one
     */
    PagesOfFile of(int document) throws IOException {
      if (document >= end) {
        LeafReaderContext leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
        stored = leaf.reader().getBinaryDocValues(Fields.STORED);
        base = leaf.docBase;
        end = base + leaf.reader().maxDoc();
      }
      stored.advanceExact(document - base);
      BytesRef value = stored.binaryValue();
      int length = StoredValue.ownerLength(value.bytes, value.offset);
      BytesRef owner = new BytesRef(value.bytes, value.offset, length);
      if (last == null || !owner.bytesEquals(lastOwner)) {
        last = all.get(owner);
        if (last == null) {
          last = new PagesOfFile();
          all.put(BytesRef.deepCopyOf(owner), last);
        }
        lastOwner = BytesRef.deepCopyOf(owner);
      }
      return last;
    }
  }

  /** Pages of one file that are equally good, unread but for one of them. */
  private static final class PagesOfFile {
    static final Comparator<PagesOfFile> FIRST =
        Comparator.comparing((PagesOfFile f) -> f.standing, Arrays::compareUnsigned)
            .thenComparing(f -> f.first.file());

    private int[] documents = new int[4];
    private int count;
    private StoredValue first;
    private byte[] standing;

    void add(int document) {
      if (count == documents.length) {
        documents = Arrays.copyOf(documents, 2 * count);
      }
      documents[count++] = document;
    }
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
