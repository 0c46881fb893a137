package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.BytesRef;

/**
 * Asks an index with Lucene's own searcher and nothing else: what a benchmark holds our questions
 * against.
 */
public final class BareQueries implements Closeable {
  private final FoldedText folded = new FoldedText();
  private final Directory directory;
  private final DirectoryReader reader;
  private final IndexSearcher searcher;

  public BareQueries(Path folder) throws IOException {
    directory = FSDirectory.open(folder);
    reader = DirectoryReader.open(directory);
    searcher = new IndexSearcher(reader);
  }

  /**
   * One query for each criterion, each match visited and the value that is stored with it read.
   *
   * @return how many bytes those values have
   */
  public long visit(Collection<? extends NoteCriterion> criteria) throws IOException {
    long bytes = 0;
    for (NoteCriterion criterion : criteria) {
      String term = Fields.term(criterion);
      Query query = new TermQuery(new Term(Fields.nameOf(term), Fields.textOf(term)));
      bytes += searcher.search(new ConstantScoreQuery(query), new Reading());
    }
    return bytes;
  }

  /**
   * The best matches of any of the words, ranked by Lucene's BM25, and the values stored with them.
   */
  public long best(String words, int most) throws IOException {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    for (String word : folded.words(words)) {
      any.add(new TermQuery(new Term(Fields.ALL, word)), Occur.SHOULD);
    }
    return best(any.build(), most);
  }

  /** The best pages that have all of the words, ranked so, and the values stored with them. */
  public long bestPages(String words, int most) throws IOException {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    for (String word : folded.words(words)) {
      all.add(new TermQuery(new Term(Fields.PAGE, word)), Occur.MUST);
    }
    return best(all.build(), most);
  }

  /** Each page on which a concept is named, and the value stored with it. */
  public long pagesNaming(String concept) throws IOException {
    Query query = new TermQuery(new Term(Fields.PAGE_NAMES, concept));
    return searcher.search(new ConstantScoreQuery(query), new Reading());
  }

  private long best(Query query, int most) throws IOException {
    Values values = new Values();
    for (var hit : searcher.search(query, most).scoreDocs) {
      for (LeafReaderContext leaf : reader.leaves()) {
        int inLeaf = hit.doc - leaf.docBase;
        if (inLeaf >= 0 && inLeaf < leaf.reader().maxDoc()) {
          values.doSetNextReader(leaf);
          values.collect(inLeaf);
        }
      }
    }
    return values.bytes;
  }

  @Override
  public void close() throws IOException {
    reader.close();
    directory.close();
  }

  /** Reads the values of all matches. */
  private static final class Reading implements CollectorManager<Values, Long> {
    @Override
    public Values newCollector() {
      return new Values();
    }

    @Override
    public Long reduce(Collection<Values> all) {
      return all.stream().mapToLong(values -> values.bytes).sum();
    }
  }

  private static final class Values extends SimpleCollector {
    private BinaryDocValues stored;
    private long bytes;

    @Override
    protected void doSetNextReader(LeafReaderContext context) throws IOException {
      stored = context.reader().getBinaryDocValues(Fields.STORED);
    }

    @Override
    public void collect(int document) throws IOException {
      if (stored.advanceExact(document)) {
        BytesRef value = stored.binaryValue();
        bytes += value.length;
      }
    }

    @Override
    public ScoreMode scoreMode() {
      return ScoreMode.COMPLETE_NO_SCORES;
    }
  }
}
