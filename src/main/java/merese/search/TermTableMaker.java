package merese.search;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;

/** Copies the newest commit of a small Lucene index into its {@link TermTable}. */
final class TermTableMaker {
  private final List<byte[]> documents = new ArrayList<>();
  private final Map<String, List<Integer>> postings = new TreeMap<>(TermTableMaker::byUtf8);

  private TermTableMaker() {}

  static void make(Path folder) throws IOException {
    try (Directory directory = FSDirectory.open(folder);
        DirectoryReader reader = DirectoryReader.open(directory)) {
      TermTableMaker maker = new TermTableMaker();
      for (LeafReaderContext leaf : reader.leaves()) {
        maker.add(leaf.reader());
      }
      TermTable.write(
          folder,
          reader.getIndexCommit().getSegmentsFileName(),
          reader.getIndexCommit().getFileNames(),
          maker.documents,
          maker.sorted());
    }
  }

  private void add(LeafReader leaf) throws IOException {
    Bits live = leaf.getLiveDocs();
    int[] numbers = new int[leaf.maxDoc()];
    BinaryDocValues stored = leaf.getBinaryDocValues(Fields.STORED);
    for (int id = 0; id < leaf.maxDoc(); id++) {
      numbers[id] = -1;
      if (live == null || live.get(id)) {
        stored.advanceExact(id);
        BytesRef value = stored.binaryValue();
        numbers[id] = documents.size();
        documents.add(Arrays.copyOfRange(value.bytes, value.offset, value.offset + value.length));
      }
    }
    for (String field : Fields.ASKED) {
      Terms terms = leaf.terms(field);
      if (terms != null) {
        add(field, terms.iterator(), numbers);
      }
    }
  }

  private void add(String field, TermsEnum terms, int[] numbers) throws IOException {
    PostingsEnum found = null;
    for (BytesRef text = terms.next(); text != null; text = terms.next()) {
      found = terms.postings(found, PostingsEnum.NONE);
      List<Integer> ids = new ArrayList<>();
      for (int id = found.nextDoc(); id != NO_MORE_DOCS; id = found.nextDoc()) {
        if (numbers[id] >= 0) {
          ids.add(numbers[id]);
        }
      }
      if (!ids.isEmpty()) {
        String term = Fields.term(field, text.utf8ToString());
        postings.computeIfAbsent(term, t -> new ArrayList<>()).addAll(ids);
      }
    }
  }

  private SortedMap<String, int[]> sorted() {
    SortedMap<String, int[]> sorted = new TreeMap<>(TermTableMaker::byUtf8);
    postings.forEach(
        (term, ids) -> sorted.put(term, ids.stream().mapToInt(Integer::intValue).toArray()));
    return sorted;
  }

  /** In the order of their bytes, by which the table is searched. */
  private static int byUtf8(String a, String b) {
    return Arrays.compareUnsigned(a.getBytes(UTF_8), b.getBytes(UTF_8));
  }
}
