package merese.search;

import static org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.search.Hits.CheckHit;
import merese.search.Hits.NoteHit;
import merese.search.Hits.SourceHit;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.Weight;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;

/**
 * One commit of the index, open for questions. Every answer is complete (no cut-off) and in the
 * order of files, editions and notes, so that it is the same however the index came about.
 */
public final class NoteIndex implements Closeable {
  /** The layout of the documents; an index of another one is built again. */
  static final String LAYOUT = "1";

  static final String LAYOUT_KEY = "merese.layout";

  /** Below this an index is checked against its check sums each time it is opened; in bytes. */
  private static final long CHECKED_SIZE = 32L << 20;

  private final Directory directory;
  private final DirectoryReader reader;
  private final IndexSearcher searcher;

  private NoteIndex(Directory directory, DirectoryReader reader) {
    this.directory = directory;
    this.reader = reader;
    this.searcher = new IndexSearcher(reader);
    searcher.setQueryCache(null);
  }

  /**
   * Opens the newest commit.
   *
   * @throws IndexDamagedException where there is none that can be read
   */
  public static NoteIndex open(Path folder) {
    Directory directory = null;
    try {
      directory = FSDirectory.open(folder);
      DirectoryReader reader = DirectoryReader.open(directory);
      NoteIndex index = new NoteIndex(directory, reader);
      index.verify();
      return index;
    } catch (IOException | RuntimeException e) {
      closeQuietly(directory);
      throw e instanceof IndexDamagedException damaged
          ? damaged
          : new IndexDamagedException("the index cannot be read", e);
    }
  }

  private void verify() throws IOException {
    if (!LAYOUT.equals(reader.getIndexCommit().getUserData().get(LAYOUT_KEY))) {
      throw new IndexDamagedException("the index was made by another version", null);
    }
    long size = 0;
    for (String file : reader.getIndexCommit().getFileNames()) {
      size += directory.fileLength(file);
    }
    if (size <= CHECKED_SIZE) {
      for (LeafReaderContext leaf : reader.leaves()) {
        leaf.reader().checkIntegrity();
      }
    }
  }

