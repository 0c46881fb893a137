package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.CollectionStatistics;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermStatistics;
import org.apache.lucene.search.similarities.BM25Similarity;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.SmallFloat;

/**
 * Ranks by what is in the index now. Lucene's own statistics count deleted documents until their
 * segment is merged, so that an index which followed many changes would rank otherwise than a new
 * one; these count the documents that are left.
 */
final class LiveSearcher extends IndexSearcher {
  /** As is usual, for words that count once; a quotation's words weigh twice. */
  private static final float K1 = 1.2f * 2;

  /** Little, since a short note is no better than one with a long quotation. */
  private static final float B = 0.3f;

  private CollectionStatistics all;

  LiveSearcher(IndexReader reader) {
    super(reader);
    setQueryCache(null);
    setSimilarity(new BM25Similarity(K1, B));
  }

  @Override
  public TermStatistics termStatistics(Term term, int docFreq, long totalTermFreq)
      throws IOException {
    int live = getIndexReader().hasDeletions() ? live(term) : docFreq;
    return new TermStatistics(
        term.bytes(), Math.max(1, live), Math.max(1, Math.max(live, totalTermFreq)));
  }

  /** How many documents that are not deleted have a term. */
  int live(Term term) throws IOException {
    int count = 0;
    for (LeafReaderContext leaf : getLeafContexts()) {
      PostingsEnum postings = leaf.reader().postings(term, PostingsEnum.NONE);
      if (postings != null) {
        count += live(postings, leaf.reader().getLiveDocs());
      }
    }
    return count;
  }

  static int live(TermsEnum terms, Bits live) throws IOException {
    return live == null ? terms.docFreq() : live(terms.postings(null, PostingsEnum.NONE), live);
  }

  private static int live(PostingsEnum postings, Bits live) throws IOException {
    int count = 0;
    for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
      count += live == null || live.get(id) ? 1 : 0;
    }
    return count;
  }

  @Override
  public CollectionStatistics collectionStatistics(String field) throws IOException {
    if (!field.equals(Fields.ALL)) {
      return super.collectionStatistics(field);
    }
    if (all == null) {
      all = liveStatistics();
    }
    return all;
  }

  /** The lengths are those that the ranking sees, each in a byte, so that sums are the same. */
  private CollectionStatistics liveStatistics() throws IOException {
    long documents = 0;
    long words = 0;
    for (LeafReaderContext leaf : getLeafContexts()) {
      NumericDocValues lengths = leaf.reader().getNormValues(Fields.ALL);
      Bits live = leaf.reader().getLiveDocs();
      while (lengths != null && lengths.nextDoc() != NO_MORE_DOCS) {
        if (live == null || live.get(lengths.docID())) {
          documents++;
          words += SmallFloat.byte4ToInt((byte) lengths.longValue());
        }
      }
    }
    long count = Math.max(1, documents);
    long sum = Math.max(count, words);
    return new CollectionStatistics(
        Fields.ALL, Math.max(count, getIndexReader().maxDoc()), count, sum, count);
  }
}
