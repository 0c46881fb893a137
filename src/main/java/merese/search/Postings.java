package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;

/** What the documents of some terms give back. */
interface Postings extends Closeable {
  /**
   * The values of all documents that have at least one of the terms, sorted.
   *
   * @param terms as {@link Fields} makes them
   */
  List<StoredValue> values(List<String> terms) throws IOException;
}