  /** The notes that meet at least one of the criteria. */
  public List<NoteHit> notes(Collection<? extends NoteCriterion> anyOf) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    for (NoteCriterion criterion : anyOf) {
      query.add(queryFor(criterion), Occur.SHOULD);
    }
    return notes(query.build());
  }

  /** The notes whose place in the index depends on these concepts, or on labels at large. */
  public List<NoteHit> notesDependingOn(Collection<String> concepts) {
    List<BytesRef> ids = concepts.stream().map(BytesRef::new).toList();
    return notes(
        new BooleanQuery.Builder()
            .add(new TermInSetQuery(Fields.CONCEPT, ids), Occur.SHOULD)
            .add(new TermQuery(new Term(Fields.UNASSIGNED, "yes")), Occur.SHOULD)
            .build());
  }

  private List<NoteHit> notes(Query query) {
    List<NoteHit> hits = new ArrayList<>();
    for (Document document : documents(ofType(Fields.NOTE, query))) {
      hits.add(
          new NoteHit(
              document.get(Fields.FILE),
              document.get(Fields.EDITION),
              document.getField(Fields.ORDER).numericValue().intValue(),
              payload(document)));
    }
    hits.sort(
        Comparator.comparing(NoteHit::file)
            .thenComparing(NoteHit::edition)
            .thenComparingInt(NoteHit::order));
    return hits;
  }

  /** All editions. */
  public List<SourceHit> sources() {
    List<SourceHit> hits = new ArrayList<>();
    for (Document document : documents(new TermQuery(new Term(Fields.TYPE, Fields.SOURCE)))) {
      hits.add(
          new SourceHit(
              document.get(Fields.FILE),
              document.get(Fields.EDITION),
              bytes(document, Fields.FILING),
              payload(document)));
    }
    hits.sort(Comparator.comparing(SourceHit::file).thenComparing(SourceHit::edition));
    return hits;
  }

  /** The lines of the check logs that are about one of these concepts. */
  public List<CheckHit> checks(Collection<String> concepts) {
    List<BytesRef> ids = concepts.stream().map(BytesRef::new).toList();
    List<CheckHit> hits = new ArrayList<>();
    Query query = ofType(Fields.CHECK, new TermInSetQuery(Fields.CONCEPT, ids));
    for (Document document : documents(query)) {
      hits.add(new CheckHit(document.get(Fields.EDITION), payload(document)));
    }
    hits.sort(
        Comparator.comparing(CheckHit::edition)
            .thenComparing(CheckHit::payload, Arrays::compareUnsigned));
    return hits;
  }

  /** What was stored whole under this type, in the order of files. */
  public List<byte[]> records(String type) {
    List<Document> documents = documents(new TermQuery(new Term(Fields.TYPE, type)));
    documents.sort(Comparator.comparing(d -> d.get(Fields.FILE)));
    return documents.stream().map(NoteIndex::payload).toList();
  }

  /** The files that this commit was made from, by path. */
  public Map<String, FileStamp> stamps() {
    Map<String, FileStamp> stamps = new HashMap<>();
    for (Document document : documents(new TermQuery(new Term(Fields.TYPE, Fields.STAMP)))) {
      FileStamp stamp =
          new FileStamp(
              document.get(Fields.FILE),
              document.getField(Fields.SIZE).numericValue().longValue(),
              document.getField(Fields.MODIFIED).numericValue().longValue(),
              document.get(Fields.HASH),
              document.getField(Fields.SETTLED).numericValue().intValue() == 1);
      stamps.put(stamp.path(), stamp);
    }
    return stamps;
  }

  private static Query queryFor(NoteCriterion criterion) {
    if (criterion instanceof NoteCriterion.Means means) {
      return term(Fields.MEANING, means.concept());
    } else if (criterion instanceof NoteCriterion.MeansExactly exactly) {
      return term(Fields.CONCEPT, exactly.concept());
    } else if (criterion instanceof NoteCriterion.MayMean may) {
      return term(Fields.POSSIBLE, may.concept());
    } else if (criterion instanceof NoteCriterion.Prints prints) {
      return new PhraseQuery(Fields.PRINTED, prints.words().toArray(String[]::new));
    } else if (criterion instanceof NoteCriterion.PrintsExactly exactly) {
      return term(Fields.PRINTED_KEY, String.join(" ", exactly.words()));
    } else if (criterion instanceof NoteCriterion.SpeaksOf piece) {
      return term(Fields.PIECE, Fields.piece(piece.edition(), piece.piece()));
    } else if (criterion instanceof NoteCriterion.InSource source) {
      return term(Fields.EDITION, source.edition());
    }
    throw new IllegalArgumentException("no query for " + criterion);
  }

  private static Query term(String field, String value) {
    return new TermQuery(new Term(field, value));
  }

  private static Query ofType(String type, Query query) {
    return new BooleanQuery.Builder()
        .add(term(Fields.TYPE, type), Occur.FILTER)
        .add(query, Occur.MUST)
        .build();
  }

  private List<Document> documents(Query query) {
    try {
      List<Document> documents = new ArrayList<>();
      StoredFields stored = searcher.storedFields();
      Weight weight =
          searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
      for (LeafReaderContext leaf : reader.leaves()) {
        Scorer scorer = weight.scorer(leaf);
        if (scorer != null) {
          Bits live = leaf.reader().getLiveDocs();
          DocIdSetIterator found = scorer.iterator();
          for (int id = found.nextDoc(); id != NO_MORE_DOCS; id = found.nextDoc()) {
            if (live == null || live.get(id)) {
              documents.add(stored.document(leaf.docBase + id));
            }
          }
        }
      }
      return documents;
    } catch (IOException | RuntimeException e) {
      throw new IndexDamagedException("the index cannot be read", e);
    }
  }

  private static byte[] payload(Document document) {
    return bytes(document, Fields.PAYLOAD);
  }

  private static byte[] bytes(Document document, String field) {
    BytesRef value = document.getBinaryValue(field);
    return Arrays.copyOfRange(value.bytes, value.offset, value.offset + value.length);
  }

  @Override
  public void close() {
    closeQuietly(reader);
    closeQuietly(directory);
  }

  private static void closeQuietly(Closeable open) {
    try {
      if (open != null) {
        open.close();
      }
    } catch (IOException e) {
      // Only reading was done: there is nothing to lose.
    }
  }
}
