package merese.search;

import java.io.IOException;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.util.Bits;

/** Goes through the pages of a segment that have what a question asks for. */
interface PageMatches {
  /**
   * The number of the next of them in the segment; {@link DocIdSetIterator#NO_MORE_DOCS} at last.
   */
  int next() throws IOException;

  /** How well this one has it, less what words side by side are worth. */
  int score() throws IOException;

  /**
   * Those that a query finds.
   *
   * @param live may be null for all
   */
  static PageMatches of(Scorer scorer, Bits live) {
    DocIdSetIterator found = scorer.iterator();
    return new PageMatches() {
      @Override
      public int next() throws IOException {
        int id = found.nextDoc();
        while (live != null && id != DocIdSetIterator.NO_MORE_DOCS && !live.get(id)) {
          id = found.nextDoc();
        }
        return id;
      }

      @Override
      public int score() throws IOException {
        return Math.round(scorer.score());
      }
    };
  }
}
