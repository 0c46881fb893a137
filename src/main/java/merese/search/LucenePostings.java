package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.FixedBitSet;
import org.apache.lucene.util.StringHelper;

/** Postings from a commit of a Lucene index. */
final class LucenePostings implements Postings {
  private final Directory directory;
  private final DirectoryReader reader;

  private LucenePostings(Directory directory, DirectoryReader reader) {
    this.directory = directory;
    this.reader = reader;
  }

  /**
   * Opens the newest commit.
   *
   * @throws IndexDamagedException where there is none that can be read
   */
  static LucenePostings open(Path folder) {
    Directory directory = null;
    try {
      directory = FSDirectory.open(folder);
      LucenePostings postings = new LucenePostings(directory, DirectoryReader.open(directory));
      postings.verify();
      return postings;
    } catch (IOException | RuntimeException e) {
      NoteIndex.closeQuietly(directory);
      throw e instanceof IndexDamagedException damaged
          ? damaged
          : new IndexDamagedException("the index cannot be read", e);
    }
  }

  private void verify() throws IOException {
    String layout = reader.getIndexCommit().getUserData().get(NoteIndex.LAYOUT_KEY);
    if (!NoteIndex.LAYOUT.equals(layout)) {
      throw IndexDamagedException.ofAnotherVersion();
    }
    long size = 0;
    for (String file : reader.getIndexCommit().getFileNames()) {
      size += directory.fileLength(file);
    }
    if (size <= NoteIndex.CHECKED_SIZE) {
      for (LeafReaderContext leaf : reader.leaves()) {
        leaf.reader().checkIntegrity();
      }
    }
  }

  DirectoryReader reader() {
    return reader;
  }

  @Override
  public List<StoredValue> values(List<String> terms) throws IOException {
    List<StoredValue> found = new ArrayList<>();
    for (LeafReaderContext leaf : reader.leaves()) {
      gather(leaf, terms, found);
    }
    StoredValue[] sorted = found.toArray(new StoredValue[0]);
    Arrays.sort(sorted);
    return Arrays.asList(sorted);
  }

  private static void gather(LeafReaderContext context, List<String> terms, List<StoredValue> found)
      throws IOException {
    LeafReader leaf = context.reader();
    FixedBitSet seen = new FixedBitSet(leaf.maxDoc());
    Bits live = leaf.getLiveDocs();
    for (String term : terms) {
      Term inLucene = new Term(Fields.nameOf(term), Fields.textOf(term));
      PostingsEnum postings = leaf.postings(inLucene, PostingsEnum.NONE);
      if (postings != null) {
        for (int id = postings.nextDoc(); id != NO_MORE_DOCS; id = postings.nextDoc()) {
          if (live == null || live.get(id)) {
            seen.set(id);
          }
        }
      }
    }
    BinaryDocValues stored = leaf.getBinaryDocValues(Fields.STORED);
    for (int id = 0; id < leaf.maxDoc() && (id = seen.nextSetBit(id)) != NO_MORE_DOCS; id++) {
      stored.advanceExact(id);
      found.add(StoredValue.of(stored.binaryValue(), context.docBase + id));
    }
  }

  @Override
  public List<String> termsFrom(String begun, int most) throws IOException {
    TreeSet<String> found = new TreeSet<>();
    String field = Fields.nameOf(begun);
    BytesRef prefix = new BytesRef(Fields.textOf(begun));
    for (LeafReaderContext leaf : reader.leaves()) {
      Terms terms = leaf.reader().terms(field);
      TermsEnum each = terms == null ? TermsEnum.EMPTY : terms.iterator();
      boolean more = each.seekCeil(prefix) != TermsEnum.SeekStatus.END;
      for (int i = 0; more && i < most && StringHelper.startsWith(each.term(), prefix); i++) {
        found.add(Fields.term(field, each.term().utf8ToString()));
        more = each.next() != null;
      }
    }
    List<String> first = new ArrayList<>(found);
    return first.size() > most ? first.subList(0, most) : first;
  }

  @Override
  public Optional<StoredValue> anyValue(String term) throws IOException {
    Term inLucene = new Term(Fields.nameOf(term), Fields.textOf(term));
    for (LeafReaderContext context : reader.leaves()) {
      LeafReader leaf = context.reader();
      PostingsEnum postings = leaf.postings(inLucene, PostingsEnum.NONE);
      Bits live = leaf.getLiveDocs();
      for (int id = postings == null ? NO_MORE_DOCS : postings.nextDoc();
          id != NO_MORE_DOCS;
          id = postings.nextDoc()) {
        if (live == null || live.get(id)) {
          BinaryDocValues stored = leaf.getBinaryDocValues(Fields.STORED);
          stored.advanceExact(id);
          return Optional.of(StoredValue.of(stored.binaryValue(), context.docBase + id));
        }
      }
    }
    return Optional.empty();
  }

  @Override
  public void close() throws IOException {
    reader.close();
    directory.close();
  }
}
